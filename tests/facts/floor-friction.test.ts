import { describe, expect, it } from "vitest";
import { frictionUnder } from "../../src/facts/floor-friction.ts";
import { footing } from "../../src/facts/footing.ts";
import { response, type View } from "../../src/facts/response.ts";
import { valueAt } from "../../src/mechanics/piecewise.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { table } from "../rules/table.ts";
import { known, one } from "./known.ts";

const HEAD = 800;
const WIDTH = 1000;
const PUSH = 110;

/** The table with 20 kg in its middle, pushed at its head along +x by so much, N. */
function pushed(force: number, friction: number): FrameFile {
  return {
    ...table(WIDTH, 600, HEAD),
    masses: [{ id: "block", mass: 20, centre: [0, 0, 900], on: ["top"], fixed: true }],
    floor: { friction },
    loads: ["front", "back"].map((bar) => ({ case: "shove", on: bar, at: 100, force: force / 2, direction: "+x" })),
  } as unknown as FrameFile;
}

function shoved(file: FrameFile): { readonly view: View; readonly feet: readonly string[] } {
  const found = known(response, file);
  if (found.kind !== "solved") throw new Error(found.kind);
  const view = one(
    found.views.find(({ combination, bound }) => combination.name === "self-weight + shove" && bound === "typical"),
  );
  return { view, feet: known(footing, file).map(({ ref }) => ref.id) };
}

/** Of the legs on the side that is pushed and on the other: push of the floor, and what it holds against the shove, N. */
function sides(file: FrameFile) {
  const { view, feet } = shoved(file);
  const of = (legs: readonly string[]) =>
    legs.map((leg) => {
      const i = feet.findIndex((id) => id.startsWith(leg));
      const [x, y, z] = view.reaction(i).force;
      return { leg, holds: -x, across: y, press: z };
    });
  return { view, near: of(["leg-1", "leg-4"]), far: of(["leg-2", "leg-3"]) };
}

const sum = (list: readonly { readonly holds: number; readonly press: number }[], what: "holds" | "press"): number =>
  list.reduce((all, one) => all + one[what], 0);

describe("friction under the feet (Coulomb; moments by hand)", () => {
  it("holds each foot by its share while none is asked for more", () => {
    const { near, far } = sides(pushed(PUSH, 1));
    expect(sum([...near, ...far], "holds")).toBeCloseTo(PUSH, 6);
    for (const { holds, press } of [...near, ...far]) expect(holds).toBeLessThan(press);
    // Alike legs, alike stiff: each side holds about half.
    expect(sum(near, "holds") / PUSH).toBeCloseTo(0.5, 1);
  });

  it("lets lightened feet slide at friction times their push, and the others take the rest", () => {
    const friction = 0.35;
    const { view, near, far } = sides(pushed(PUSH, friction));
    // Moments about the far feet: the push lightens the near ones by push × height / width.
    const all = [...near, ...far];
    const weight = sum(all, "press");
    expect(sum(near, "press")).toBeCloseTo(weight / 2 - (PUSH * HEAD) / WIDTH, 0);
    for (const { holds, across, press } of near) expect(Math.hypot(holds, across) / press).toBeCloseTo(friction, 6);
    expect(sum(far, "holds")).toBeCloseTo(PUSH - sum(near, "holds"), 6);
    expect(sum(far, "holds")).toBeGreaterThan(PUSH / 2);
    for (const { holds, press } of far) expect(holds).toBeLessThan(friction * press);
    // Statics of the free leg: what its foot holds, its lowest stretch bears as shear.
    for (const { leg, holds, across } of far) {
      const { Vy, Vz } = one(view.forces(leg));
      const shear = Math.hypot(valueAt(Vy, 0), valueAt(Vz, 0));
      expect(shear / Math.hypot(holds, across)).toBeCloseTo(1, 6);
    }
  });

  it("is that of a sill where the whole frame would slide", () => {
    const { near, far } = sides(pushed(PUSH, 0.1));
    const all = [...near, ...far];
    const needed = PUSH / sum(all, "press");
    expect(needed).toBeGreaterThan(0.1);
    for (const { holds, across, press } of all)
      expect(Math.hypot(holds, across)).toBeLessThanOrEqual(1.25 * needed * press + 1e-6);
  });

  it("takes the floor's own coefficient, 1.25 times what it takes, or four", () => {
    expect(frictionUnder([10, 0, -100], 0.3, false)).toBe(0.3);
    expect(frictionUnder([30, 40, -100], 0.3, false)).toBeCloseTo(0.625, 12);
    expect(frictionUnder([30, 40, -100], 0.3, true)).toBe(0.3);
    expect(frictionUnder([30, 40, 5], 0.3, false)).toBe(4);
    expect(frictionUnder([900, 0, -100], 0.3, false)).toBe(4);
  });
});
