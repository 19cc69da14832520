import { expect, it } from "vitest";
import { bodies } from "../../src/facts/bodies.ts";
import { factOf } from "../../src/facts/fact.ts";
import { response, type View } from "../../src/facts/response.ts";
import { sags } from "../../src/facts/sag.ts";
import { spans } from "../../src/facts/spans.ts";
import { structure } from "../../src/facts/structure.ts";
import { cross, subtract, type Vec3 } from "../../src/geometry/vector.ts";
import { linearCombination, type Piecewise } from "../../src/mechanics/piecewise.ts";
import { gantry } from "../rules/gantry.ts";
import { frameFrom } from "../rules/table.ts";

const TURN: Vec3 = [0, 0, 0.01]; // rad
const ABOUT: Vec3 = [0.3, -0.2, 0]; // m

it("an overhang sags by what bends it, however its feet let the frame turn in plan", () => {
  const file = gantry(1000, { past: 300 });
  file.loads = [
    { case: "goods", on: ["front", "back"], line: 1 },
    { case: "goods", on: ["front", "back"], force: 500, at: 1320 },
  ];
  const frame = frameFrom(file);
  const found = factOf(response, frame);
  if (found.kind !== "solved") throw new Error(found.kind);
  const view = found.views.find(({ combination, bound }) => combination.kind === "service" && bound === "typical");
  const span = factOf(spans, frame)
    .get("front")
    ?.find(({ kind }) => kind === "overhang");
  const body = factOf(bodies, frame).get("front");
  const { nodes } = factOf(structure, frame);
  if (!view || !span || !body) throw new Error("no overhang");
  const turned = (at: Vec3): Vec3 => cross(TURN, subtract(at, ABOUT));
  const straight = (axis: Vec3, breaks: Float64Array): Piecewise => {
    const along = cross(TURN, body.axes.x);
    const slope = along[0] * axis[0] + along[1] * axis[1] + along[2] * axis[2];
    const starts = [...breaks].slice(0, -1);
    return { breaks, degree: 1, coefficients: Float64Array.from(starts.flatMap((s) => [slope * s, slope])) };
  };
  const spun: View = {
    ...view,
    moved: (i) => {
      const [own, more] = [view.moved(i), turned(nodes[i]?.at ?? [0, 0, 0])];
      return [own[0] + more[0], own[1] + more[1], own[2] + more[2]];
    },
    deflections: (bar) => {
      const own = view.deflections(bar);
      const plus = (field: Piecewise, axis: Vec3): Piecewise =>
        linearCombination([
          [1, field],
          [1, straight(axis, field.breaks)],
        ]);
      return own && { ...own, y: plus(own.y, body.axes.y), z: plus(own.z, body.axes.z) };
    },
  };
  const of = factOf(sags, frame).of;
  const before = of(view, "front", span) ?? 0;
  expect(before).toBeGreaterThan(1e-4);
  expect(of(spun, "front", span)).toBeCloseTo(before, 12);
});
