import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Bar, Triple } from "../../../src/model/frame.ts";
import { faceNormals, sectionAxes } from "../../../src/model/resolve/section-axes.ts";
import { frameOf, read } from "./read.ts";

const bar = (id: string, from: Triple, to: Triple, more: object = {}) => ({
  id,
  profile: "40x80-8",
  from,
  to,
  ...more,
});
const file = (more: object) => ({
  format: 1,
  title: "Frame",
  units: "mm-N-kg",
  bars: [bar("a", [0, 0, 0], [500, 0, 0])],
  ...more,
});

function find<T extends { readonly ref: { readonly id: string } }>(parts: readonly T[], id: string): T {
  const part = parts.find((one) => one.ref.id === id);
  if (part === undefined) throw new Error(`no ${id} among ${parts.map((one) => one.ref.id).join(", ")}`);
  return part;
}

function near(actual: Triple, expected: Triple): void {
  for (const axis of [0, 1, 2] as const) expect(actual[axis]).toBeCloseTo(expected[axis], 9);
}

const coordinate = fc.integer({ min: -2000, max: 2000 });
const anyPoint = fc.tuple(coordinate, coordinate, coordinate);
const stance = fc.oneof(
  fc.record({ roll: fc.integer({ min: -180, max: 180 }) }),
  fc.record({ tall: fc.constantFrom("+x", "-x", "+y", "-y", "+z", "-z") }),
);
const anyBar = fc
  .tuple(anyPoint, anyPoint, stance)
  .map(([from, to, how]) => bar("a", from, to, how))
  .filter(({ from, to, ...how }) => {
    const along = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
    const length = Math.hypot(...along);
    if (length < 10) return false;
    // `tall` along the bar is refused.
    const axis = "tall" in how ? "xyz".indexOf(String(how.tall)[1] ?? "") : -1;
    return axis < 0 || Math.abs(along[axis] ?? 0) / length < 0.99;
  });

function pairOf(drawn: object, copy: object): readonly [Bar, Bar] {
  const { bars } = frameOf(file({ bars: [drawn], copies: [{ of: ["a"], suffix: "b", ...copy }] }));
  return [find(bars, "a"), find(bars, "ab")];
}

describe("a mirrored bar", () => {
  test.each(["x", "y", "z"] as const)(
    "across %s, its points and face A are images, B and D change places",
    (across) => {
      const axis = "xyz".indexOf(across);
      const image = (point: Triple, at: number): Triple => {
        const moved: [number, number, number] = [...point];
        moved[axis] = 2 * at - (moved[axis] ?? 0);
        return moved;
      };
      fc.assert(
        fc.property(anyBar, coordinate, (drawn, at) => {
          const [original, copy] = pairOf(drawn, { mirror: { across, at } });
          near(copy.from, image(original.from, at / 1000));
          near(copy.to, image(original.to, at / 1000));
          const normals = new Map(faceNormals(sectionAxes(original)));
          const copied = new Map(faceNormals(sectionAxes(copy)));
          for (const [face, other] of [
            ["A", "A"],
            ["B", "D"],
            ["C", "C"],
            ["D", "B"],
          ] as const) {
            near(copied.get(other) ?? [0, 0, 0], image(normals.get(face) ?? [0, 0, 0], 0));
          }
        }),
        { numRuns: 100 },
      );
    },
  );
});

test.each([
  // Face B is closed: it stays where its image is, so faces A and C change places.
  ["40x40-8-1c", { A: "C", B: "B", C: "A", D: "D" }],
  // Faces A and B are closed: they change places, as do C and D.
  ["40x40-8-2c", { A: "B", B: "A", C: "D", D: "C" }],
])("the closed slots of %s lie where their images are", (profile, faces) => {
  fc.assert(
    fc.property(anyBar, (drawn) => {
      const [original, copy] = pairOf({ ...drawn, profile }, { mirror: { across: "y", at: 0 } });
      const normals = new Map(faceNormals(sectionAxes(original)));
      const copied = new Map(faceNormals(sectionAxes(copy)));
      for (const face of ["A", "B", "C", "D"] as const) {
        const [x, y, z] = normals.get(face) ?? [0, 0, 0];
        near(copied.get(faces[face] as typeof face) ?? [0, 0, 0], [x, -y, z]);
      }
    }),
    { numRuns: 50 },
  );
});

