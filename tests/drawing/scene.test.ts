import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { sceneOf, wholeScene } from "../../src/drawing/scene.ts";
import type { Solid } from "../../src/drawing/solids/solid.ts";
import { boundsOf } from "../../src/geometry/bounds.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { frameOf } from "../facts/known.ts";

const guard = frameOf(
  JSON.parse(readFileSync(new URL("../../docs/demo/mixer-guard.frame.json", import.meta.url), "utf8")) as FrameFile,
);
const { solids } = sceneOf(guard);
const mm = (of: readonly Solid[]): { readonly min: readonly number[]; readonly max: readonly number[] } => {
  const { min, max } = boundsOf(of.flatMap(({ prism }) => prism.vertices));
  const round = (point: readonly number[]): readonly number[] => point.map((c) => Math.round(c * 1e4) / 10 + 0);
  return { min: round(min), max: round(max) };
};

describe("the scene of a guard with a door", () => {
  it("holds every panel, those in slots too", () => {
    const drawn = new Set(solids.filter(({ kind }) => kind === "panel").map(({ of }) => of.id));
    expect([...drawn].sort()).toEqual(guard.panels.map(({ ref }) => ref.id).sort());
  });

  // By hand: the panel is seen between the faces of the bars round it, half of 40 mm off their centrelines, and is 5 mm thick
  // about the plane of the slots, which is that of the centrelines.
  it("shows a panel in slots from face to face of its bars, in the plane of their slots", () => {
    const panel = guard.panels.find(({ ref }) => ref.id === "left-upper");
    const bar = (id: string) => guard.bars.find(({ ref }) => ref.id === id) ?? guard.bars[0];
    const [front, back, low, high] = ["post-1", "post-4", "mid-left", "top-left"].map(bar);
    if (!panel || !front || !back || !low || !high) throw new Error("the guard is another");
    const { min, max } = mm(solids.filter(({ of }) => of.id === "left-upper"));
    const at = (value: number | undefined): number => Math.round((value ?? 0) * 1e4) / 10;
    expect(min[0]).toBeCloseTo(at(front.from[0]) - 2.5, 6);
    expect(max[0]).toBeCloseTo(at(front.from[0]) + 2.5, 6);
    expect(min[1]).toBeCloseTo(at(front.from[1]) + 20, 6);
    expect(max[1]).toBeCloseTo(at(back.from[1]) - 20, 6);
    expect(min[2]).toBeCloseTo(at(low.from[2]) + 20, 6);
    expect(max[2]).toBeCloseTo(at(high.from[2]) - 20, 6);
  });

  it("hangs the door on its hinges and holds it by its latch: leaves on the bars, pins on the axis", () => {
    const door = guard.doors[0];
    if (!door) throw new Error("the guard has no door");
    const own = solids.filter(({ of }) => of.kind === "door");
    // Two leaves and a pin for each hinge and for the latch, which is a part of the same shape.
    expect(own).toHaveLength(3 * (door.hinges.length + 1));
    for (const { at, bars } of door.hinges) {
      const here = own.filter(
        ({ with: known, prism }) =>
          bars.every((id) => known.includes(id)) && prism.vertices.some((point) => Math.abs(point[2] - at[2]) < 0.05),
      );
      const { min, max } = mm(here);
      // Holes of hinge-40 lie 20 mm either side of the pin: leaves of 40 mm each, in front of the bars.
      expect(min[0]).toBeCloseTo(at[0] * 1000 - 40, 6);
      expect(max[0]).toBeCloseTo(at[0] * 1000 + 40, 6);
      expect(max[1]).toBeLessThanOrEqual(at[1] * 1000 + 1e-6);
    }
  });
});

describe("a frame drawn as a whole", () => {
  it("is the scene itself where it is of ordinary size", () => {
    const scene = sceneOf(guard);
    expect(wholeScene(scene)).toBe(scene);
  });

  it("leaves out connectors, screws and caps beyond 400 bars, and keeps every other part", () => {
    const many = Array.from({ length: 20 }, () => solids).flat();
    const large = wholeScene({ solids: many, clashing: new Set() });
    expect(new Set(large.solids.map(({ kind }) => kind))).toEqual(new Set(["bar", "panel", "stand"]));
    expect(large.solids.filter(({ kind }) => kind === "bar")).toHaveLength(20 * guard.bars.length);
    expect(large.solids.every(({ surfaces }) => surfaces.every(({ kind }) => kind === "skin"))).toBe(true);
  });
});
