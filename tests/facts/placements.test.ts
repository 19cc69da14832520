import { describe, expect, it } from "vitest";
import { placements } from "../../src/facts/placements.ts";
import type { FrameFile, KitItem } from "../../src/model/generated/frame-file.generated.ts";
import { barOf, edited, kitItem, railFrom, tee } from "../rules/base-frames.ts";
import { known, near, one } from "./known.ts";

/** The rail on its post joined by other parts. */
function joinedBy(item: KitItem, edit: (file: FrameFile) => void = () => {}): FrameFile {
  return edited(tee(), (file) => {
    file.kits = { corner: [item] };
    edit(file);
  });
}
const placed = (file: FrameFile) => known(placements, file);

describe("brackets", () => {
  it("below put their screws 22 mm from the corner at x = 20, z = 480, on the slot of either bar", () => {
    const [bracket] = placed(tee()).connectors;
    const [a, b] = one(bracket).screws;
    // 5 mm of bracket under each head.
    expect(a?.seat).toEqual(near([42, 0, 475]));
    expect(b?.seat).toEqual(near([25, 0, 458]));
    const landings = [a, b].map((screw) => (screw?.into.kind === "nut" ? screw.into.landing : undefined));
    expect(landings[0]).toMatchObject({ bar: "rail", face: "C", station: expect.closeTo(0.042, 12) });
    expect(landings[0]?.toEnd).toEqual({ end: "from", distance: expect.closeTo(0.022, 12) });
    expect(landings[1]).toMatchObject({ bar: "post", face: "A", station: expect.closeTo(0.458, 12) });
    for (const landing of landings) expect(landing?.off).toBeCloseTo(0, 12);
  });

  it("shifted, move along the corner's line", () => {
    const file = tee();
    kitItem(file).shift = 3;
    const [a, b] = one(placed(file).connectors[0]).screws;
    // Face C of the rail is counted across towards D, which looks to +y.
    expect(a?.seat).toEqual(near([42, 3, 475]));
    expect(b?.seat).toEqual(near([25, 3, 458]));
  });

  /** Both bars lie flat, 80 mm wide along y: the post's wide face D looks to +x, the rail's to the floor. */
  const wide = (file: FrameFile): void => {
    for (const id of ["post", "rail"]) Object.assign(barOf(file, id), { profile: "40x80-8", tall: "+y" });
  };

  it('on "all" slots of a wide face are one a slot, 20 mm to either side', () => {
    const { connectors, questions } = placed(
      joinedBy({ connector: "inside-bracket-40", on: "below", slot: "all" }, wide),
    );
    expect(questions).toEqual([]);
    expect(connectors.map((connector) => connector.ref.id)).toEqual(["rail.from/1-1", "rail.from/1-2"]);
    expect(connectors.map((connector) => connector.screws[0]?.seat)).toEqual([
      near([42, -20, 475]),
      near([42, 20, 475]),
    ]);
    expect(connectors.map((connector) => connector.screws[1]?.seat)).toEqual([
      near([25, -20, 458]),
      near([25, 20, 458]),
    ]);
  });

  it("as wide as two slots sit in the middle, their holes over both", () => {
    const { connectors } = placed(joinedBy({ connector: "inside-bracket-80", on: "below" }, wide));
    expect(connectors).toHaveLength(1);
    expect(connectors[0]?.screws.map((screw) => screw.seat)).toEqual([
      near([42, -20, 475]),
      near([42, 20, 475]),
      near([25, -20, 458]),
      near([25, 20, 458]),
    ]);
    expect(connectors[0]?.holds.map((hold) => hold.screws.length)).toEqual([2, 2]);
  });

  it("on one of two slots of a wide face have to be told which", () => {
    const { connectors, questions } = placed(joinedBy({ connector: "inside-bracket-40", on: "below" }, wide));
    expect(connectors).toEqual([]);
    expect(questions).toMatchObject([{ at: { kind: "connector", id: "rail.from/1" }, expected: "one slot named" }]);
  });
});

