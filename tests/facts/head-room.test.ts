import { describe, expect, it } from "vitest";
import { headRoom } from "../../src/facts/head-room.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { edited, facingRails, kitItem, tee } from "../rules/base-frames.ts";
import { known } from "./known.ts";

const room = (file: FrameFile, screw: string, other: string) =>
  known(headRoom, file).find((found) => found.screw.ref.id === screw && found.other.ref.id === other);

describe("room at screw heads", () => {
  it("the two heads of a bracket stand square to each other, 17 mm off along either axis: 17 − 6.5 − 8 = 2.5 mm", () => {
    // Seats [42, 475] and [25, 458] in x and z: head a1 reaches down to 467, 35.5 to 48.5 wide; b1 out to 33, 451.5 to 464.5.
    const found = room(tee(), "rail.from/1/a1", "rail.from/1/b1");
    // 35.5 − 33 = 2.5 along x and 467 − 464.5 = 2.5 along z.
    expect(found?.headToHead).toBeCloseTo(0.0025, 9);
    // The key of a1 is 6 mm over flats, 6.93 over corners, at x = 42: 42 − 3.46 − 33.
    expect(found?.keyToHead).toBeCloseTo(0.042 - 0.006 / Math.sqrt(3) - 0.033, 9);
  });

  it("keys of facing brackets end flat: 38 mm of key in what is left between the heads", () => {
    // Undersides at 480 and tops at 500 − apart + 20: heads 2 · (5 + 8) mm nearer.
    const between = (free: number) => facingRails(free + 40 + 26);
    const key = (free: number) => room(between(free), "rail.from/1/a1", "low.from/1/a1")?.keyToHead;
    expect(key(40)).toBeCloseTo(0.002, 9);
    expect(key(38)).toBeCloseTo(0, 9);
    expect(key(37)).toBeCloseTo(-0.001, 9);
    // 5 mm and more apart is nobody's concern.
    expect(key(44)).toBeUndefined();
  });

  it("heads side by side on one face: 14 mm between middles leave 1 mm", () => {
    const file = edited(tee(), (base) => {
      base.joints = [];
      base.fastenings = [0, 14].map((x) => ({
        id: `p${x}`,
        part: "plate-I-40",
        on: "+y" as const,
        at: [100 + x, 20, 500] as [number, number, number],
        holds: ["rail"] as [string],
        omit: ["h1", "h2", "h4"],
      }));
    });
    expect(room(file, "p0/1/h3", "p14/1/h3")?.headToHead).toBeCloseTo(0.001, 9);
  });

  it("a head inside a slot is in nobody's way", () => {
    const file = tee();
    Object.assign(kitItem(file), { connector: "end-screw-8" });
    delete kitItem(file).on;
    file.kits = { ...file.kits, side: [{ connector: "inside-bracket-40", on: "below" }] };
    file.joints = [{ bars: ["rail"], ends: "from", by: "corner" }];
    file.fastenings = [
      { id: "under", part: "inside-bracket-40", on: "-z", against: "+x", at: [20, 0, 480], holds: ["rail", "post"] },
    ];
    for (const found of known(headRoom, file)) expect(found.other.ref.id).not.toBe("rail.from/1/a1");
    expect(known(headRoom, file)).toHaveLength(2);
  });
});
