import { describe, expect, it } from "vitest";
import { bodies } from "../../src/facts/bodies.ts";
import { factOf } from "../../src/facts/fact.ts";
import { turningShape } from "../../src/facts/moving-shapes.ts";
import { turning } from "../../src/facts/turning.ts";
import type { FrameFile, KitItem } from "../../src/model/generated/frame-file.generated.ts";
import { barOf, edited, tee } from "../rules/base-frames.ts";
import { frameOf, known, one } from "./known.ts";

const lone: KitItem = { connector: "inside-bracket-40", on: "below" };

/** Two posts that a sill holds fast, and a rail between them at z = 500 on the given items at either end. */
function portal(...items: readonly [KitItem, ...KitItem[]]): FrameFile {
  return edited(tee(), (file) => {
    file.bars.push(
      { id: "far", profile: "40x40-8", from: [600, 0, 0], to: [600, 0, 1000] },
      { id: "sill", profile: "40x40-8", from: [0, 0, 100], to: [600, 0, 100] },
    );
    file.kits = { corner: [...items], firm: [{ connector: "gusset-bracket-40", on: "above" }] };
    file.joints = [
      { bars: ["rail"], ends: "both", by: "corner" },
      { bars: ["sill"], ends: "both", by: "firm" },
    ];
  });
}
const moving = (file: FrameFile) => known(turning, file).parts.map((part) => part.bars);

describe("parts that only lone screws keep from turning", () => {
  it("a rail on one bracket at either end rolls about the line of the screws in the posts: y = 0, z = 480 − 22", () => {
    const { parts, triedSingly } = known(turning, portal(lone));
    expect(triedSingly).toBe(0);
    expect(parts).toHaveLength(1);
    const part = one(parts[0]);
    expect(part).toMatchObject({ bars: ["rail"], kind: "turn", joints: ["rail.from", "rail.to"] });
    expect(Math.abs(part.direction[0])).toBeCloseTo(1, 9);
    expect(part.point[1]).toBeCloseTo(0, 9);
    expect(part.point[2]).toBeCloseTo(0.458, 9);
    // Its shape rolls it as one about that line: the axis, 42 mm over the line, goes along y at 42 mm a radian.
    const frame = frameOf(portal(lone));
    const line = one(turningShape(part, factOf(bodies, frame)).lineOf("rail"));
    const [roll = 0] = line.rolled;
    for (const moved of line.moved) {
      expect(moved[1] / roll).toBeCloseTo(-0.042, 9);
      expect([moved[0], moved[2]]).toEqual([expect.closeTo(0, 9), expect.closeTo(0, 9)]);
    }
    expect(turningShape(part, factOf(bodies, frame)).lineOf("far")).toBeUndefined();
  });

  it.each<[string, readonly [KitItem, ...KitItem[]]]>([
    ["a second bracket over it: two lines 84 mm apart", [lone, { ...lone, on: "above" }]],
    ["legs of two screws", [{ ...lone, connector: "inside-bracket-40-long" }]],
    ["lugs in the slots", [{ ...lone, connector: "gusset-bracket-40" }]],
  ])("held by %s", (_, items) => {
    expect(moving(portal(...items))).toEqual([]);
  });

  it("shifted out of line the two screws hold it: no one line to turn about", () => {
    const file = portal(lone);
    file.kits = { ...file.kits, other: [{ ...lone, on: "above" }] };
    file.joints = [
      { bars: ["rail"], ends: "from", by: "corner" },
      { bars: ["rail"], ends: "to", by: "other" },
      { bars: ["sill"], ends: "both", by: "firm" },
    ];
    expect(moving(file)).toEqual([]);
  });

  it("two rails are two mechanisms, each told by itself", () => {
    const file = portal(lone);
    file.bars.push({ id: "top", profile: "40x40-8", from: [0, 0, 800], to: [600, 0, 800] });
    file.joints?.push({ bars: ["top"], ends: "both", by: "corner" });
    const { parts } = known(turning, file);
    expect(parts.map((part) => part.bars).sort()).toEqual([["rail"], ["top"]]);
    for (const part of parts) expect(part.point[2]).toBeCloseTo(part.bars[0] === "top" ? 0.758 : 0.458, 9);
  });

  it("a post on a lone screw is held by the seat it stands on", () => {
    // It stands on the sill, 40 mm square; the screw that holds it to the sill runs up and down.
    const stub = (z: number) => (file: FrameFile) => {
      file.bars.push({
        id: "stub",
        profile: "40x40-8",
        from: [300, 0, z],
        to: [300, 0, 400],
        ends: { from: { cut: "as-drawn" } },
      });
      file.kits = { ...file.kits, side: [{ connector: "inside-bracket-40", on: "+x" }] };
      file.joints?.push({ bars: ["stub"], ends: "from", by: "side" });
    };
    const held = { ...lone, connector: "gusset-bracket-40" };
    // Seated it can still turn about the upright screw in the sill, not tilt about the level one in itself.
    const seated = known(turning, edited(portal(held), stub(120))).parts;
    expect(seated.map((part) => [part.bars, Math.abs(Math.round(part.direction[2]))])).toEqual([[["stub"], 1]]);
    // A gap of 1 mm under it: it tilts as well.
    expect(known(turning, edited(portal(held), stub(121))).parts).toHaveLength(2);
  });
});

describe("a frame too large to be analysed whole", () => {
  /** Rails 150 mm over each other on one post, a lone screw each. */
  function rack(rails: number): FrameFile {
    const file = tee();
    barOf(file, "post").to = [0, 0, 150 * rails + 500];
    file.bars.splice(1, 1);
    for (let i = 1; i <= rails; i += 1)
      file.bars.push({ id: `rail-${i}`, profile: "40x40-8", from: [0, 0, 150 * i], to: [600, 0, 150 * i] });
    const [first, ...rest] = file.bars.slice(1).map((bar) => bar.id);
    file.joints = [{ bars: [one(first), ...rest], ends: "from", by: "corner" }];
    return file;
  }

  // A rail has six unknowns: 150 rails make 900.
  it.each([
    [150, 0],
    [151, 1],
  ])("%i rails on one post: tried singly %i; every rail rolls either way", (rails, singly) => {
    const { parts, triedSingly } = known(turning, rack(rails));
    expect(triedSingly).toBe(singly);
    expect(parts).toHaveLength(rails);
    for (const part of parts) {
      expect(part.bars).toHaveLength(1);
      expect(Math.abs(part.direction[0])).toBeCloseTo(1, 9);
    }
  });
});