describe("end screws", () => {
  it("head behind lips of 4 mm, 25 − 4 = 21 mm in the core, key through 40 mm of post", () => {
    const file = joinedBy({ connector: "end-screw-8" });
    const screw = one(placed(file).connectors[0]?.screws[0]);
    expect(screw.seat).toEqual(near([16, 0, 500]));
    expect(screw.into).toMatchObject({ kind: "bore", engaged: expect.closeTo(0.021, 12) });
    expect(screw.drive.point).toEqual(near([-20, 0, 500]));
  });

  it("through the whole post: head on the far face, 60 − 40 = 20 mm in the core, its shank across both slots", () => {
    const { screws, bored, inSlots } = one(placed(joinedBy({ connector: "end-screw-through-40" })).connectors[0]);
    expect(screws[0]?.seat).toEqual(near([-20, 0, 500]));
    expect(screws[0]?.axis).toEqual(near([1000, 0, 0]));
    expect(screws[0]?.drive.point).toBe(screws[0]?.seat);
    expect(screws[0]?.grip).toBeCloseTo(0.04, 12);
    expect(screws[0]?.into).toMatchObject({ bar: "rail", end: "from", engaged: expect.closeTo(0.02, 12) });
    expect(inSlots).toMatchObject(
      ["A", "C"].map((face) => ({ bar: "post", face, what: "end screw", from: expect.closeTo(0.496, 9) })),
    );
    expect(bored).toMatchObject([
      { bar: "post", what: "hole through the bar", line: { from: near([-20, 0, 500]), to: near([20, 0, 500]) } },
      { bar: "rail", what: "end screw", line: { from: near([20, 0, 500]), to: near([40, 0, 500]) } },
    ]);
    expect(bored.map((hole) => hole.radius)).toEqual([expect.closeTo(0.004, 12), expect.closeTo(0.004, 12)]);
  });

  const tall = (file: FrameFile): void => {
    Object.assign(barOf(file, "rail"), { profile: "40x80-8", tall: "+z" });
  };

  it('in "all" bores are one a bore, 20 mm below and above', () => {
    const { connectors } = placed(joinedBy({ connector: "end-screw-8", bore: "all" }, tall));
    expect(connectors.map((connector) => connector.ref.id)).toEqual(["rail.from/1-1", "rail.from/1-2"]);
    expect(connectors.map((connector) => connector.screws[0]?.seat)).toEqual([near([16, 0, 480]), near([16, 0, 520])]);
  });

  it("ask for a bore that is there", () => {
    const asked = placed(joinedBy({ connector: "end-screw-8", bore: 5 }, tall));
    expect(asked.misplaced).toEqual([]);
    expect(asked.questions).toMatchObject([{ found: "bore 5 of rail", expected: "a number from 1 to 2" }]);
  });
});

describe("end fasteners", () => {
  it("8 mm deep in the slot of the rail: key 15 mm from the cut, body 26 mm long, nut in the post", () => {
    const { screws, bored, inSlots, holds } = one(
      placed(joinedBy({ connector: "end-fastener-8", on: "above" })).connectors[0],
    );
    const screw = one(screws[0]);
    expect(screw.seat).toEqual(near([20, 0, 512]));
    expect(screw.axis).toEqual(near([-1000, 0, 0]));
    expect(screw.drive).toEqual({ point: near([35, 0, 520]), axis: near([0, 0, -1000]) });
    expect(screw.into).toMatchObject({
      kind: "nut",
      nut: { name: "nut-8-M8" },
      landing: { bar: "post", face: "A", station: expect.closeTo(0.512, 12), off: expect.closeTo(0, 12) },
    });
    // The key hole is 9 mm wide and goes twice the depth in.
    expect(bored).toMatchObject([{ bar: "rail", what: "key hole", radius: expect.closeTo(0.0045, 12) }]);
    expect(bored[0]?.line).toEqual({ from: near([35, 0, 520]), to: near([35, 0, 504]) });
    expect(inSlots).toMatchObject([{ bar: "rail", face: "A", slot: 1, what: "end fastener" }]);
    expect(inSlots[0]?.from).toBeCloseTo(0.02, 12);
    expect(inSlots[0]?.to).toBeCloseTo(0.046, 12);
    expect(holds.map((hold) => hold.bar)).toEqual(["rail", "post"]);
  });
});