test("a section that is its own image in no mirror is refused", () => {
  const bars = [{ ...bar("a", [0, 0, 0], [500, 0, 0]), profile: "40x80-8-2c" }];
  const { problems } = read(file({ bars, copies: [{ of: ["a"], suffix: "b", mirror: { across: "y", at: 900 } }] }));
  expect(problems).toMatchObject([
    {
      code: "no-mirror-image",
      place: { pointer: "/copies/0/mirror" },
      found: '"a", whose section 40x80-8-2c has no mirror image',
    },
  ]);
});

test("a turned bar keeps its faces: four quarter turns about any axis bring it back", () => {
  fc.assert(
    fc.property(anyBar, anyPoint, fc.constantFrom("+x", "-y", "+z"), (drawn, through, about) => {
      const copies = [{ of: ["a"], suffix: "t", times: 4, turn: { about, through, angle: 90 } }];
      const { bars } = frameOf(file({ bars: [drawn], copies }));
      const [original, back] = [find(bars, "a"), find(bars, "at4")];
      near(back.from, original.from);
      near(back.to, original.to);
      near(sectionAxes(back).y, sectionAxes(original).y);
      near(sectionAxes(back).z, sectionAxes(original).z);
    }),
    { numRuns: 100 },
  );
});

test("a turn is right-handed about its axis", () => {
  const [, copy] = pairOf(bar("a", [100, 0, 0], [100, 0, 500]), {
    turn: { about: "+z", through: [0, 0, 0], angle: 90 },
  });
  expect([copy.from, copy.to]).toEqual([
    [0, 0.1, 0],
    [0, 0.1, 0.5],
  ]);
  // A vertical bar's face A looks +x unless turned; turned with the bar it looks +y.
  expect(copy.stance).toEqual({ by: "tall", direction: [0, 1, 0] });
});

test("shifts add up, by number, and keep how the bar stands", () => {
  const copies = [{ of: ["a"], shift: [0, 100, 0], suffix: "-", times: 3 }];
  const { bars } = frameOf(file({ copies }));
  expect(bars.map((one) => [one.ref.id, one.from[1]])).toEqual(
    [
      ["a", 0],
      ["a-1", 0.1],
      ["a-2", 0.2],
      ["a-3", 0.3],
    ].map(([id, y]) => [id, expect.closeTo(Number(y), 12)]),
  );
  expect(new Set(bars.map((one) => one.stance))).toEqual(new Set([{ by: "roll", angle: 0 }]));
});

test("cuts follow: at a copied bar its copy, at another the same, axis and normal moved", () => {
  const bars = [
    bar("leg", [0, 0, 0], [0, 0, 800]),
    bar("post", [900, 0, 0], [900, 0, 800]),
    bar("rail", [0, 0, 400], [900, 0, 400], { ends: { from: { butt: "leg" }, to: { mitre: "post" } } }),
    bar("brace", [0, 0, 100], [900, 0, 300], { ends: { from: { plane: [-1, 0, 0] }, to: { angle: 30, about: "+y" } } }),
  ];
  const frame = frameOf(
    file({ bars, copies: [{ of: ["leg", "rail", "brace"], mirror: { across: "y", at: 200 }, suffix: "m" }] }),
  );
  const rail = find(frame.bars, "railm");
  expect(rail.ends.from.cut).toEqual({ kind: "butt", against: "legm", written: true });
  expect(rail.ends.to.cut).toEqual({ kind: "mitre", with: "post" });
  expect(rail.ends.to.ref).toEqual({ kind: "end", id: "railm/to" });
  const brace = find(frame.bars, "bracem");
  expect(brace.ends.from.cut).toEqual({ kind: "plane", normal: [-1, 0, 0] });
  // In a mirror across y a turn about +y stays what it is: both the axis and the sense of turning are reversed.
  expect(brace.ends.to.cut).toMatchObject({ kind: "angle", about: [0, 1, 0] });
});

