import { describe, expect, it } from "vitest";
import { slotUse } from "../../src/facts/slot-use.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { edited, kitItem, tee } from "../rules/base-frames.ts";
import { known } from "./known.ts";

const mm = (m: number): number => Math.round(m * 1e7) / 1e4;
const use = (edit: (file: FrameFile) => void = () => {}) => {
  const { occupants, neighbours } = known(slotUse, edited(tee(), edit));
  return {
    occupants: occupants.map(({ bar, face, what, from, to }) => [bar, face, what, mm(from), mm(to)]),
    free: neighbours.map(({ bar, face, free }) => [bar, face, mm(free)]),
  };
};

describe("what sits in the slots", () => {
  it("nuts 20 mm long about their screws: 22 mm from the corner", () => {
    expect(use()).toEqual({
      occupants: [
        ["rail", "C", "nut", 32, 52],
        ["post", "A", "nut", 448, 468],
      ],
      free: [],
    });
  });

  it("a screw head of 14 mm, an end fastener of 26 mm", () => {
    const screw = use((file) => {
      Object.assign(kitItem(file), { connector: "end-screw-8" });
      delete kitItem(file).on;
    });
    expect(screw.occupants).toEqual([["post", "A", "screw head", 493, 507]]);
    const claw = use((file) => {
      Object.assign(kitItem(file), { connector: "end-fastener-8", on: "above" });
    });
    // Its nut lies where its screw meets the post: 8 mm under the top of the rail.
    expect(claw.occupants).toEqual([
      ["rail", "A", "end fastener", 20, 46],
      ["post", "A", "nut", 502, 522],
    ]);
  });
});

describe("what crosses the slots", () => {
  it("a screw of 8 mm through the whole post, in the slots of both faces it passes", () => {
    const { occupants } = use((file) => {
      Object.assign(kitItem(file), { connector: "end-screw-through-40" });
      delete kitItem(file).on;
    });
    expect(occupants).toEqual([
      ["post", "A", "end screw", 496, 504],
      ["post", "C", "end screw", 496, 504],
    ]);
  });
});

describe("what is free between them", () => {
  it("two nuts of one post, one over the other: 542 − 458 − 20 = 64 mm", () => {
    const both = use((file) => {
      file.kits = { corner: [kitItem(file), { connector: "inside-bracket-40", on: "above" }] };
    });
    expect(both.free).toEqual([["post", "A", 64]]);
  });

  /** Plates with one screw each in the rail's −y slot at these x, mm. */
  const screwsAt =
    (...places: readonly number[]) =>
    (file: FrameFile): void => {
      file.joints = [];
      file.fastenings = places.map((x) => ({
        part: "plate-I-40",
        on: "-y" as const,
        at: [x, -20, 500] as [number, number, number],
        holds: ["rail"] as [string],
        omit: ["h1", "h2", "h4"],
      }));
    };

  it("in order along the slot, whatever the order of the file; nuts that touch leave exactly none", () => {
    // Hole h3 lies 20 mm on.
    expect(use(screwsAt(300, 120, 100)).free).toEqual([
      ["rail", "B", 0],
      ["rail", "B", 160],
    ]);
    expect(use(screwsAt(100, 119)).free).toEqual([["rail", "B", -1]]);
  });

  it("is counted from what reaches furthest, not from the last that began", () => {
    // A claw from 20 to 46 and a nut about 35, from 25 to 45, inside it; the next nut begins at 50.
    const { free } = use((file) => {
      screwsAt(15, 40)(file);
      file.kits = { corner: [{ connector: "end-fastener-8", on: "-y" }] };
      file.joints = [{ bars: ["rail"], ends: "from", by: "corner" }];
    });
    expect(free).toEqual([
      ["rail", "B", -21],
      ["rail", "B", 4],
    ]);
  });
});
