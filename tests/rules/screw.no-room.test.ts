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
 */
const REACH = 96 - 6 / 2;
const HALF = 6 / Math.sqrt(3);
/** Free arc in a channel of two endless walls, each `apart` from the axis, rad; hand-worked from the far corner of the arm's end. */
const channelArc = (apart: number): number =>
  Math.PI - 2 * (Math.acos(apart / Math.hypot(REACH, HALF)) + Math.atan(HALF / REACH));

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
  boxedIn(45, 60)(file);
  return file;
}

it("screw.no-room: free length and free arc after bolts.hexkey.6, bolts.head.ISO4762.M8 and bolts.swing", () => {
  const at = "strap/1/h3";
  const wrong = proveRule(rule, boxed(), [
    { title: "the lid just lets the key in", edit: boxedIn(38.4, 60), finds: [] },
    {
      title: "the lid just keeps the key out",
      edit: boxedIn(37.6, 60),
      finds: [{ at, key: "entry", measured: 0.0376 }],
    },
    { title: "the walls just leave 60°", edit: boxedIn(45, 50), finds: [] },
    {
      title: "the walls leave just less than 60°",
      edit: boxedIn(45, 49),
      finds: [{ at, key: "swing", measured: channelArc(49) }],
    },
    { title: "without a lid a longer tool turns over the walls", edit: boxedIn(400, 30), finds: [] },
  ]);
  expect(wrong).toEqual([]);
  expect((channelArc(49) * 180) / Math.PI).toBeCloseTo(59.27, 2);
});
