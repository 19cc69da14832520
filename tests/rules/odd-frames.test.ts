import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { HouseInForce } from "../../src/house/house-in-force.ts";
import { noSettings } from "../../src/house/settings.ts";
import { inspectFile } from "../../src/inspection/inspect-file.ts";
import type { Report } from "../../src/inspection/report.ts";
import type { Bar, FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { builtInRules } from "../../src/rules/index.generated.ts";
import { facingRails, tee } from "./base-frames.ts";

const house: HouseInForce = { ...noSettings("2000-01-01"), rules: builtInRules };

function inspect(file: FrameFile): Report {
  const bytes = new TextEncoder().encode(JSON.stringify(file));
  return inspectFile({ file: "odd.frame.json", bytes, stock: [], house });
}

const bar = (id: string, from: [number, number, number], to: [number, number, number]): Bar => ({
  id,
  profile: "40x40-8",
  from,
  to,
});

function frame(...bars: readonly [Bar, ...Bar[]]): FrameFile {
  return { format: 1, title: "odd", units: "mm-N-kg", bars: [...bars] };
}

/** Rules that a report calls out, without doubles. */
const rulesOf = (report: Report): readonly string[] => [...new Set(report.findings.map((found) => found.rule))].sort();

describe("frames of an unusual kind are inspected whole", () => {
  it("one bar and nothing else: held for want of a load, nothing adrift", () => {
    const report = inspect(frame(bar("alone", [0, 0, 0], [0, 0, 500])));
    expect(report.failures).toEqual([]);
    expect(rulesOf(report)).toContain("load.none");
    expect(rulesOf(report)).not.toContain("bar.adrift");
    expect(rulesOf(report)).not.toContain("bar.clash");
  });

  it("bars end to end in one line, without joints: each adrift, none in another's room", () => {
    const report = inspect(
      frame(bar("a", [0, 0, 0], [300, 0, 0]), bar("b", [300, 0, 0], [600, 0, 0]), bar("c", [600, 0, 0], [900, 0, 0])),
    );
    expect(report.failures).toEqual([]);
    const adrift = report.findings.filter((found) => found.rule === "bar.adrift").map((found) => found.at.id);
    expect([...adrift].sort()).toEqual(["a", "b", "c"]);
    expect(rulesOf(report)).not.toContain("bar.clash");
  });

  it("three bars at one place: every pair clashes by the whole 40 mm", () => {
    const report = inspect(
      frame(bar("a", [0, 0, 0], [300, 0, 0]), bar("b", [0, 0, 0], [300, 0, 0]), bar("c", [0, 0, 0], [300, 0, 0])),
    );
    expect(report.failures).toEqual([]);
    const clashes = report.findings.filter((found) => found.rule === "bar.clash");
    expect(clashes.map((found) => found.measure?.measured)).toEqual(
      [0.04, 0.04, 0.04].map((d) => expect.closeTo(d, 12)),
    );
  });
});

/** The frame that the random edits start from: posts, rails, feet, a shelf, an end screw, a plate, loads. */
function lively(): FrameFile {
  const file = facingRails(200);
  file.bars.push(
    bar("far", [600, 0, 0], [600, 0, 1000]),
    bar("cross", [300, 0, 500], [300, 400, 500]),
    bar("back", [300, 400, 0], [300, 400, 900]),
  );
  file.kits = { ...file.kits, core: [{ connector: "end-screw-8" }], claw: [{ connector: "end-fastener-8", on: "+z" }] };
  file.joints = [
    { bars: ["rail"], ends: "both", by: "corner" },
    { bars: ["low"], ends: "both", by: "under" },
    { bars: ["cross"], ends: "from", by: "core" },
    { bars: ["cross"], ends: "to", by: "claw" },
  ];
  file.fastenings = [{ id: "tee", part: "plate-T-40", on: "+y", at: [0, 20, 500], turn: 90, holds: ["post", "rail"] }];
  file.stands = [{ part: "foot-40-M8", bars: ["post", "far", "back"] }];
  file.panels = [{ id: "shelf", sheet: "plywood-12", held: "laid", bars: ["rail", "cross"], on: "+z" }];
  file.loads = [{ case: "things", on: "shelf", pressure: 1 }];
  return file;
}

const profiles = ["40x40-8", "40x80-8", "80x80-8", "45x45-10", "20x20-5", "40x40-8-one-closed", "30x60-6"];
const coordinate = fc.oneof(
  fc.constantFrom(0, 20, 40, 300, 500, 600, 1000),
  fc.integer({ min: -1200, max: 1200 }),
  fc.double({ min: -1200, max: 1200, noNaN: true }),
);
const which = fc.nat();
type Edit = (file: FrameFile) => void;

function pick<T>(list: readonly T[] | undefined, n: number): T | undefined {
  return list === undefined || list.length === 0 ? undefined : list[n % list.length];
}

const edit: fc.Arbitrary<Edit> = fc.oneof(
  fc.tuple(which, fc.constantFrom("from", "to"), fc.nat(2), coordinate).map(
    ([n, end, axis, to]): Edit =>
      (file) => {
        const point = pick(file.bars, n)?.[end as "from" | "to"];
        if (point) point[axis] = to;
      },
  ),
  fc.tuple(which, which).map(
    ([n, p]): Edit =>
      (file) => {
        const one = pick(file.bars, n);
        if (one) one.profile = pick(profiles, p) ?? one.profile;
      },
  ),
  fc.tuple(which, fc.integer({ min: -180, max: 180 })).map(
    ([n, roll]): Edit =>
      (file) => {
        const one = pick(file.bars, n);
        if (one) one.roll = roll;
      },
  ),
  which.map(
    (n): Edit =>
      (file) => {
        file.joints?.splice(n % Math.max(1, file.joints.length), 1);
      },
  ),
  fc.tuple(which, fc.constantFrom("as-drawn", "butt")).map(
    ([n, cut]): Edit =>
      (file) => {
        const one = pick(file.bars, n);
        if (one) one.ends = { both: { cut: cut as "as-drawn" | "butt" } };
      },
  ),
  fc.tuple(which, fc.constantFrom("above", "below", "+y", "-y", "inner", "outer", "A", "B")).map(
    ([n, on]): Edit =>
      (file) => {
        const item = pick(Object.values(file.kits ?? {}), n)?.[0];
        if (item) item.on = on as "above";
      },
  ),
  fc
    .tuple(
      which,
      fc.constantFrom(
        "inside-bracket-40",
        "gusset-bracket-80",
        "inside-bracket-30",
        "end-screw-8",
        "end-fastener-8",
        "end-screw-through-40",
      ),
    )
    .map(
      ([n, connector]): Edit =>
        (file) => {
          const item = pick(Object.values(file.kits ?? {}), n)?.[0];
          if (item) Object.assign(item, { connector, on: item.on ?? "below", slot: "all", bore: "all" });
        },
    ),
  fc.tuple(which, fc.integer({ min: -40, max: 40 })).map(
    ([n, shift]): Edit =>
      (file) => {
        const item = pick(Object.values(file.kits ?? {}), n)?.[0];
        if (item) item.shift = shift;
      },
  ),
  fc.constantFrom<Edit>(
    (file) => {
      file.defaults = { caps: "none", ends: "raw" };
    },
    (file) => {
      delete file.stands;
    },
    (file) => {
      delete file.loads;
    },
    (file) => {
      delete file.panels;
      delete file.loads;
    },
    (file) => {
      delete file.fastenings;
    },
  ),
);

describe("frames changed at random", () => {
  it("start from one that is read", () => {
    const report = inspect(lively());
    expect(report.problems).toEqual([]);
    expect(report.failures).toEqual([]);
    expect(inspect(tee()).failures).toEqual([]);
  });

  it("make no rule fail, and most of them are read", () => {
    let read = 0;
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 5 }), (edits) => {
        const file = lively();
        for (const change of edits) change(file);
        const report = inspect(file);
        if (report.verdict !== "unread") read += 1;
        expect(report.failures).toEqual([]);
        for (const { measure } of report.findings) if (measure) expect(Number.isFinite(measure.measured)).toBe(true);
      }),
      { numRuns: 100, seed: 20240611 },
    );
    expect(read).toBeGreaterThan(50);
  }, 240_000);
});