test("joints, stands and loads of copied bars are copied, with ids after the copies", () => {
  const more = {
    bars: [
      bar("leg", [0, 0, 0], [0, 0, 800]),
      bar("rail", [0, 0, 400], [900, 0, 400]),
      bar("beam", [0, 0, 790], [900, 0, 790]),
    ],
    joints: [
      { bars: ["rail/from"], onto: "leg", by: [{ connector: "end-screw-M8" }] },
      { id: "special", bars: ["rail/to"], onto: "beam", by: [{ connector: "inside-bracket-40", on: "below" }] },
    ],
    ties: [
      { bars: ["leg", "rail"], part: "side-tie-8", at: [10] },
      { bars: ["leg", "beam"], part: "side-tie-8", at: [10] },
    ],
    stands: [{ part: "foot-40-M8", bars: ["leg"] }],
    loads: [
      { case: "c", on: "rail", force: 100, direction: "+y" },
      { case: "c", on: ["rail", "beam"], force: 100 },
    ],
    copies: [{ of: ["leg", "rail"], shift: [0, 500, 0], suffix: "2" }],
  };
  const frame = frameOf(file(more));
  expect(frame.joints.map((joint) => [joint.ref.id, joint.bar, joint.onto])).toEqual([
    ["rail.from", "rail", "leg"],
    ["special", "rail", "beam"],
    ["rail2.from", "rail2", "leg2"],
    ["special2", "rail2", "beam"],
  ]);
  expect(find(frame.joints, "special2").connectors[0]?.ref.id).toBe("special2/1");
  expect(frame.ties.map((tie) => [tie.ref.id, ...tie.bars])).toEqual([
    ["leg.tie-1", "leg", "rail"],
    ["leg.tie-2", "leg", "beam"],
    ["leg.tie-1.2", "leg2", "rail2"],
  ]);
  expect(frame.stands.map((stand) => stand.ref.id)).toEqual(["leg.foot", "leg2.foot"]);
  expect(frame.loads.map((load) => [load.ref.id, ...load.on])).toEqual([
    ["c.load-1", "rail"],
    ["c.load-2", "rail", "beam"],
    ["c.load-1.2", "rail2"],
  ]);
});

test("copies are copied by later entries, and any part may refer to them", () => {
  const more = {
    loads: [{ case: "c", on: "abc", force: 100 }],
    copies: [
      { of: ["a"], shift: [0, 100, 0], suffix: "b" },
      { of: ["a", "ab"], shift: [0, 0, 100], suffix: "c" },
    ],
  };
  const frame = frameOf(file(more));
  expect(frame.bars.map((one) => one.ref.id)).toEqual(["a", "ab", "ac", "abc"]);
  near(find(frame.bars, "abc").from, [0, 0.1, 0.1]);
});

describe("in a mirror", () => {
  // The profile has two slots on faces B and D; its section is its own mirror image.
  const connectors = (list: readonly object[], mirror: object) => {
    const bars = [bar("a", [0, 0, 0], [500, 0, 0], { tall: "+z" })];
    const joints = [{ bars: ["a/to"], by: list }];
    const frame = frameOf(file({ bars, joints, copies: [{ of: ["a"], mirror, suffix: "m" }] }));
    return find(frame.joints, "am.to").connectors;
  };
  const part = { connector: "inside-bracket-40" };

  test("faces by direction and by name move, words stay while up stays up", () => {
    const list = [
      { ...part, on: "+y" },
      { ...part, on: "B" },
      { ...part, on: "A" },
      { ...part, on: "above" },
      { ...part, on: "inner" },
    ];
    const faces = connectors(list, { across: "y", at: 0 }).map(({ on }) => on);
    expect(faces).toEqual([
      { by: "direction", direction: [0, -1, 0], written: "-y" },
      { by: "name", name: "D" },
      { by: "name", name: "A" },
      { by: "word", word: "above" },
      { by: "word", word: "inner" },
    ]);
  });

  test("above becomes below across z", () => {
    const faces = connectors(
      [
        { ...part, on: "above" },
        { ...part, on: "outer" },
      ],
      { across: "z", at: 0 },
    ).map(({ on }) => on);
    expect(faces).toEqual([
      { by: "word", word: "below" },
      { by: "word", word: "outer" },
    ]);
  });

  test("slots are counted the other way, shift and omitted holes change sides", () => {
    const list = [
      { ...part, on: "+y", slot: 1, shift: 3 },
      { ...part, on: "A", slot: 1 },
      { ...part, on: "+y", slot: "+z" },
      { connector: "wide-bracket-80", on: "-y", slot: "all", omit: ["a1", "b2"] },
    ];
    const made = connectors(list, { across: "z", at: 0 });
    expect(made.map(({ slot }) => slot)).toEqual([
      { by: "number", number: 2 },
      { by: "number", number: 1 },
      { by: "direction", direction: [0, 0, -1], written: "-z" },
      { by: "all" },
    ]);
    expect(made[0]?.shift).toBe(-0.003);
    expect(made[3]?.omit).toEqual(["a2", "b1"]);
  });

  test("a plate is turned until it is its own image, and its left out hole is the image", () => {
    const more = {
      bars: [bar("leg", [0, 0, 0], [0, 0, 800]), bar("rail", [0, 0, 400], [900, 0, 400])],
      fastenings: [
        { id: "elbow", part: "plate-L-40", on: "-y", at: [0, -20, 400], turn: 0, holds: ["leg", "rail"], omit: ["h2"] },
      ],
      copies: [{ of: ["leg", "rail"], mirror: { across: "x", at: 1000 }, suffix: "m" }],
    };
    const elbow = find(frameOf(file(more)).fastenings, "elbowm");
    // Legs along +u and +v; the image has them along +u and -v, which is the plate turned by -90°, its arms swapped.
    expect(elbow.turn).toBeCloseTo(-Math.PI / 2 + 2 * Math.PI, 12);
    expect(elbow.connector.omit).toEqual(["h3"]);
    expect(elbow.at).toEqual([2, -0.02, 0.4]);
    expect(elbow.holds).toEqual(["legm", "railm"]);
  });

  test("a moment turns the other way, a force is reflected", () => {
    const loads = [
      { case: "c", on: "a", force: 100, direction: "+x" },
      { case: "c", on: "a", moment: 10, direction: "+x" },
    ];
    const frame = frameOf(file({ loads, copies: [{ of: ["a"], mirror: { across: "x", at: 600 }, suffix: "m" }] }));
    expect(frame.loads.map((load) => load.direction)).toEqual([
      [1, 0, 0],
      [1, 0, 0],
      [-1, 0, 0],
      [1, 0, 0],
    ]);
  });
});

