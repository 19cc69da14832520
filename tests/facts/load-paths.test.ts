import { describe, expect, it } from "vitest";
import { bodies } from "../../src/facts/bodies.ts";
import { factOf } from "../../src/facts/fact.ts";
import { type LoadPath, loadPaths, type Passing } from "../../src/facts/load-paths.ts";
import { sectionOf } from "../../src/facts/sections.ts";
import { length, subtract } from "../../src/geometry/vector.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { textOf } from "../demo/inspect-demo.ts";
import { frameOf, one } from "./known.ts";

const file = JSON.parse(textOf("first-bench")) as FrameFile;
const bench = frameOf(file);
const paths = factOf(loadPaths, bench);
const trays = one(paths[0]);
/** Standard gravity, m/s² (ISO 80000-3), and density of the alloy, kg/m³ (EN 1999-1-1:2007, 3.2.5). */
const [G, ALLOY] = [9.80665, 2700];

const passing = (giver: string, taker: string): Passing =>
  one(
    trays.passings.find((p) => p.giver === giver && p.taker === taker),
    `passing of ${giver} to ${taker}`,
  );
const down = (path: LoadPath, feet: readonly string[]): number =>
  path.feet.filter(({ ref }) => feet.includes(ref.id)).reduce((sum, { force }) => sum - force[2], 0);

describe("how loads run to the floor", () => {
  it("tells the heaviest loads of use first, and brings all of them to the feet", () => {
    expect(trays.name).toBe("self-weight + trays");
    expect(paths.length).toBeGreaterThan(1);
    for (const { borne, applied } of paths)
      expect(length(subtract(borne, applied))).toBeLessThan(1e-6 * length(applied));
  });

  it("shares a load between the feet by the rule of the lever (Archimedes; any textbook of statics)", () => {
    // 1 kN on the front at 400 mm from its left end; the feet stand at 100 and 1400 mm, the front ones right under it.
    const under = (force: number): LoadPath => {
      const loads = [{ case: "load", on: "front", force, at: 400 }];
      return one(factOf(loadPaths, frameOf({ ...file, loads } as FrameFile))[0]);
    };
    const [some, loaded] = [under(1000), under(2000)];
    const more = (...feet: string[]): number => down(loaded, feet) - down(some, feet);
    expect(more("leg-1.foot", "leg-4.foot")).toBeCloseTo((1000 * 1000) / 1300, 3);
    expect(more("leg-2.foot", "leg-3.foot")).toBeCloseTo((1000 * 300) / 1300, 3);
    expect(more("leg-1.foot", "leg-2.foot")).toBeCloseTo(1000, 3);
  });

  it("has a bar that carries nothing give its own weight to its two ends, by screws where it hangs between posts", () => {
    const shelf = one(factOf(bodies, bench).get("shelf-3"));
    const weight = sectionOf(shelf.bar.profile).A * shelf.cutLength * ALLOY * G;
    const ends = [passing("shelf-3", "shelf-1"), passing("shelf-3", "shelf-2")];
    expect(-ends.reduce((sum, { seat, held }) => sum + seat[2] + held[2], 0)).toBeCloseTo(weight, 6);
    for (const { held, seat } of ends) {
      expect(-held[2]).toBeCloseTo(weight / 2, 6);
      expect(seat[2]).toBeCloseTo(0, 6);
    }
  });

  it("has a rail on its posts bear on them, and a leg bring what it takes and weighs to its foot", () => {
    const [top, shelf] = [passing("front", "leg-1"), passing("shelf-1", "leg-1")];
    expect(top.held[2]).toBeCloseTo(0, 6);
    expect(top.seat[2]).toBeLessThan(-400);
    const leg = one(factOf(bodies, bench).get("leg-1"));
    const weight = sectionOf(leg.bar.profile).A * leg.cutLength * ALLOY * G;
    const rest = down(trays, ["leg-1.foot"]) - (weight - top.seat[2] - shelf.held[2] - shelf.seat[2]);
    // Besides, the brackets and the foot on it: less than 0.2 kg.
    expect(rest).toBeGreaterThan(0);
    expect(rest).toBeLessThan(0.2 * G);
    // Pressed all the way down, the more the lower.
    const stretches = trays.carriedBy("leg-1");
    expect(stretches.every(({ axial }) => axial < 0)).toBe(true);
    expect(-(stretches[0]?.axial ?? 0)).toBeGreaterThan(-(stretches.at(-1)?.axial ?? 0));
    // The shelf keeps the legs together: what they are pushed apart with, it takes, and the front gives.
    expect(top.held[0]).toBeCloseTo(-shelf.held[0], 6);
  });
});
