import { describe, expect, it } from "vitest";
import { GRAVITY } from "../../src/facts/acting.ts";
import { factOf } from "../../src/facts/fact.ts";
import { footing } from "../../src/facts/footing.ts";
import { response } from "../../src/facts/response.ts";
import { stability } from "../../src/facts/stability.ts";
import { area } from "../../src/geometry/polygon.ts";
import { valueAt } from "../../src/mechanics/piecewise.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { builtinStock } from "../../src/model/stock/builtin-stock.ts";
import { frameOf, one } from "./known.ts";

/** Two rails 1.8 m up on four hangers that are anchored to a ceiling at 2.56 m, 40x40-8 throughout, in mm. */
function hung(): FrameFile {
  const hanger = (id: string, x: number, y: number): FrameFile["bars"][number] => ({
    id,
    profile: "40x40-8",
    from: [x, y, 1800],
    to: [x, y, 2560],
  });
  const level = (id: string, from: [number, number], to: [number, number]): FrameFile["bars"][number] => ({
    id,
    profile: "40x40-8",
    from: [...from, 1800],
    to: [...to, 1800],
  });
  const gussets = (on: readonly ["+x", "-x"]): NonNullable<FrameFile["kits"]>[string] => [
    { connector: "gusset-bracket-40", on: on[0] },
    { connector: "gusset-bracket-40", on: on[1] },
  ];
  return {
    format: 1,
    title: "a rack under a ceiling",
    units: "mm-N-kg",
    bars: [
      hanger("h1", 0, 0),
      hanger("h2", 1200, 0),
      hanger("h3", 1200, 500),
      hanger("h4", 0, 500),
      level("f", [-80, 0], [1280, 0]),
      level("k", [-80, 500], [1280, 500]),
      level("l", [150, 0], [150, 500]),
      level("r", [1050, 0], [1050, 500]),
    ],
    kits: { sides: gussets(["+x", "-x"]) },
    joints: [
      { bars: ["h1/from", "h2/from", "h3/from", "h4/from"], by: "sides" },
      { bars: ["l", "r"], by: "sides" },
    ],
    stands: [{ part: "foot-40-M8", bars: ["h1", "h2", "h3", "h4"], hold: "anchored", end: "to" }],
    loads: [{ case: "goods", on: ["f", "k"], line: 0.3 }],
  };
}

describe("a frame anchored overhead", () => {
  const frame = frameOf(hung());

  it("is held where it is drawn, not on the floor below", () => {
    expect(factOf(footing, frame).map(({ at }) => at[2])).toEqual([2.56, 2.56, 2.56, 2.56]);
  });

  it("is held by a wall where its ends look at one: the wall takes the load of an arm and its moment, W L/2 + F L (statics)", () => {
    const [length, force] = [0.4, 50];
    const arm = (id: string, x: number) => ({
      id,
      profile: "40x80-8",
      tall: "+z",
      from: [x, 0, 1200],
      to: [x, 1e3 * length, 1200],
    });
    const file = {
      format: 1,
      title: "two arms on a wall",
      units: "mm-N-kg",
      bars: [arm("a1", 100), arm("a2", 900)],
      stands: [{ part: "caster-75-plate", bars: ["a1", "a2"], hold: "anchored", end: "from" }],
      loads: [{ case: "goods", on: ["a1", "a2"], at: 1e3 * length, force }],
    } as unknown as FrameFile;
    const walled = frameOf(file);
    expect(factOf(footing, walled).map(({ at }) => at[2])).toEqual([1.2, 1.2]);
    const found = factOf(response, walled);
    if (found.kind !== "solved") throw new Error(found.kind);
    const view = found.views.find(({ combination }) => combination.kind === "service");
    const { region, material } = one(builtinStock().profiles.get("40x80-8"));
    const weight = area(region) * one(builtinStock().materials.get(material)).density * GRAVITY * length;
    expect(view?.reaction(0).force[2]).toBeCloseTo(force + weight, 6);
    const forces = view?.forces("a1");
    const moment = forces ? Math.abs(valueAt(forces.My, 0)) + Math.abs(valueAt(forces.Mz, 0)) : 0;
    expect(moment).toBeCloseTo((weight * length) / 2 + force * length, 6);
  });

  it("is pulled, so that nothing of it buckles", () => {
    const { governing } = factOf(stability, frame);
    expect(governing).toBeUndefined();
  });
});
