import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/door.collides.ts";

/*
 * A leaf of two 40 mm uprights and two rails between posts, mm. Hinges on the line x = 22, y = −20, in the plane of the front faces; the leaf reaches
 * from x = 24 to x = 640, so its back corner, 618 from that line across and 40 deep, goes out to √(618² + 40²) = 619.29: 1.29 farther.
 */
function closet(free = 620): FrameFile {
  const upright = (id: string, x: number, low: number, high: number) => ({
    id,
    profile: "40x40-8",
    from: [x, 0, low],
    to: [x, 0, high],
  });
  const rail = (id: string, z: number) => ({ id, profile: "40x40-8", from: [44, 0, z], to: [free, 0, z] });
  return {
    format: 1,
    title: "a leaf between two posts",
    units: "mm-N-kg",
    kits: { corner: [{ connector: "inside-bracket-40", on: "below" }] },
    bars: [
      upright("hung-on", 0, 0, 1000),
      upright("other", 664, 0, 1000),
      upright("stile-1", 44, 100, 900),
      upright("stile-2", free, 100, 900),
      rail("low", 200),
      rail("high", 800),
    ],
    joints: [{ bars: ["low", "high"], by: "corner" }],
    doors: [
      {
        id: "door",
        bars: ["stile-1", "stile-2", "low", "high"],
        axis: "-z",
        swing: [0, 90],
        hinges: [
          { part: "hinge-40", bars: ["stile-1", "hung-on"], at: [22, -20, 250] },
          { part: "hinge-40", bars: ["stile-1", "hung-on"], at: [22, -20, 750] },
        ],
      },
    ],
  } as unknown as FrameFile;
}

const DEGREE = Math.PI / 180;
const swingTo = (file: FrameFile, angle: number): void => {
  for (const door of file.doors ?? []) door.swing = [0, angle];
};
/** A box on the floor before the door, its near face this far before the pin's plane, mm. */
const crate = (before: number) => (file: FrameFile) => {
  const y = -20 - before - 100;
  file.masses = [{ id: "crate", mass: 5, centre: [600, y, 300], box: [400, 200, 600], on: ["hung-on"] }];
};

/** Parts may touch this deep, mm. */
const DEEP = 0.1;
/** Turn at which the back corner (618 across, 40 deep) is `across` from the pin, mm. */
const jambMet = (across: number): number => Math.atan2(40, 618) - Math.acos(across / Math.hypot(618, 40));

/** The other post at this place, mm. */
const jambAt = (x: number) => (file: FrameFile) => {
  for (const bar of file.bars) if (bar.id === "other") Object.assign(bar, { from: [x, 0, 0], to: [x, 0, 1000] });
};

/** The leaf hung at its foot, on a line at z = 98, and let down towards −y. */
const flap = (angle: number) => (file: FrameFile) => {
  for (const door of file.doors ?? []) {
    door.axis = "+x";
    for (const hinge of door.hinges) hinge.at = [60, -20, 98];
  }
  swingTo(file, angle);
};

/** A bar beyond the other post that turns towards −y and on in front of the leaf. */
const gate = (angle: number) => (file: FrameFile) => {
  file.bars.push({ id: "gate", profile: "40x40-8", from: [700, 0, 500], to: [1100, 0, 500] });
  file.doors?.push({
    id: "second",
    bars: ["gate"],
    axis: "-z",
    swing: [0, angle],
    hinges: [{ part: "hinge-40", bars: ["gate", "other"], at: [664, -20, 500] }],
  });
};

it("door.collides: turn from shut to the first strike, by trigonometry", () => {
  const wrong = proveRule(rule, closet(), [
    { title: "free to a quarter turn", edit: () => {}, finds: [] },
    {
      // sin θ = 309 / 618: θ = 30°.
      title: "a crate 309 mm before it",
      edit: crate(309),
      finds: [{ at: "door", key: "strikes", measured: Math.asin(309 / 618), within: 1e-3 }],
    },
    {
      title: "the crate, and a stop just before it",
      edit: (file) => {
        crate(309)(file);
        swingTo(file, 29.9);
      },
      finds: [],
    },
    {
      title: "the crate, and a stop just behind it",
      edit: (file) => {
        crate(309)(file);
        swingTo(file, 30.2);
      },
      finds: [{ at: "door", key: "strikes", measured: 30 * DEGREE, within: 1e-3 }],
    },
    {
      title: "a jamb nearer than the corner comes out: 618 + 1 < 619.29",
      edit: jambAt(661),
      finds: [{ at: "door", key: "strikes", measured: jambMet(619 + DEEP), within: 1e-3 }],
    },
    {
      title: "a jamb farther than the corner comes out: 618 + 2 > 619.29",
      edit: jambAt(662),
      finds: [],
    },
    { title: "a crate that stands in it", edit: crate(-30), finds: [{ at: "door", key: "shut" }] },
    { title: "a flap that lies down flat", edit: flap(90), finds: [] },
    { title: "a flap that goes on into the floor", edit: flap(120), finds: [{ at: "door", key: "floor" }] },
    { title: "a second door that opens clear of it", edit: gate(90), finds: [] },
    { title: "a second door that leans into its way", edit: gate(130), finds: [{ at: "door", key: "doors" }] },
  ]);
  expect(wrong).toEqual([]);
});
