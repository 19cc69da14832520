import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Finding } from "../../src/inspection/report.ts";
import { makePlace, type Place } from "../cli/run.ts";
import { type Demo, FAULTY, inspectText, SOUND, textOf } from "./inspect-demo.ts";
import { PLANTED, type Planted, type Slip } from "./planted-faults.ts";

const SI = { mm: 1e-3, mm2: 1e-6, in: 0.0254, deg: Math.PI / 180, count: 1 } as const;
/** Rules broken by how a frame is drawn, whatever it carries. */
const DRAWING_RULES = [
  "bar.adrift",
  "bar.clash",
  "bar.skewed",
  "bore.clash",
  "build.deadlock",
  "end.bare",
  "end.raw",
  "guard.within-reach",
  "hole.near-edge",
  "joint.gap",
  "joint.turns",
  "load.none",
  "nut.clash",
  "nut.trapped",
  "screw.crowded",
  "screw.misfit",
  "slot.mismatched",
  "stock.mixed",
  "panel.misfit",
  "panel.rattles",
  "panel.uncut",
];
/** Rounding of a frame 2 m long, in the unit of the value. */
const ROUNDING = 1e-9;

/** The order in which a sentence names the other parts is no matter of this test. */
function words(rule: string, key: string, level: string, [at, ...others]: readonly string[]): string {
  return [rule, key, level, at, ...[...new Set(others)].sort()].join(" ");
}

function named({ rule, key, level, at, related }: Finding): string {
  return words(rule, key, level, [at.id, ...related.map((other) => other.at.id)]);
}

function expected({ rule, key, level, parts }: Planted): string {
  return words(rule, key, level, parts);
}

const slipsOf = (demo: Demo): readonly Slip[] => PLANTED[demo] ?? [];

describe.each(SOUND)("%s", (demo) => {
  it("comes out accept without a finding, without a remark on the file, with nothing undecided", () => {
    const report = inspectText(demo, textOf(demo));
    expect(report.problems).toEqual([]);
    expect(report.findings).toEqual([]);
    expect(report.undecided).toEqual([]);
    expect(report).toMatchObject({ verdict: "accept", complete: true });
  });
});

describe.each(FAULTY)("%s", (demo) => {
  const report = inspectText(demo, textOf(demo));
  const planted = slipsOf(demo).flatMap((slip) => slip.findings);

  it("is read whole, without a remark on the file", () => {
    expect(report.problems).toEqual([]);
    expect(report).toMatchObject({ verdict: "reject", complete: true });
  });

  it("leaves nothing undecided but what needs a frame that holds together", () => {
    const adrift = planted.some(({ rule }) => rule === "bar.adrift");
    for (const { why } of report.undecided) expect(why).toMatch(/^because of frame\.loose/);
    if (!adrift) expect(report.undecided).toEqual([]);
  });

  it("gives the findings planted and no other", () => {
    expect(report.findings.map(named).sort()).toEqual(planted.map(expected).sort());
  });

  it.each(planted.filter((one) => one.unit !== undefined))("measures $rule at $parts as worked by hand", (one) => {
    const { unit = "count", measured = 0, limit = 0, within = 0 } = one;
    const found = report.findings.find((finding) => named(finding) === expected(one));
    const value = (found?.measure?.measured ?? Number.NaN) / SI[unit];
    expect(Math.abs(value - measured)).toBeLessThanOrEqual(within * Math.abs(measured) + ROUNDING);
    expect((found?.measure?.limit ?? Number.NaN) / SI[unit]).toBeCloseTo(limit, 9);
  });

  it("says why, where one slip gives more than one finding", () => {
    for (const slip of slipsOf(demo)) expect(slip.findings.length > 1).toBe(slip.because !== undefined);
  });
});

it("plants a fault of every rule that a slip of the pen breaks", () => {
  const planted = new Set(FAULTY.flatMap((demo) => slipsOf(demo).flatMap((slip) => slip.findings.map((f) => f.rule))));
  expect([...planted].sort()).toEqual([...DRAWING_RULES].sort());
});

it("keeps a bench of twelve bars with shelf and feet within 34 lines", () => {
  const text = textOf("first-bench");
  expect(text.trimEnd().split("\n").length).toBeLessThanOrEqual(34);
  const file = JSON.parse(text) as { bars: unknown[]; stands: { bars: unknown[] }[] };
  expect(file.bars).toHaveLength(12);
  expect(file.stands.flatMap((stand) => stand.bars)).toHaveLength(4);
});

describe("through the command line", () => {
  let place: Place;
  beforeAll(async () => {
    place = await makePlace("real");
    for (const demo of ["first-bench", "sack-cart-faulty"] as const) place.write(`${demo}.frame.json`, textOf(demo));
  });
  afterAll(() => place.remove());

  const inspect = (demos: readonly Demo[], ...options: readonly string[]) =>
    place.run(["inspect", ...demos.map((demo) => `${demo}.frame.json`), "--cures", "0", ...options]);

  it("a faulty one ends with 0 where there is no gate", async () => {
    expect((await inspect(["sack-cart-faulty"], "--gate", "none")).code).toBe(0);
  });

  it("inspects several in one run, the faulty one deciding the code", async () => {
    const { code, stdout } = await inspect(["first-bench", "sack-cart-faulty"]);
    expect(code).toBe(1);
    for (const demo of ["first-bench", "sack-cart-faulty"]) expect(stdout).toContain(`${demo}.frame.json`);
  });
});
