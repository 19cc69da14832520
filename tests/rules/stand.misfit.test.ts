import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/stand.misfit.ts";
import { barOf, tee } from "./base-frames.ts";

/*
 * Core bores by hand: 40x40-8 has one for M8 in its middle; 80x80-8 four, 20 mm off the middle both ways. A screw M8 has
 * 0.5 mm of play all round in a hole of 9 mm. The plates below are ours: four holes at 19.6 mm lie 0.57 mm off the bores of 80x80-8,
 * at 19.7 mm 0.42 mm off.
 */
const holes = (y: number, z: number) =>
  [
    [y, z],
    [-y, z],
    [-y, -z],
    [y, -z],
  ].map((at, i) => ({ id: `h${i + 1}`, at, diameter: 9 }));
const square = (half: number) => [
  [-half, -half],
  [half, -half],
  [half, half],
  [-half, half],
];
const plate = (name: string, size: number, drilled?: readonly object[]): object => ({
  name,
  kind: "caster",
  mount: { by: "plate", size: [size, size], thickness: 4, ...(drilled ? { holes: drilled } : {}) },
  diameter: 75,
  collar: size,
  raise: [100, 100],
  capacity: 700,
  mass: 0.7,
});
const stock = JSON.stringify({
  format: 1,
  units: "mm-N-kg",
  title: "plates and a tube without a core",
  profiles: [
    {
      kind: "drawn",
      name: "plain",
      pitch: 40,
      slotSize: "8",
      weight: "standard",
      material: "6063-T66",
      stockLength: 6000,
      lipRating: 7000,
      lipSource: "ours",
      outline: square(20),
      holes: [square(17)],
      slots: [],
    },
  ],
  stands: [
    plate("small-plate", 39),
    plate("just-large", 40),
    plate("four-holes", 77, holes(20, 20)),
    plate("just-met", 77, holes(19.7, 19.7)),
    plate("just-missed", 77, holes(19.6, 19.6)),
    plate("two-of-four", 77, [...holes(20, 20).slice(0, 2), ...holes(30, 30).slice(2)]),
    plate("for-wide-bar", 77, holes(20, 0).slice(0, 2)),
  ],
});

/** What stands under the post, and the post's profile. */
const under =
  (part: string, profile = "40x40-8", tall?: "+x" | "+y") =>
  (file: FrameFile) => {
    const post = barOf(file, "post");
    post.profile = profile;
    if (tall) post.tall = tall;
    file.stands = [{ part, bars: ["post"] }];
  };
const WIDE = "80x80-8";

/** The post alone, leaning so far out of plumb, degrees. */
function leant(file: FrameFile, by: number): void {
  const turn = (by * Math.PI) / 180;
  barOf(file, "post").from = [0, 0, 0];
  barOf(file, "post").to = [0, 1000 * Math.sin(turn), 1000 * Math.cos(turn)];
  file.bars = [barOf(file, "post")];
  file.joints = [];
}

it("stand.misfit: threads of the stock and places of bores and holes (geometry)", () => {
  const at = "post.foot";
  const rolling = "post.caster";
  const wrong = proveRule(
    rule,
    tee(),
    [
      { title: "a stem of the core's thread", edit: under("foot-40-M8"), finds: [] },
      { title: "a stem too thin for the core", edit: under("foot-30-M6"), finds: [{ at, key: "thread" }] },
      { title: "a stem too thick for the core", edit: under("foot-45-M10"), finds: [{ at, key: "thread" }] },
      { title: "a stem in one of four bores", edit: under("foot-40-M8", WIDE), finds: [] },
      { title: "a plate over the only bore", edit: under("caster-75-plate"), finds: [] },
      { title: "a plate that ends at the bores", edit: under("just-large", WIDE), finds: [] },
      { title: "a plate between the bores", edit: under("small-plate", WIDE), finds: [{ at: rolling, key: "beside" }] },
      { title: "four holes over four bores", edit: under("four-holes", WIDE), finds: [] },
      { title: "four holes round one bore", edit: under("four-holes"), finds: [{ at: rolling, key: "unmet" }] },
      { title: "holes within the play of the screws", edit: under("just-met", WIDE), finds: [] },
      { title: "holes just beyond it", edit: under("just-missed", WIDE), finds: [{ at: rolling, key: "unmet" }] },
      { title: "two of four holes", edit: under("two-of-four", WIDE), finds: [{ at: rolling, key: "partly" }] },
      { title: "a plate turned to suit the bar", edit: under("for-wide-bar", "40x80-8", "+y"), finds: [] },
      {
        title: "an end mitred against another bar",
        edit: (file) => {
          under("foot-40-M8")(file);
          barOf(file, "post").ends = { from: { mitre: "rail" } };
          Object.assign(barOf(file, "rail"), { from: [0, 0, 0], to: [600, 0, 0], ends: { from: { mitre: "post" } } });
          file.joints = [];
        },
        finds: [{ at, key: "mitred" }],
      },
      {
        title: "an end that leans by 44°",
        edit: (file) => {
          under("foot-40-M8")(file);
          leant(file, 44);
        },
        finds: [],
      },
      {
        title: "an end that leans by 46°",
        edit: (file) => {
          under("foot-40-M8")(file);
          leant(file, 46);
        },
        finds: [{ at, key: "sideways" }],
      },
      {
        title: "the end of a bar that lies",
        edit: (file) => {
          file.stands = [{ part: "foot-40-M8", bars: ["rail"] }];
        },
        finds: [{ at: "rail.foot", key: "sideways" }],
      },
      {
        title: "the end of a bar that lies, anchored to a wall",
        edit: (file) => {
          file.stands = [{ part: "foot-40-M8", bars: ["rail"], hold: "anchored" }];
        },
        finds: [],
      },
      {
        title: "no core at all",
        edit: under("foot-40-M8", "plain"),
        finds: [{ at, key: "coreless" }],
      },
    ],
    [{ file: "plates.stock.json", bytes: new TextEncoder().encode(stock) }],
  );
  expect(wrong).toEqual([]);
});
