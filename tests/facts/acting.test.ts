import { expect, it } from "vitest";
import { acting } from "../../src/facts/acting.ts";
import { bodies } from "../../src/facts/bodies.ts";
import { factOf } from "../../src/facts/fact.ts";
import { structure } from "../../src/facts/structure.ts";
import { add, along, cross, type Vec3 } from "../../src/geometry/vector.ts";
import { tee } from "../rules/base-frames.ts";
import { frameOf, one } from "./known.ts";

const NOTHING: Vec3 = [0, 0, 0];

/** Force and moment about the origin of what the case "turn" puts on the bars, N and N·m. */
function sums(
  on: [string, ...string[]],
  direction: "+x" | "-z",
  box?: [number, number, number],
): readonly [Vec3, Vec3] {
  const file = tee();
  file.masses = [{ id: "motor", mass: 5, centre: [200, 50, 600], on, ...(box ? { box } : {}) }];
  file.loads = [{ case: "turn", on: "motor", moment: 20, direction }];
  const frame = frameOf(file);
  const { cases, lost } = factOf(acting, frame);
  expect(lost).toEqual([]);
  let [force, moment] = [NOTHING, NOTHING];
  for (const load of one(cases.find(({ name }) => name === "turn")).loads.members ?? []) {
    if (load.kind !== "point") continue;
    const piece = one(factOf(structure, frame).pieces[load.member]);
    const { bar, axes } = one(factOf(bodies, frame).get(piece.bar));
    const at = along(bar.from, axes.x, piece.stations[0] + load.along);
    force = add(force, load.force ?? NOTHING);
    moment = add(moment, add(cross(at, load.force ?? NOTHING), load.moment ?? NOTHING));
  }
  return [force, moment];
}

it.each([
  ["one point", ["rail"], undefined],
  ["two points in a line", ["rail"], [200, 100, 100]],
  ["bars at an angle", ["rail", "post"], [200, 100, 100]],
] as const)("a moment on a thing reaches what carries it whole, without a force: %s", (_, on, box) => {
  for (const [direction, expected] of [
    ["+x", [20, 0, 0]],
    ["-z", [0, 0, -20]],
  ] as const) {
    const [force, moment] = sums([...on] as [string, ...string[]], direction, box && [...box]);
    for (const i of [0, 1, 2] as const) {
      expect(force[i]).toBeCloseTo(0, 9);
      expect(moment[i]).toBeCloseTo(expected[i], 9);
    }
  }
});
