import { describe, expect, it } from "vitest";
import { footing } from "../../src/facts/footing.ts";
import { jointForces } from "../../src/facts/joint-forces.ts";
import { response } from "../../src/facts/response.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { edited } from "../rules/base-frames.ts";
import { gantry } from "../rules/gantry.ts";
import { table } from "../rules/table.ts";
import { frameOf, known, one } from "./known.ts";

const LOAD = 1000;

/** A bar between the two beams that hangs on a T plate over each end of it, a load in its middle; plates name the bars in this order. */
function hung(first: "mid" | "beam"): FrameFile {
  return edited(gantry(1200), (file) => {
    file.bars.push({ id: "mid", profile: "40x40-8", from: [600, 0, 600], to: [600, 500, 600] });
    file.fastenings = (["front", "back"] as const).map((beam, i) => ({
      id: `t${i}`,
      part: "plate-T-40",
      on: "above",
      at: [600, 500 * i, 620],
      turn: first === "mid" ? 180 * i : 90 + 180 * i,
      holds: first === "mid" ? ["mid", beam] : [beam, "mid"],
    }));
    file.loads = [{ case: "goods", on: "mid", force: LOAD, at: "middle" }];
  });
}

function pulls(first: "mid" | "beam") {
  const file = hung(first);
  const frame = frameOf(file);
  const found = known(response, file);
  if (found.kind !== "solved") throw new Error(found.kind);
  const view = one(
    found.views.find(({ combination, bound }) => combination.name === "self-weight + goods" && bound === "typical"),
  );
  return known(jointForces, file)
    .filter(({ link }) => link.joint.id.startsWith("t"))
    .map((joint) => {
      const { clamps } = joint.borne(view);
      const of = (bar: (id: string) => boolean) => clamps.filter(({ clamp }) => bar(clamp.bar));
      return { mid: of((id) => id === "mid"), beam: of((id) => id !== "mid"), frame };
    });
}

describe("a bar that hangs on joining plates", () => {
  it.each(["mid", "beam"] as const)(
    "pulls on its screws with what it carries, the plates naming the %s first",
    (first) => {
      const joints = pulls(first);
      expect(joints).toHaveLength(2);
      for (const { mid, beam } of joints) {
        expect(mid.length).toBeGreaterThan(1);
        expect(beam.length).toBeGreaterThan(1);
        // By statics: half the load and half of some 0.7 kg of bar at each end.
        const straight = mid.reduce((sum, { pull }) => sum + pull, 0);
        expect(straight).toBeGreaterThan(LOAD / 2);
        expect(straight).toBeLessThan(LOAD / 2 + 6);
        // The beam is pressed by the plate, its screws drawn only by what bends the plate open: no more than the whole over a lever of 5 mm.
        for (const { pull, bent } of beam) {
          expect(pull).toBe(0);
          expect(bent).toBeLessThan((LOAD * 0.5) / 0.005);
        }
      }
    },
  );

  it("bears the same whichever bar is named first", () => {
    const most = (first: "mid" | "beam", of: "mid" | "beam") =>
      Math.max(...pulls(first).flatMap((joint) => joint[of].map(({ shear, pull, bent }) => shear + pull + bent)));
    for (const of of ["mid", "beam"] as const) expect(most("mid", of) / most("beam", of)).toBeCloseTo(1, 1);
  });
});

describe("a thing that rests beside the one bar that carries it (moments by hand)", () => {
  it("twists that bar, and the feet bear it where it stands", () => {
    const file = table();
    // 20 kg over the middle of the table, on the back rail alone, 300 mm beside it.
    file.masses = [{ id: "motor", mass: 20, centre: [0, 0, 900], on: ["back"], fixed: true }];
    const found = known(response, file);
    if (found.kind !== "solved") throw new Error(found.kind);
    const view = one(found.views.find(({ combination }) => combination.name === "self-weight"));
    const feet = known(footing, file).map((_, i) => view.foot(i));
    for (const push of feet) expect(push / (feet.reduce((a, b) => a + b, 0) / 4)).toBeCloseTo(1, 1);
  });
});
