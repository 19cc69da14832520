import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/screw.no-room.ts";
import { barOf, tee } from "./base-frames.ts";

/*
 * A plate 5 mm thick on the +y face of the rail, with one screw M8x16 at x = 300: its head tops out at y = 20 + 5 + 8 = 33. A lid runs
 * along over it, and two walls run along beside it in the heights the arm of the key takes. Key 6 mm after bolts.hexkey.6: arms 96 and
 * 38 mm to the outside of the bend, across corners 6·2/√3; socket 4 mm deep (bolts.head.ISO4762.M8). With the short arm in, the key
 * asks for 38 mm to be put in; at work and lifted its long arm lies 38 - 4 - 6 = 28 to 38 mm over the head and reaches 96 - 3 from the axis.
 * Every other tool of the kit is longer or reaches further.
 *
 * Fingers on the outer 60 mm of that arm, w wide, lie in from it and stand clear of the lid. Key and fingers swing 60° between the walls
 * as far as the far corner of the fingers at 30° off the way along: R·cos 60° + w/2·sin 60° = d, so w = 2·(d - R/2)/sin 60°; 60 mm of
 * width at d = 72.48. The ratchet stands 70 mm high with its handle of 110 mm 46 to 66 mm over the head and clicks every 5°: a fist has
 * w = 2·(d - 110·cos 87.5°)/sin 87.5°; its 60 mm lie in from the handle too, from 6 mm over the head, and the walls reach to 57.
 */
const REACH = 96 - 6 / 2;
const HALF = 6 / Math.sqrt(3);
/** Free arc in a channel of two endless walls, each `apart` from the axis, rad; hand-worked from the far corner of the arm's end. */
const channelArc = (apart: number): number =>
  Math.PI - 2 * (Math.acos(apart / Math.hypot(REACH, HALF)) + Math.atan(HALF / REACH));

const fingersBetween = (apart: number): number => (2 * (apart - REACH / 2)) / Math.sin(Math.PI / 3);
const CLICK = (87.5 * Math.PI) / 180;
const fistBetween = (apart: number): number => (2 * (apart - 110 * Math.cos(CLICK))) / Math.sin(CLICK);

/** Sets the lid so far over the head, and the walls so far beside the screw, mm. */
const boxedIn =
  (over: number, beside: number) =>
  (file: FrameFile): void => {
    const set = (id: string, y: number, z: number): void => {
      const bar = barOf(file, id);
      bar.from = [0, y, z];
      bar.to = [600, y, z];
    };
    set("lid", 33 + over + 20, 500);
    set("wall-1", 70, 500 - beside - 20);
    set("wall-2", 70, 500 + beside + 20);
  };

/**
 * A lid 35 mm over the head that ends so far beside its axis, mm. A stem tilted by 25° passes the edge where 35·sin 25° - e·cos 25° is
 * no less than its 6/√3: e = 12.5 at most. It then stands clear of the walls and turns over the lid.
 */
const lidTo =
  (edge: number) =>
  (file: FrameFile): void => {
    boxedIn(35, 80)(file);
    const lid = barOf(file, "lid");
    for (const end of [lid.from, lid.to]) end[2] = 500 + edge - 20;
  };
const passing = (edge: number): number => 35 * Math.sin(Math.PI / 7.2) - edge * Math.cos(Math.PI / 7.2);

function boxed(): FrameFile {
  const base = tee();
  const file: FrameFile = {
    ...base,
    bars: [
      ...base.bars,
      ...["lid", "wall-1", "wall-2"].map((id) => ({
        id,
        profile: "40x40-8",
        from: [0, 0, 0] as [number, number, number],
        to: [600, 0, 0] as [number, number, number],
      })),
    ],
    fastenings: [
      {
        id: "strap",
        part: "plate-I-40",
        on: "+y",
        at: [280, 20, 500],
        holds: ["rail", "lid", "wall-1", "wall-2"],
        omit: ["h1", "h2", "h4"],
      },
    ],
  };
  boxedIn(45, 80)(file);
  return file;
}

it("screw.no-room: free length, free arc and room for the hand after bolts.hexkey.6, bolts.head.ISO4762.M8 and bolts.swing", () => {
  const at = "strap/1/h3";
  const wrong = proveRule(rule, boxed(), [
    { title: "the lid just lets the key in", edit: boxedIn(38.4, 80), finds: [] },
    {
      title: "the lid just keeps the key out",
      edit: boxedIn(37.6, 80),
      finds: [{ at, key: "entry", measured: 0.0376 }],
    },
    {
      title: "past the end of the lid a ball end just gets in",
      edit: lidTo(12.4),
      finds: [
        { at, key: "entry", measured: 0.035 },
        { at, key: "ball" },
      ],
    },
    {
      title: "the lid just keeps the ball end out as well",
      edit: lidTo(12.6),
      finds: [{ at, key: "entry", measured: 0.035 }],
    },
    {
      title: "the walls just leave the key 60°, and the fingers next to nothing",
      edit: boxedIn(45, 50),
      finds: [{ at, key: "hand", measured: fingersBetween(50) / 1000 }],
    },
    {
      title: "the walls leave just less than 60°",
      edit: boxedIn(45, 49),
      finds: [{ at, key: "swing", measured: channelArc(49) }],
    },
    { title: "the walls just leave the fingers room", edit: boxedIn(45, 72.6), finds: [] },
    {
      title: "the walls come just too near to the fingers",
      edit: boxedIn(45, 72.4),
      finds: [{ at, key: "hand", measured: fingersBetween(72.4) / 1000 }],
    },
    {
      title: "a house with slender fingers",
      edit: (file) => {
        boxedIn(45, 72.4)(file);
        file.criteria = { "finger-room": "59 mm" };
      },
      finds: [],
    },
    {
      title: "a ratchet clicks between the walls, but not with a fist round its handle",
      edit: boxedIn(75, 49),
      finds: [{ at, key: "hand", measured: fistBetween(49) / 1000 }],
    },
    {
      title: "a smaller fist",
      edit: (file) => {
        boxedIn(75, 49)(file);
        file.criteria = { "fist-room": "88 mm" };
      },
      finds: [],
    },
    { title: "without a lid a longer tool turns over the walls", edit: boxedIn(400, 30), finds: [] },
  ]);
  expect(wrong).toEqual([]);
  expect((channelArc(49) * 180) / Math.PI).toBeCloseTo(59.27, 2);
  expect([passing(12.4) > HALF, passing(12.6) > HALF]).toEqual([true, false]);
  expect(fingersBetween(72.4)).toBeCloseTo(59.81, 2);
  expect(fistBetween(49)).toBeCloseTo(88.49, 2);
});