describe("plates", () => {
  /** A plate on the +y side of post and rail, zero point where their centrelines cross. */
  const plated = (part: string, turn: number, holds: [string, ...string[]] = ["post", "rail"]): FrameFile =>
    edited(tee(), (file) => {
      file.joints = [];
      file.fastenings = [{ id: "plate", part, on: "+y", at: [0, 0, 500], turn, holds }];
    });
  const seats = (file: FrameFile) => one(placed(file).connectors[0]).screws.map((screw) => screw.seat);
  const bars = (file: FrameFile) =>
    one(placed(file).connectors[0]).screws.map(({ into }) => (into.kind === "nut" ? into.landing.bar : undefined));

  it("lie with u along the first bar, v square to it, counted about the way the face looks", () => {
    // u = +z and v = +y × +z = +x, so the T's holes [0, −40], [0, 0], [0, 40], [40, 0], [80, 0] run along x, then up.
    const file = plated("plate-T-40", 0);
    expect(seats(file)).toEqual(
      [
        [-40, 25, 500],
        [0, 25, 500],
        [40, 25, 500],
        [0, 25, 540],
        [0, 25, 580],
      ].map(near),
    );
    // The hole beside both bars is counted with the first, off its slot by 40 mm.
    expect(bars(file)).toEqual(["post", "post", "rail", "post", "post"]);
  });

  it("turned by 90° about +y, u runs along x and v down: stem on the rail, arms on the post", () => {
    const file = plated("plate-T-40", 90);
    expect(seats(file)).toEqual(
      [
        [0, 25, 540],
        [0, 25, 500],
        [0, 25, 460],
        [40, 25, 500],
        [80, 25, 500],
      ].map(near),
    );
    expect(bars(file)).toEqual(["post", "post", "post", "rail", "rail"]);
    const { holds, solids } = one(placed(file).connectors[0]);
    expect(holds.map((hold) => hold.screws.length)).toEqual([3, 2]);
    // A T has no envelope that would be true.
    expect(solids).toEqual([]);
  });

  it("leave out omitted holes", () => {
    const file = plated("plate-T-40", 90);
    Object.assign(one(file.fastenings?.[0]), { omit: ["h2", "h5"] });
    expect(placed(file).connectors[0]?.screws.map((screw) => screw.hole)).toEqual(["h1", "h3", "h4"]);
  });

  it("that are straight fill a box 158 x 38 x 5 mm on the face", () => {
    const [box] = one(placed(plated("plate-I-40", 90)).connectors[0]).solids;
    expect(box?.centre).toEqual(near([0, 22.5, 500]));
    expect(box?.half).toEqual(near([79, 19, 2.5]));
    expect(box?.axes[0]).toEqual(near([1000, 0, 0]));
  });

  it("do not screw into a bar whose face lies off their plane", () => {
    const file = plated("plate-T-40", 90);
    // 1 mm back: more than the half millimetre a plate bridges.
    barOf(file, "rail").from = [0, -1, 500];
    barOf(file, "rail").to = [600, -1, 500];
    expect(bars(file)).toEqual(["post", "post", "post", "post", "post"]);
    expect(placed(file).connectors[0]?.holds.map((hold) => hold.screws.length)).toEqual([3, 0]);
  });
});

describe("what cannot be placed", () => {
  it("an end too far from any bar meets none", () => {
    const { unmet, met, connectors } = placed(edited(tee(), railFrom(60)));
    expect(unmet.map((joint) => joint.ref.id)).toEqual(["rail.from"]);
    expect([met, connectors]).toEqual([[], []]);
  });

  it("a bar that meets another's cut end has no face to join there", () => {
    const file = edited(tee(), (base) => {
      base.bars.push({ id: "more", profile: "40x40-8", from: [600, 0, 500], to: [900, 0, 500] });
      base.joints = [{ bars: ["more"], ends: "from", by: "corner" }];
    });
    expect(placed(file).misplaced).toMatchObject([
      { at: { id: "more.from/1" }, why: "more meets the cut end of rail, not one of its faces" },
    ]);
  });

  it("a bracket between two faces in one plane has no inside corner", () => {
    const file = edited(tee(), (base) => {
      base.joints = [];
      base.fastenings = [
        { id: "flat", part: "inside-bracket-40", on: "+y", against: "+y", at: [20, 20, 500], holds: ["post", "rail"] },
      ];
    });
    expect(placed(file).misplaced).toMatchObject([
      { joint: { id: "flat" }, why: "the faces it should join make no inside corner" },
    ]);
  });

  it("an end that bears on two bars alike asks which, and is told by onto", () => {
    const file = edited(tee(), (base) => {
      base.bars.splice(
        0,
        1,
        { id: "left", profile: "40x40-8", from: [0, 20, 0], to: [0, 20, 1000] },
        { id: "right", profile: "40x40-8", from: [0, -20, 0], to: [0, -20, 1000] },
      );
      railFrom(20)(base);
    });
    expect(placed(file).questions).toMatchObject([{ found: "rail/from, which meets left and right" }]);
    file.joints = [{ bars: ["rail"], ends: "from", by: "corner", onto: "right" }];
    expect(placed(file).met.map(({ contact }) => contact.b.bar)).toEqual(["right"]);
  });

  it("an end that bears on one bar and grazes another is fastened to the first", () => {
    const file = edited(tee(), (base) => {
      base.bars.push({ id: "beside", profile: "40x40-8", from: [0, 40, 0], to: [0, 40, 1000] });
      barOf(base, "rail").from = [20, 10, 500];
      barOf(base, "rail").to = [600, 10, 500];
      barOf(base, "rail").ends = { from: { cut: "as-drawn" } };
    });
    // 30 mm of the rail's 40 on the post, 10 on the other.
    expect(placed(file).questions).toEqual([]);
    expect(placed(file).met.map(({ contact }) => contact.b.bar)).toEqual(["post"]);
  });
});
