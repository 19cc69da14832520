import { describe, expect, it } from "vitest";
import { compareBars, compareFindings } from "../../src/inspection/compare.ts";
import type { Finding, Report } from "../../src/inspection/report.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { compareJson, compareText } from "../../src/report/compare/forms.ts";
import { frameOf, one } from "../facts/known.ts";
import { loose, openEnd, rejected, sagging } from "../report/sample-report.ts";
import { barOf, edited, tee } from "../rules/base-frames.ts";

const report = (...findings: readonly Finding[]): Report => ({ ...rejected, findings });
const sagOf = (measured: number, limit = 0.0049): Finding => {
  if (!sagging.measure) throw new Error("no measure");
  const shown = { measured: `${(measured * 1000).toFixed(1)} mm`, limit: `${(limit * 1000).toFixed(1)} mm` };
  return { ...sagging, measure: { ...sagging.measure, measured, limit, utilisation: measured / limit, shown } };
};

describe("findings of two revisions", () => {
  it("are new, gone or as before by their fingerprint", () => {
    const found = compareFindings(report(sagging, loose), report(loose, openEnd));
    expect(found.fresh).toEqual([openEnd]);
    expect(found.gone).toEqual([sagging]);
    expect(found.alike).toEqual([{ before: loose, after: loose }]);
  });

  it("are worse when more of the limit is used, better when less, also where the limit changed", () => {
    expect(compareFindings(report(sagging), report(sagOf(0.009))).worse).toHaveLength(1);
    expect(compareFindings(report(sagging), report(sagOf(0.006))).better).toHaveLength(1);
    expect(compareFindings(report(sagging), report(sagOf(0.0081, 0.002))).worse).toHaveLength(1);
    expect(compareFindings(report(sagOf(0.0081)), report(sagOf(0.0081))).alike).toHaveLength(1);
  });

  it("are better when conceded or of a lower level", () => {
    const conceded = { reason: "measured", who: "the owner", until: "2027-06-30" };
    expect(compareFindings(report(loose), report({ ...loose, conceded })).better).toHaveLength(1);
    expect(compareFindings(report({ ...loose, level: "hold" }), report(loose)).worse).toHaveLength(1);
  });

  it("are paired by rule, message and part where the sentence names other parts now", () => {
    const other = { ...sagOf(0.0095), print: "another" };
    expect(compareFindings(report(sagging), report(other)).worse).toEqual([{ before: sagging, after: other }]);
  });

  it("pair each finding once", () => {
    const found = compareFindings(report(loose), report(loose, { ...loose, print: "second" }));
    expect([found.alike.length, found.fresh.length, found.gone.length]).toEqual([1, 1, 0]);
  });
});

describe("bars of two revisions", () => {
  const base = frameOf(tee());
  const changesOf = (edit: (file: FrameFile) => void) => compareBars(base, frameOf(edited(tee(), edit)));
  const nothing = { added: [], removed: [], renamed: [], perhaps: [], moved: [], changed: [] };

  it("are none where nothing changed", () => {
    expect(changesOf(() => {})).toEqual(nothing);
  });

  it("are moved by the distance of the end that went furthest: 30 and 40 mm make 50", () => {
    const { moved } = changesOf((file) => {
      const rail = barOf(file, "rail");
      const [x, y, z] = rail.to as [number, number, number];
      rail.to = [x + 30, y, z + 40];
    });
    // To the nanometre: no rounding of coordinates in it.
    expect(moved).toEqual([{ bar: "rail", by: 0.05, inMetal: 0.05 }]);
  });

  it("move in metal by how far the cut goes: drawn to the axis of a post of 40 mm it is at the post's face, 20 mm off", () => {
    const drawnFrom = (x: number) =>
      changesOf((file) => {
        barOf(file, "rail").from = [x, 0, 500];
      }).moved;
    expect(drawnFrom(8)).toEqual([{ bar: "rail", by: 0.008, inMetal: 0 }]);
    expect(drawnFrom(21.5)).toEqual([{ bar: "rail", by: 0.0215, inMetal: 0.0015 }]);
  });

  it("move in metal alone where the post they meet is another one", () => {
    const { moved } = changesOf((file) => {
      barOf(file, "post").profile = "45x45-10";
    });
    expect(moved).toEqual([{ bar: "rail", by: 0, inMetal: 0.0025 }]);
  });

  it("are added, and changed in profile or stance", () => {
    const found = changesOf((file) => {
      barOf(file, "rail").profile = "40x80-8";
      file.bars.push({
        id: "extra",
        profile: "40x40-8",
        from: [0, 500, 0],
        to: [0, 900, 0],
      } as FrameFile["bars"][number]);
    });
    expect(found.added).toEqual(["extra"]);
    expect(found.changed).toEqual([{ bar: "rail", what: ["profile"], profile: { from: "40x40-8", to: "40x80-8" } }]);
  });

  it("are renamed where only the id is another", () => {
    const from = frameOf(
      edited(tee(), (file) => {
        file.bars.push({
          id: "one",
          profile: "40x40-8",
          from: [0, 500, 0],
          to: [0, 900, 0],
        } as FrameFile["bars"][number]);
      }),
    );
    const to = frameOf(
      edited(tee(), (file) => {
        file.bars.push({
          id: "other",
          profile: "40x40-8",
          from: [0, 500, 0],
          to: [0, 900, 0],
        } as FrameFile["bars"][number]);
      }),
    );
    expect(compareBars(from, to)).toEqual({ ...nothing, renamed: [{ from: "one", to: "other" }] });
  });
});

