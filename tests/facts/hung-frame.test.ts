import { describe, expect, it } from "vitest";
import { factOf } from "../../src/facts/fact.ts";
import { footing } from "../../src/facts/footing.ts";
import { stability } from "../../src/facts/stability.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { frameOf } from "./known.ts";

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

  it("is pulled, so that nothing of it buckles", () => {
    const { governing } = factOf(stability, frame);
    expect(governing).toBeUndefined();
  });
});
