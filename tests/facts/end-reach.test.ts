import { describe, expect, it } from "vitest";
import { endReach } from "../../src/facts/end-reach.ts";
import { ends } from "../../src/facts/ends.ts";
import { factOf } from "../../src/facts/fact.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { barOf } from "../rules/base-frames.ts";
import { frameOf, one } from "./known.ts";

/*
 * A cupboard of 40x40-8, 1040 mm square outside and 1500 mm high, sheets on all four sides and on top, standing on the floor.
 * A peg of 20x20-5 reaches from the back wall to its middle: its end at (500, 500) lies 500 mm off the planes of front and back, in
 * which the middles of their posts lie, 490 mm off those of the sides.
 */
const walls = [
  { id: "left", on: "-x", bars: ["p1", "p4"] },
  { id: "right", on: "+x", bars: ["p2", "p3"] },
  { id: "front", on: "-y", bars: ["p1", "p2"] },
  { id: "back", on: "+y", bars: ["p4", "p3"] },
] as const;
const cupboard = (pegHeight: number): FrameFile => ({
  format: 1,
  title: "cupboard",
  units: "mm-N-kg",
  defaults: { caps: "none" },
  bars: [
    { id: "p1", profile: "40x40-8", from: [0, 0, 0], to: [0, 0, 1500] },
    { id: "p2", profile: "40x40-8", from: [1000, 0, 0], to: [1000, 0, 1500] },
    { id: "p3", profile: "40x40-8", from: [1000, 1000, 0], to: [1000, 1000, 1500] },
    { id: "p4", profile: "40x40-8", from: [0, 1000, 0], to: [0, 1000, 1500] },
    { id: "r1", profile: "40x40-8", from: [20, 0, 1480], to: [980, 0, 1480] },
    { id: "r2", profile: "40x40-8", from: [20, 1000, 1480], to: [980, 1000, 1480] },
    { id: "peg", profile: "20x20-5", from: [500, 980, pegHeight], to: [500, 500, pegHeight] },
  ],
  panels: [
    ...walls.map(({ id, on, bars }) => ({
      id,
      sheet: "polycarbonate-5",
      held: "on-face" as const,
      on,
      bars: [...bars] as [string, string],
      screws: { pitch: 300 },
    })),
    { id: "roof", sheet: "polycarbonate-5", held: "laid", bars: ["r1", "r2"], overhang: [20, 20, 0, 0] },
  ],
});

function peg(file: FrameFile) {
  const frame = frameOf(file);
  const end = one(factOf(ends, frame).find(({ ref }) => ref.id === "peg/to"));
  const reach = factOf(endReach, frame);
  return { kept: reach.keptOff(end), meets: reach.meets(end) };
}
const changed = (height: number, edit: (file: FrameFile) => void): FrameFile => {
  const file = cupboard(height);
  edit(file);
  return file;
};
const without = (id: string) => (file: FrameFile) => {
  file.panels = (file.panels ?? []).filter((panel) => panel.id !== id);
};
/** Lets the front end this far over the floor, mm. */
const gapUnder = (gap: number) => (file: FrameFile) => {
  const overhang: [number, number, number, number] = [0, 0, -gap, 0];
  for (const panel of file.panels ?? []) if (panel.id === "front") panel.overhang = overhang;
};

describe("hands and cut ends, by ISO 13857:2019, Tables 1, 4 and 7", () => {
  it("sheets all round and on top keep hands off", () => {
    expect(peg(cupboard(900)).kept).toBe(true);
  });

  it("not with a wall left out, nor with the roof left out of a low cupboard", () => {
    expect(peg(changed(900, without("front"))).kept).toBe(false);
    // Over walls of 1500 mm, the standard's line of 1400 mm: 900 mm to what lies 1000 mm high; the peg lies 500 mm behind.
    expect(peg(changed(900, without("roof"))).kept).toBe(false);
  });

  it("a slot of 50 mm at the floor lets a whole arm in, 850 mm, and a leg less far", () => {
    // From the slot's upper edge: √(500² + (z − 10 − 50)²); 850 mm are reached at z = 60 + √(850² − 500²) = 747 mm.
    expect(peg(changed(740, gapUnder(50))).kept).toBe(false);
    expect(peg(changed(755, gapUnder(50))).kept).toBe(true);
  });

  it("a slot of 8 mm keeps a fingertip at 20 mm", () => {
    expect(peg(changed(200, gapUnder(8))).kept).toBe(true);
  });

  it("a wall that swings open is none", () => {
    const hung = changed(900, (file) => {
      file.bars.push({ id: "stile", profile: "40x40-8", from: [60, -42, 100], to: [60, -42, 1400] });
      file.doors = [
        {
          id: "door",
          bars: ["stile"],
          panels: ["front"],
          axis: "+z",
          hinges: [{ part: "hinge-40", bars: ["stile", "p1"], at: [21, -22, 300] }],
          swing: [0, 90],
        },
      ];
    });
    expect(peg(hung).kept).toBe(false);
  });
});

describe("what runs into an end that sticks out", () => {
  const out = (height: number, edit: (file: FrameFile) => void = () => {}): string => {
    const file = cupboard(height);
    file.panels = [];
    barOf(file, "peg").from = [500, 1020, height];
    barOf(file, "peg").to = [500, 1500, height];
    edit(file);
    return peg(file).meets;
  };

  it("legs up to the knee, eyes and heads from 1.3 to 2 m, hands between", () => {
    expect([100, 590, 610, 1290, 1310, 1990].map((z) => out(z))).toEqual([
      "legs",
      "legs",
      "hands",
      "hands",
      "eyes",
      "eyes",
    ]);
  });

  it("only hands where something stands less than 0.5 m before it, or where it looks up", () => {
    const fenced = (gap: number) => (file: FrameFile) => {
      file.bars.push({ id: "fence", profile: "40x40-8", from: [0, 1520 + gap, 1400], to: [1000, 1520 + gap, 1400] });
    };
    expect(out(1400, fenced(490))).toBe("hands");
    expect(out(1400, fenced(520))).toBe("eyes");
    const up = (file: FrameFile): void => {
      Object.assign(barOf(file, "peg"), { from: [500, 500, 900], to: [500, 500, 1400] });
    };
    expect(out(900, up)).toBe("hands");
  });
});
