import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makePlace, type Place } from "./run.ts";

let place: Place;
beforeAll(async () => {
  place = await makePlace("real");
});
afterAll(() => place.remove());

const run = (...args: readonly string[]) => place.run(["cuts", ...args], { cwd: process.cwd() });

async function cuts(...args: readonly string[]): Promise<string> {
  const { code, stdout, stderr } = await run(...args);
  expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
  return stdout;
}

interface CutJson {
  readonly bars: readonly {
    readonly profile: string;
    readonly length: number;
    readonly count: number;
    readonly bars: readonly string[];
  }[];
  readonly plans: readonly { readonly profile: string; readonly mass: number; readonly bars: readonly unknown[] }[];
  readonly parts: readonly { readonly kind: string; readonly name: string; readonly count: number }[];
}

describe("trysquare cuts", () => {
  // The bench of tests/cures: top bars run 1500 mm; legs from 50 mm up to the underside of bars at 840 mm, half of 40 mm below:
  // 840 − 20 − 50 = 770 mm; cross bars between faces 730 − 20 − 40 = 670 mm; shelf bars along x 1400 − 100 − 40 = 1260 mm.
  it("lists lengths worked by hand, and counts screws and nuts by their joints", async () => {
    const list = JSON.parse(await cuts("tests/cures/bench.frame.json", "--as", "json")) as CutJson;
    const lengths = list.bars.flatMap((line) =>
      line.bars.map((id) => [id, Math.round(line.length * 1e4) / 10] as const),
    );
    expect(Object.fromEntries(lengths)).toEqual({
      front: 1500,
      back: 1500,
      "shelf-3": 1260,
      "shelf-4": 1260,
      "leg-1": 770,
      "leg-2": 770,
      "leg-3": 770,
      "leg-4": 770,
      "cross-1": 670,
      "cross-2": 670,
      "shelf-1": 670,
      "shelf-2": 670,
    });
    const of = (kind: string): number =>
      list.parts.filter((part) => part.kind === kind).reduce((sum, part) => sum + part.count, 0);
    // 16 bar ends with two brackets of two screws each.
    expect(of("connector")).toBe(32);
    expect(of("screw")).toBe(64);
    expect(of("nut")).toBe(64);
    expect(of("stand")).toBe(4);
    // Total 2 × 1500 + 2 × 1260 + 4 × 770 + 4 × 670 = 11 280 mm: two stock bars of 6 m at least.
    expect(list.plans[0]?.bars.length).toBe(2);
  });

  // A sheet of 18 mm plywood of 1500 × 750 mm weighs 0.018 × 1.5 × 0.75 m³ times its density; all kinds add up to what is printed.
  it("gives the mass of one of each, of each kind and of all", async () => {
    const list = JSON.parse(await cuts("docs/demo/first-bench.frame.json", "--as", "json")) as CutJson & {
      readonly masses: Readonly<Record<string, number>>;
    };
    const top = list.parts.find(({ kind }) => kind === "sheet") as { mass: number; size: [number, number] } | undefined;
    const density = 680; // kg/m³, birch plywood (common practice)
    expect(top?.mass).toBeCloseTo(0.018 * (top?.size[0] ?? 0) * (top?.size[1] ?? 0) * density, 9);
    expect(list.masses.sheet).toBeCloseTo(top?.mass ?? 0, 9);
    expect(list.masses.bar).toBeCloseTo(
      list.plans.reduce((sum, plan) => sum + plan.mass, 0),
      9,
    );
    const told =
      /([\d.]+) kg of bars, ([\d.]+) kg of panels, ([\d.]+) kg of connectors and ([\d.]+) kg of feet and casters: ([\d.]+) kg/.exec(
        await cuts("docs/demo/first-bench.frame.json"),
      );
    const [bars = 0, panels = 0, connectors = 0, feet = 0, all = 0] = (told ?? []).slice(1).map(Number);
    expect(all).toBeGreaterThan(0);
    expect(Math.abs(bars + panels + connectors + feet - all)).toBeLessThan(0.2);
  });

  it("takes a saw cut of nothing, written bare", async () => {
    expect(JSON.parse(await cuts("tests/cures/bench.frame.json", "--as", "json", "--kerf", "0")).kerf).toBe(0);
  });

  it("takes no saw cut that no saw makes", async () => {
    for (const kerf of ["1e9", "21 mm", "-1"])
      expect((await run("tests/cures/bench.frame.json", `--kerf=${kerf}`)).stderr, kerf).toMatch(/expected 0 to 20 mm/);
    expect(JSON.parse(await cuts("tests/cures/bench.frame.json", "--as", "json", "--kerf", "20 mm")).kerf).toBe(0.02);
  });

  it("keeps what a spreadsheet would run as a formula as text", async () => {
    const table = await cuts("tests/cures/bench.frame.json", "--as", "csv");
    for (const line of table.trim().split("\r\n")) expect(line).not.toMatch(/(^|,)[=+@]/);
    expect(table.split("\r\n")[0]).toBe("kind,name,count,length mm,width mm,work,bars,kg each");
  });

  it("counts spare nuts where the house asks for them: one for each slot that takes nuts", async () => {
    const nuts = async (...more: readonly string[]): Promise<number> => {
      const list = JSON.parse(await cuts("tests/cures/bench.frame.json", "--as", "json", ...more)) as CutJson;
      return list.parts.filter((part) => part.kind === "nut").reduce((sum, part) => sum + part.count, 0);
    };
    const file = place.write("spare.house.json", JSON.stringify({ format: 1, criteria: { "spare-nuts": 1 } }));
    // Slots in use: 4 legs at the top on 2 sides, and inwards where a shelf bar meets them; 2 top bars below and inwards;
    // 2 cross bars and 4 shelf bars on 2 sides, 2 of them inwards too.
    const spare = (await nuts("--house", file)) - (await nuts());
    expect(spare).toBe(4 * 3 + 2 * 2 + 6 * 2 + 2);
  });
});
