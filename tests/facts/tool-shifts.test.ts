import { describe, expect, it } from "vitest";
import { factOf } from "../../src/facts/fact.ts";
import { toolRoom } from "../../src/facts/tool-room.ts";
import { type Shift, toolShifts } from "../../src/facts/tool-shifts.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { barOf, edited, tee } from "../rules/base-frames.ts";
import { strapped } from "../rules/strapped.ts";
import { frameOf, one } from "./known.ts";

const ASKED = { fingers: 0.06, fist: 0.1 };

function shiftOf(file: FrameFile, screw: string): Shift | undefined {
  const frame = frameOf(file);
  const room = one(factOf(toolRoom, frame).find((each) => each.screw.ref.id === screw));
  return factOf(toolShifts, frame).shiftOf(room.connector, ASKED);
}
const millimetres = (shift: Shift | undefined): number => one(shift).move * 1000;

/*
 * Under the bracket of the rail, whose head tops out 13 mm under it at z = 467, a bar runs across with its upper face at z = 437: 30 mm are
 * free and 38 asked for. Nothing else is in the way up the post, so the rail must go up by 8 mm.
 */
const underRail = (edit: (file: FrameFile) => void = () => {}): FrameFile =>
  edited(tee(), (file) => {
    file.bars.push({ id: "across", profile: "40x40-8", from: [42, -300, 417], to: [42, 300, 417] });
    file.fastenings = [
      {
        id: "hold",
        part: "plate-I-40",
        on: "+y",
        at: [0, 20, 200],
        holds: ["post", "across"],
        omit: ["h1", "h2", "h4"],
      },
    ];
    // Built as one with the post, it is there before the rail.
    file.groups = [{ id: "stand", parts: ["post", "across"] }];
    edit(file);
  });

describe("the least move that frees a screw", () => {
  it("takes a plate along its bars past the end of the bar over it", () => {
    const shift = shiftOf(strapped(), "strap/1/h2");
    expect(millimetres(shift)).toBeCloseTo(44, 9);
    expect(one(shift).slide.moves.id).toBe("strap");
  });

  it("takes a bar along the post it ends on", () => {
    const shift = shiftOf(underRail(), "rail.from/1/a1");
    expect(millimetres(shift)).toBeCloseTo(8, 9);
    expect(one(shift).slide.moves).toEqual({ kind: "bar", id: "rail" });
    expect(one(shift).slide.along).toBe("post");
  });

  it("goes the other way where the bar ends, with a slot opening and a half of 8.2 mm to the nut", () => {
    // At x = 344 the nut keeps 12.3 mm where the rail ends at 356.3, and not where it ends at 356.
    const cut = (x: number) => (file: FrameFile) => {
      barOf(file, "rail").to = [x, 0, 500];
    };
    expect(millimetres(shiftOf(strapped(cut(356.3)), "strap/1/h2"))).toBeCloseTo(44, 9);
    expect(millimetres(shiftOf(strapped(cut(356)), "strap/1/h2"))).toBeCloseTo(-124, 9);
  });

  it("does not run what it moves into anything", () => {
    // The plate is 38 mm wide; ends of bars stand 10 mm off it on either side, 4 mm deep in its plane.
    const stopped = (file: FrameFile): void => {
      for (const [id, from, to] of [
        ["left", 100, 271],
        ["right", 329, 500],
      ] as const) {
        file.bars.push({ id, profile: "40x40-8", from: [from, 41, 580], to: [to, 41, 580] });
        one(file.fastenings?.[0]).holds.push(id);
      }
    };
    expect(shiftOf(strapped(stopped), "strap/1/h2")).toBeUndefined();
  });

  it("finds none for a plate on bars that run two ways, nor for a bar that something else is fastened to", () => {
    const across = (file: FrameFile): void => {
      one(file.fastenings?.[0]).holds.push("post");
    };
    expect(shiftOf(strapped(across), "strap/1/h2")).toBeUndefined();
    const loaded = (file: FrameFile): void => {
      file.fastenings?.push({
        id: "more",
        part: "plate-I-40",
        on: "+z",
        at: [400, 0, 520],
        holds: ["rail"],
        omit: ["h1", "h2", "h4"],
      });
    };
    expect(shiftOf(underRail(loaded), "rail.from/1/a1")).toBeUndefined();
  });

  it("is looked for once a connector and kept", () => {
    const frame = frameOf(underRail());
    const { connector } = one(factOf(toolRoom, frame).find((each) => each.screw.ref.id === "rail.from/1/a1"));
    const { shiftOf: find } = factOf(toolShifts, frame);
    expect(find(connector, ASKED)).toBe(find(connector, ASKED));
  });
});
