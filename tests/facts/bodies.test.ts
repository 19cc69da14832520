import { describe, expect, it } from "vitest";
import { bodies, cutPoint, cutStation } from "../../src/facts/bodies.ts";
import { frameMiddle } from "../../src/facts/frame-middle.ts";
import type { Bar, FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { barOf, tee } from "../rules/base-frames.ts";
import { known, near, one } from "./known.ts";

function frame(...bars: readonly [Bar, ...Bar[]]): FrameFile {
  return { format: 1, title: "bodies", units: "mm-N-kg", bars: [...bars] };
}
const body = (file: FrameFile, id: string) => one(known(bodies, file).get(id), id);

describe("a bar as cut", () => {
  it("butt: from the face of the post, 20 mm off its centreline", () => {
    const rail = body(tee(), "rail");
    expect(rail.cutLength).toBeCloseTo(0.58, 12);
    expect(cutPoint(rail, "from")).toEqual(near([20, 0, 500]));
    expect(cutStation(rail, "to")).toBeCloseTo(0.6, 12);
    expect(rail.reach).toEqual([expect.closeTo(0.02, 12), expect.closeTo(0.6, 12)]);
  });

  it("a wider post shortens the rail by itself", () => {
    const file = tee();
    barOf(file, "post").profile = "80x80-8";
    expect(body(file, "rail").cutLength).toBeCloseTo(0.56, 12);
  });

  it("mitre at a corner of 90°: the long point lies 20 mm beyond the drawn corner", () => {
    const ends = (other: string) => ({ from: { mitre: other } });
    const file = frame(
      { id: "a", profile: "40x40-8", from: [0, 0, 0], to: [500, 0, 0], ends: ends("b") },
      { id: "b", profile: "40x40-8", from: [0, 0, 0], to: [0, 300, 0], ends: ends("a") },
    );
    const a = body(file, "a");
    expect(a.cutLength).toBeCloseTo(0.52, 12);
    expect(body(file, "b").cutLength).toBeCloseTo(0.32, 12);
    // The cut looks back along the bisector, away from both bars.
    const { normal } = a.cuts.from.plane;
    expect(normal).toEqual([-Math.SQRT1_2, Math.SQRT1_2, 0].map((c) => expect.closeTo(c, 12)));
  });

  it("brace at 45° between post and sill: 360 √2 on the centreline, its long side 20 tan 45° longer at each end", () => {
    const file = frame(
      { id: "post", profile: "40x40-8", from: [0, 0, 20], to: [0, 0, 900] },
      { id: "sill", profile: "40x40-8", from: [-20, 0, 0], to: [900, 0, 0] },
      { id: "brace", profile: "40x40-8", from: [0, 0, 400], to: [400, 0, 0] },
    );
    const brace = body(file, "brace");
    expect(cutPoint(brace, "from")).toEqual(near([20, 0, 380]));
    expect(cutPoint(brace, "to")).toEqual(near([380, 0, 20]));
    expect(brace.cutLength).toBeCloseTo((360 * Math.SQRT2 + 40) / 1000, 12);
  });

  it("angle of 30° about the drawn point: 20 tan 30° longer on one side", () => {
    const file = frame({
      id: "a",
      profile: "40x40-8",
      from: [0, 0, 0],
      to: [500, 0, 0],
      ends: { to: { angle: 30, about: "+y" } },
    });
    expect(body(file, "a").cutLength).toBeCloseTo(0.5 + 0.02 * Math.tan(Math.PI / 6), 12);
  });

  it("tall sets the height: a 40x80 with its long axis up reaches 40 mm up and 20 mm aside", () => {
    const file = frame({ id: "a", profile: "40x80-8", from: [0, 0, 0], to: [500, 0, 0], tall: "+z" });
    expect(body(file, "a").bounds).toEqual({ min: near([0, -20, -40]), max: near([500, 20, 40]) });
  });

  it("cuts that leave nothing leave a body without a solid, of length 0", () => {
    // Drawn wholly inside the thick bar and butted against it at both ends.
    const file = frame(
      { id: "thick", profile: "80x80-8", from: [0, 0, -300], to: [0, 0, 300] },
      { id: "inside", profile: "20x20-5", from: [-10, 0, 0], to: [10, 0, 0] },
    );
    const inside = body(file, "inside");
    expect(inside.cutLength).toBe(0);
    expect(inside.prism).toBeUndefined();
  });
});

it("the middle of the frame is that of the box round the bars as cut", () => {
  // x from −20 to 600, y ±20, z from 0 to 1000.
  expect(known(frameMiddle, tee())).toEqual(near([290, 0, 500]));
});
