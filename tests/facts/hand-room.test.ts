import { describe, expect, it } from "vitest";
import { handRoomOf } from "../../src/facts/hand-room.ts";
import { type ToolRoom, toolRoom } from "../../src/facts/tool-room.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { edited, kitItem, tee } from "../rules/base-frames.ts";
import { known, one } from "./known.ts";

const ASKED = { fingers: 0.06, fist: 0.1 };
const roomAt = (file: FrameFile): ToolRoom =>
  one(known(toolRoom, file).find((room) => room.screw.ref.id === "rail.from/1/a1"));
/** The screw with everything in place: what it has to live with that is tightened last. */
function lastRoomAt(file: FrameFile): ToolRoom {
  const { near, later, ...rest } = roomAt(file);
  const room: ToolRoom = { ...rest, near: [...near, ...later], later: [], early: () => room };
  return room;
}
const handAt = (file: FrameFile) => one(handRoomOf(lastRoomAt(file), ASKED));

/*
 * The key of 6 mm on the bracket under the rail: its arm of 93 mm lies 41 to 51 mm under the rail, lifted or not, and the fingers take
 * 25 mm of which 6 are the arm's: 41 to 70 mm under the rail where they lie out from it, 22 to 51 where they lie in. The post is on one
 * side of it, and bars run along on two others, 40 mm high, so far beside the screw and so far under the rail. A lid 72 mm under it keeps longer tools away. A
 * plate far off holds them by one screw, away from all this.
 */
function cornered(apart: number, under: number): FrameFile {
  return edited(tee(), (file) => {
    const z = 480 - under - 20;
    for (const [id, side] of [
      ["left", 1],
      ["right", -1],
    ] as const)
      file.bars.push({ id, profile: "40x40-8", from: [0, side * (apart + 20), z], to: [600, side * (apart + 20), z] });
    file.bars.push({ id: "lid", profile: "40x40-8", from: [0, 0, 480 - 72 - 20], to: [600, 0, 480 - 72 - 20] });
    file.fastenings = [
      {
        id: "hold",
        part: "plate-I-40",
        on: "-z",
        at: [450, 0, 480],
        holds: ["rail", "left", "right", "lid"],
        omit: ["h1", "h2", "h4"],
      },
    ];
  });
}
/** Half a swing of 60° off the way along, the far corner of the fingers touches: 93·sin 30° + w/2·cos 30° = apart. */
const between = (apart: number): number => (2 * (apart - 93 * Math.sin(Math.PI / 6))) / Math.cos(Math.PI / 6);

describe("room for the hand", () => {
  it("is as much as is looked for where the key turns in the open", () => {
    const { width, by, trial } = handAt(tee());
    expect(trial.way.grip).toBe("fingers");
    expect(width * 1000).toBeCloseTo(90, 9);
    expect(by).toBeUndefined();
  });

  it("works the corner by hand: 70 mm to either side leave 54.3 mm for the fingers", () => {
    const { width, by } = handAt(cornered(70, 21));
    expect(between(70)).toBeCloseTo(54.27, 2);
    expect(width * 1000).toBeCloseTo(between(70), 6);
    expect(["left", "right"]).toContain(one(by).id);
  });

  it("is found to within half a millimetre, on the safe side, where it is enough", () => {
    const { width } = handAt(cornered(75, 21));
    expect(width * 1000).toBeLessThanOrEqual(between(75));
    expect(width * 1000).toBeGreaterThan(between(75) - 1);
  });

  it("is found out from the handle, in from it, or half and half", () => {
    const enough = expect.closeTo(0.09, 9);
    // Bars 0 to 20 mm under the rail end over the arm and the fingers that lie in from it.
    expect(handAt(cornered(70, -20)).width).toEqual(enough);
    // 52 mm under the rail they begin under the arm: the fingers lie in.
    expect(handAt(cornered(70, 52)).width).toEqual(enough);
    // From 40 mm over to just 40 mm under the arm: the fingers lie out.
    expect(handAt(cornered(70, 0.5)).width).toEqual(enough);
  });

  it("takes the moment the connector was put on where there is more room then", () => {
    const cramped = lastRoomAt(cornered(70, 21));
    const open = roomAt(tee());
    const { width } = one(handRoomOf({ ...cramped, early: () => open }, ASKED));
    expect(width * 1000).toBeCloseTo(90, 9);
  });

  it("is not asked of a tool that does not turn", () => {
    const file = edited(tee(), (base) => {
      kitItem(base).torque = 60;
    });
    expect(handRoomOf(roomAt(file), ASKED)).toBeUndefined();
  });
});
