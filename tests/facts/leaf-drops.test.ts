import { describe, expect, it } from "vitest";
import { GRAVITY } from "../../src/facts/acting.ts";
import { leafDrops } from "../../src/facts/leaf-drops.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { builtinStock } from "../../src/model/stock/builtin-stock.ts";
import { barData } from "../rules/gantry.ts";
import { dropByHand, hungLeaf, type Leaf } from "../rules/hung-leaf.ts";
import { known, one } from "./known.ts";

function statesOf(file: FrameFile) {
  const found = known(leafDrops, file);
  const [door] = found.kind === "solved" ? found.all : [];
  if (door?.kind !== "hangs") throw new Error(JSON.stringify(found));
  const state = (opening: string) =>
    one(
      door.states.find((s) => s.opening === opening),
      opening,
    );
  return { reach: door.reach, shut: state("shut"), half: state("half open"), wide: state("wide open") };
}

const BOUNDS = ["soft", "typical", "stiff"] as const;

describe("the drop of a leaf on its hinges", () => {
  it.each(BOUNDS)("is what racking, post and play make by slope-deflection, within 2 percent: %s", (bound) => {
    const { shut, reach } = statesOf(hungLeaf());
    const hand = dropByHand(bound);
    expect(reach).toBeCloseTo(Math.hypot(0.462, 0.02), 9);
    expect(Math.abs(shut.drops[bound] / hand.all - 1)).toBeLessThan(0.02);
  });

  // The post's flat side looks along x: open at 90° the leaf hangs before its weak axis.
  const slender: Leaf = { post: "40x80-8", tall: "+x" };
  it.each(BOUNDS)("turns with the leaf about the other axis of its post: %s", (bound) => {
    const { shut, wide } = statesOf(hungLeaf(slender));
    const edge = dropByHand(bound, slender);
    const open = dropByHand(bound, slender, "wide open");
    expect(Math.abs(shut.drops[bound] / edge.all - 1)).toBeLessThan(0.02);
    expect(Math.abs(wide.drops[bound] / open.all - 1)).toBeLessThan(0.02);
  });

  it("knows no latch: what else ties the leaf to the frame is off", () => {
    const file = hungLeaf();
    file.bars.push({ id: "other", profile: "40x40-8", from: [528, 0, 0], to: [528, 0, 1100] });
    file.bars.push({ id: "across", profile: "40x40-8", from: [0, 0, 1060], to: [528, 0, 1060] });
    file.joints = [...(file.joints ?? []), { bars: ["across"], by: "corner" }];
    const before = statesOf(file);
    for (const door of file.doors ?? []) door.latch = { part: "pivot-40", bars: ["free", "other"], at: [506, 0, 600] };
    expect(statesOf(file)).toEqual(before);
  });

  it("racks no more under a sheet screwed to its bars at 300 mm; at 400 mm it does", () => {
    const file = hungLeaf();
    const cover = (pitch: number) => {
      file.panels = [
        {
          id: "cover",
          sheet: "plywood-18",
          held: "on-face",
          on: "-y",
          screws: { pitch },
          bars: ["hung", "free", "lower", "upper"],
        },
      ] as unknown as NonNullable<FrameFile["panels"]>;
      for (const door of file.doors ?? []) door.panels = ["cover"];
      return statesOf(file).shut.drops;
    };
    const [square, racked] = [cover(300), cover(400)];
    // The sheet, 460 by 800 mm, has its centre over that of the leaf: what the post gives grows with the weight, what the corners give is gone.
    const { thickness, density } = one(builtinStock().sheets.get("plywood-18"));
    const sheet = 0.46 * 0.8 * thickness * density * GRAVITY;
    for (const bound of BOUNDS) {
      const { racking, post, play, weight } = dropByHand(bound);
      const held = play + post * (1 + sheet / weight);
      // The screws slip a little as well.
      expect(square[bound] / held).toBeGreaterThan(0.98);
      expect(square[bound] / held).toBeLessThan(1.05);
      expect(racked[bound]).toBeGreaterThan(held + racking);
    }
  });

  it("of a lone hinge is what its own plate lets it lean, and its 5 kN·m/rad", () => {
    const found = statesOf(hungLeaf({ hinges: [600] })).shut.drops.typical;
    const { racking, weight, centre } = dropByHand("typical");
    const { E, section } = barData("80x80-8");
    const post = weight * (centre + 0.042) * (1 / 24e3 + 0.5 / (E * section.Iz)) * (0.462 + 0.042);
    // 38 mm of plate hold the pin.
    const hinge = ((weight * centre) / 5e3) * 0.462 + (0.17e-3 / 0.038) * 0.462;
    expect(Math.abs(found / (racking + post + hinge) - 1)).toBeLessThan(0.02);
  });

  it("is asked only of doors that hang from one side", () => {
    const whyNot = (edit: (door: NonNullable<FrameFile["doors"]>[number], file: FrameFile) => void) => {
      const file = hungLeaf();
      for (const door of file.doors ?? []) edit(door, file);
      const found = known(leafDrops, file);
      const [door] = found.kind === "solved" ? found.all : [];
      return door?.kind === "held otherwise" ? door.why : door?.kind;
    };
    const flap = whyNot((door) => {
      door.axis = "+x";
    });
    expect(flap).toBe("its hinge line is not upright");
    const rolls = whyNot((_, file) => {
      file.stands?.push({ part: "caster-75-M8", bars: ["free"] });
    });
    expect(rolls).toBe("it stands on the floor");
  });
});