describe("bars that may be one under another id in another place", () => {
  const bar = (id: string, x: number, length: number, profile = "40x40-8"): FrameFile["bars"][number] => ({
    id,
    profile,
    from: [x, 500, 0],
    to: [x, 500 + length, 0],
  });
  const changes = (old: readonly FrameFile["bars"][number][], now: readonly FrameFile["bars"][number][]) => {
    const [from, to] = [old, now].map((bars) => frameOf(edited(tee(), (file) => void file.bars.push(...bars))));
    return compareBars(one(from), one(to));
  };

  it("are told where profile and drawn length agree, nearest first, and stay among those added and removed", () => {
    const { added, removed, perhaps } = changes(
      [bar("a", 0, 400), bar("b", 300, 400)],
      [bar("c", 310, 400), bar("d", 90, 400)],
    );
    expect(perhaps).toEqual([
      { from: "b", to: "c" },
      { from: "a", to: "d" },
    ]);
    expect([added, removed]).toEqual([
      ["c", "d"],
      ["a", "b"],
    ]);
  });

  it("are not told where profile or length is another", () => {
    expect(changes([bar("a", 0, 400)], [bar("b", 50, 401)]).perhaps).toEqual([]);
    expect(changes([bar("a", 0, 400)], [bar("b", 50, 400, "40x80-8")]).perhaps).toEqual([]);
  });
});

describe("what compare writes", () => {
  const bars = {
    added: ["rail-9"],
    removed: [],
    renamed: [],
    perhaps: [{ from: "rail-1", to: "rail-9" }],
    moved: [
      { bar: "rail-3", by: 0.0215, inMetal: 0.0015 },
      { bar: "rail-4", by: 0.05, inMetal: 0.05 },
      { bar: "rail-5", by: 0, inMetal: 0.02 },
      { bar: "rail-6", by: 0.05, inMetal: 0.05 },
    ],
    changed: ["leg-1", "leg-2"].map((bar) => ({
      bar,
      what: ["profile" as const],
      profile: { from: "40x40-8", to: "40x80-8" },
    })),
  };
  const [before, after] = [report(sagging, loose), report(sagOf(0.009), openEnd)];
  const comparison = { before, after, bars, findings: compareFindings(before, after) };

  it("reads from bad news to good, with the amounts", () => {
    const text = [...compareText(comparison)].join("");
    expect(text).toContain(
      [
        "1 bar added: rail-9",
        "perhaps renamed and moved, as profile and length agree: rail-1 to rail-9",
        "2 bars moved by 50 mm: rail-4 and rail-6",
        "1 bar moved by 1.5 mm in metal, 21.5 mm as drawn: rail-3",
        "1 bar moved by 20 mm in metal alone: rail-5",
        "2 bars changed in profile 40x40-8 → 40x80-8: leg-1 and leg-2",
        "",
      ].join("\n"),
    );
    expect(text).toMatch(/NEW {5}rail-3, between leg-1 and leg-4: CONCEDED the far end is open/);
    expect(text).toContain("was 8.1 mm of 4.9 mm, is 9.0 mm of 4.9 mm allowed [bar.sags]");
    expect(text).toMatch(/GONE {4}brace-1: REJECT turns freely/);
    expect(text.indexOf("NEW")).toBeLessThan(text.indexOf("GONE"));
    expect(text).toContain("1 new finding, 1 worse, 0 better, 1 gone, 0 as before.");
  });

  it("tells once, with how many times, what is said alike of one part", () => {
    const [one] = before.findings;
    if (!one) throw new Error("no finding");
    const twice = { fresh: [one, { ...one, print: "another" }], gone: [], worse: [], better: [], alike: [] };
    const text = [...compareText({ ...comparison, findings: twice })].join("");
    expect(text.match(/^NEW .*$/gm)).toEqual([expect.stringMatching(/\[bar\.sags\], 2 times$/)]);
    expect(text).toContain("2 new findings,");
  });

  it("is one JSON document with everything in it", () => {
    const document = JSON.parse([...compareJson(comparison)].join("")) as {
      bars: unknown;
      findings: Record<string, unknown[]>;
    };
    expect(document.bars).toEqual(bars);
    expect(Object.entries(document.findings).map(([key, list]) => [key, list.length])).toEqual([
      ["new", 1],
      ["gone", 1],
      ["worse", 1],
      ["better", 0],
      ["alike", 0],
    ]);
  });
});