test("a laid panel, its mass and a zone are turned by a right angle", () => {
  const more = {
    bars: [bar("a", [0, 0, 0], [500, 0, 0]), bar("b", [0, 300, 0], [500, 300, 0])],
    panels: [
      {
        id: "p",
        sheet: "plywood-18",
        held: "laid",
        bars: ["a", "b"],
        overhang: [1, 2, 3, 4],
        size: [500, 340],
        notches: [20, 30],
      },
    ],
    masses: [{ id: "m", mass: 10, centre: [100, 0, 50], box: [30, 20, 10], on: ["p"], slides: { by: [0, -80, 0] } }],
    zones: [
      {
        id: "z",
        box: [
          [0, 0, 0],
          [100, 200, 300],
        ],
        risk: "high",
      },
    ],
    copies: [{ of: ["a", "b", "z"], turn: { about: "+z", through: [0, 0, 0], angle: 90 }, suffix: "t" }],
  };
  const frame = frameOf(file(more));
  const panel = find(frame.panels, "pt");
  // +x turns to +y, +y to -x: what stood out towards +y now does towards -x.
  expect(panel.held).toMatchObject({ bars: ["at", "bt"], on: [0, 0, 1], overhang: [0.004, 0.003, 0.001, 0.002] });
  expect(panel.size).toEqual([0.34, 0.5]);
  expect(panel.notches).toEqual([0.03, 0.02]);
  const mass = find(frame.masses, "mt");
  expect(mass).toMatchObject({ centre: [0, 0.1, 0.05], box: [0.02, 0.03, 0.01], on: ["pt"] });
  near(mass.slides?.by ?? [0, 0, 0], [0.08, 0, 0]);
  const zone = find(frame.zones, "zt");
  near(zone.low, [-0.2, 0, 0]);
  near(zone.high, [0, 0.1, 0.3]);
});

test("a group is copied whole, with its stands, and a door with its hinges", () => {
  const more = {
    bars: [bar("leg", [0, 0, 0], [0, 0, 800]), bar("leaf", [50, 0, 100], [50, 0, 700])],
    stands: [{ part: "foot-40-M8", bars: ["leg"] }],
    doors: [
      {
        id: "door",
        bars: ["leaf"],
        axis: "+z",
        swing: [0, 90],
        hinges: [{ part: "hinge-8", bars: ["leaf", "leg"], at: [25, 0, 200] }],
      },
    ],
    groups: [{ id: "g", parts: ["leg", "leg.foot", "door"] }],
    copies: [{ of: ["g"], mirror: { across: "y", at: 500 }, suffix: "m" }],
  };
  const frame = frameOf(file(more));
  expect(find(frame.groups, "gm").parts).toEqual(["legm", "legm.foot", "doorm"]);
  const door = find(frame.doors, "doorm");
  // Seen in the mirror the door swings the other way.
  expect(door).toMatchObject({
    bars: ["leafm"],
    axis: [0, 0, -1],
    hinges: [{ bars: ["leafm", "legm"], at: [0.025, 1, 0.2] }],
  });
});
