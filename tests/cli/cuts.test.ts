import { execFileSync } from "node:child_process";
import { describe, expect, it } from "vitest";
import { temporaryFolder } from "../host/temporary-folder.ts";

function cuts(...args: readonly string[]): string {
  return execFileSync(process.execPath, ["--import", "tsx", "src/cli/cli.ts", "cuts", ...args], { encoding: "utf8" });
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
  it("lists lengths worked by hand, and counts screws and nuts by their joints", () => {
    const list = JSON.parse(cuts("tests/cures/bench.frame.json", "--as", "json")) as CutJson;
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

  it("takes a saw cut of nothing, written bare", () => {
    expect(JSON.parse(cuts("tests/cures/bench.frame.json", "--as", "json", "--kerf", "0")).kerf).toBe(0);
  });

  it("keeps what a spreadsheet would run as a formula as text", () => {
    const table = cuts("tests/cures/bench.frame.json", "--as", "csv");
    for (const line of table.trim().split("\r\n")) expect(line).not.toMatch(/(^|,)[=+@]/);
    expect(table.split("\r\n")[0]).toBe("kind,name,count,length mm,width mm,work,bars");
  });

  it("counts spare nuts where the house asks for them: one for each slot that takes nuts", () => {
    const nuts = (...more: readonly string[]): number => {
      const list = JSON.parse(cuts("tests/cures/bench.frame.json", "--as", "json", ...more)) as CutJson;
      return list.parts.filter((part) => part.kind === "nut").reduce((sum, part) => sum + part.count, 0);
    };
    const folder = temporaryFolder();
    const file = folder.write("spare.house.json", JSON.stringify({ format: 1, criteria: { "spare-nuts": 1 } }));
    // Slots in use: 4 legs at the top on 2 sides, and inwards where a shelf bar meets them; 2 top bars below and inwards;
    // 2 cross bars and 4 shelf bars on 2 sides, 2 of them inwards too.
    const spare = nuts("--house", file) - nuts();
    folder.remove();
    expect(spare).toBe(4 * 3 + 2 * 2 + 6 * 2 + 2);
  });
});
