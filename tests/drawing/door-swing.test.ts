import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { arcBands, openDoor, swingsOf } from "../../src/drawing/door-swing.ts";
import { modelOf } from "../../src/drawing/model3d/model-of.ts";
import { sceneOf } from "../../src/drawing/scene.ts";
import { symbolsOf } from "../../src/drawing/symbols.ts";
import { swungList, swungParts } from "../../src/viewer/doors.ts";
import { meshesOf } from "../../src/viewer/mesh.ts";
import { textOf } from "../demo/inspect-demo.ts";
import { frameOf, one } from "../facts/known.ts";

const guard = frameOf(JSON.parse(textOf("mixer-guard")));
const scene = sceneOf(guard);
const swing = one(swingsOf(guard, scene)[0]);

describe("a door as it is drawn", () => {
  it("takes its leaf with it, and what is fastened to nothing else", () => {
    const ids = new Set(swing.parts.map(({ of }) => of.id));
    for (const id of ["door-hung", "door-free", "door-head", "door-lower", "door-upper"]) expect(ids).toContain(id);
    for (const id of ["post-1", "jamb", "mid-left"]) expect(ids).not.toContain(id);
    // Of hinges and latch the half on the leaf goes, and the half on what stands stays.
    const halves = (bar: string): number => swing.parts.filter(({ on }) => on === bar).length;
    const drawn = (bar: string): number => scene.solids.filter(({ on }) => on === bar).length;
    for (const bar of ["door-hung", "door-free"]) expect(halves(bar)).toBe(drawn(bar));
    // Two hinges, each with a leaf, a pin and the heads of two screws.
    expect(swing.parts.filter(({ with: held, on }) => held.includes("post-1") && on === "door-hung").length).toBe(8);
    for (const bar of ["post-1", "jamb"]) expect(halves(bar)).toBe(0);
  });

  it("goes on a circle about its hinges, by 110° clockwise from above", () => {
    const [x, y] = [0.042, 0];
    const from = one(swing.arc[0]);
    const to = one(swing.arc.at(-1));
    const radius = Math.hypot(from[0] - x, from[1] - y);
    for (const point of swing.arc) {
      expect(Math.hypot(point[0] - x, point[1] - y)).toBeCloseTo(radius, 9);
      expect(point[2]).toBeCloseTo(from[2], 9);
    }
    const angle = Math.atan2(to[1] - y, to[0] - x) - Math.atan2(from[1] - y, from[0] - x);
    expect((angle * 180) / Math.PI).toBeCloseTo(-110, 6);
    expect(swing.strikes).toBeUndefined();
    // door-free stands at x = 818 mm when shut, 42 mm from the hinges' line is where it turns: open it is before the front.
    const free = one(openDoor(swing).find(({ solid }) => solid.of.id === "door-free"));
    for (const vertex of free.solid.prism.vertices) expect(vertex[1]).toBeLessThan(-0.7);
  });

  it("is drawn where it strikes, with the rest of its way in another line", () => {
    const fault = frameOf(JSON.parse(readFileSync("docs/rules/door.collides.fault.frame.json", "utf8")));
    const struck = one(swingsOf(fault, sceneOf(fault))[0]);
    // docs/rules/door.collides.md: 180.12° of 190°.
    expect(((struck.strikes ?? 0) * 180) / Math.PI).toBeCloseTo(180.12, 2);
    expect(arcBands(struck).map(({ dashes }) => dashes === undefined)).toEqual([false, true]);
  });

  it("is turned by the viewer as one, and nothing else with it", () => {
    const model = modelOf(guard, { scene, symbols: symbolsOf(guard, scene), pins: [], checks: [] });
    const { solid } = meshesOf(model);
    const door = one(model.doors[0]);
    const parts = new Set(door.parts);
    expect(parts.has(-1)).toBe(false);
    const at = swungList(solid.at, solid.part, swungParts(model, [1]), "point");
    const arm = (list: Float32Array, i: number): number =>
      Math.hypot((list[3 * i] ?? 0) - (door.point[0] ?? 0), (list[3 * i + 1] ?? 0) - (door.point[1] ?? 0));
    let moved = 0;
    solid.part.forEach((part, i) => {
      const same = [0, 1, 2].every((k) => at[3 * i + k] === solid.at[3 * i + k]);
      if (!parts.has(part)) expect(same).toBe(true);
      else if (!same) moved++;
      if (parts.has(part) && i % 50 === 0) expect(arm(at, i)).toBeCloseTo(arm(solid.at, i), 1);
    });
    expect(moved).toBeGreaterThan(1000);
    expect(swungList(solid.at, solid.part, swungParts(model, [0]), "point")).toEqual(solid.at);
  });
});
