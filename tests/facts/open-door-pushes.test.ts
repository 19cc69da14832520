import { describe, expect, it } from "vitest";
import { factOf } from "../../src/facts/fact.ts";
import { footPushes } from "../../src/facts/foot-pushes.ts";
import { openDoorPushes } from "../../src/facts/open-door-pushes.ts";
import { structure } from "../../src/facts/structure.ts";
import { turnedLoads } from "../../src/facts/turned-loads.ts";
import type { Vec3 } from "../../src/geometry/vector.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { gated, gatedOnThree, moreByHand } from "../rules/gated-table.ts";
import { table } from "../rules/table.ts";
import { frameOf, one } from "./known.ts";

const openOf = (file: FrameFile) => {
  const found = factOf(openDoorPushes, frameOf(file));
  return new Map([...found].map(([foot, push]) => [foot.ref.id, push]));
};
const drawnOf = (file: FrameFile) =>
  new Map(factOf(footPushes, frameOf(file)).map(({ foot, push }) => [foot.ref.id, push]));

describe("pushes of the floor while a door stands open", () => {
  it("are those of the same frame drawn with the door open, load on it and all", () => {
    const [opened, drawn] = [openOf(gated(false)), drawnOf(gated(true))];
    expect([...opened.keys()]).toEqual([...drawn.keys()]);
    for (const [foot, { push, open }] of opened) {
      // Wide open is what was drawn; half open bears less on leg-1 and may bear more on others.
      if (open !== "gate wide open") continue;
      const { measured } = one(drawn.get(foot), foot);
      expect(Math.abs(push.measured / measured - 1), foot).toBeLessThan(1e-3);
    }
    expect([...opened.values()].some(({ open }) => open === "gate wide open")).toBe(true);
  });

  it("are those of statics where three feet bear it: weights times their ways forward and aside", () => {
    const [opened, shut] = [openOf(gatedOnThree()), drawnOf(gatedOnThree())];
    const more = (foot: string): number =>
      one(opened.get(foot), "push").push.measured - one(shut.get(foot), "shut").measured;
    const [wide, half] = [moreByHand(Math.PI / 2), moreByHand(Math.PI / 4)];
    expect(one(opened.get("leg-1.foot")).open).toBe("gate wide open");
    expect(more("leg-1.foot")).toBeCloseTo(wide[0], 3);
    // leg-2 bears the more of it half open.
    expect(half[1]).toBeGreaterThan(wide[1]);
    expect(one(opened.get("leg-2.foot")).open).toBe("gate half open");
    expect(more("leg-2.foot")).toBeCloseTo(half[1], 3);
  });

  it("turn what pulls on the leaf with it, and leave weight as it is", () => {
    const frame = frameOf(gated(false));
    const pin = { point: [0, 0, 0], axis: [0, 0, -1] } as const;
    const on = factOf(structure, frame);
    const piece = one(on.piecesOf("upper")[0], "piece");
    const load = (force: Vec3) => ({ kind: "point", member: piece, along: 0, force, arm: [0, 0.02, 0] }) as const;
    const turn = { pin, angle: Math.PI / 2 };
    const turned = (force: Vec3): Vec3[] => {
      const [found] =
        turnedLoads({ members: [load(force)] }, on, (bar) => (bar === "upper" ? turn : undefined)).members ?? [];
      return found?.kind === "point" ? [found.force ?? [0, 0, 0], found.arm ?? [0, 0, 0]] : [];
    };
    const close = (v: readonly number[]) => v.map((c) => expect.closeTo(c, 12));
    expect(turned([0, -20, 0])).toEqual([close([-20, 0, 0]), close([0.02, 0, 0])]);
    expect(turned([0, 0, -50])).toEqual([close([0, 0, -50]), close([0.02, 0, 0])]);
    // The moment of a box that hangs before the leaf goes round with it.
    const moment: Vec3 = [3, 0, 0];
    const [found] = turnedLoads({ members: [{ ...load([0, 0, -50]), moment }] }, on, () => turn).members ?? [];
    expect(found?.kind === "point" && found.moment).toEqual(close([0, -3, 0]));
  });

  it("are asked of no frame without doors, nor of a door that hangs on nothing upright", () => {
    expect(openOf(table()).size).toBe(0);
    const file = gated(false);
    for (const door of file.doors ?? []) Object.assign(door, { axis: "+x" });
    expect(openOf(file).size).toBe(0);
  });
});
