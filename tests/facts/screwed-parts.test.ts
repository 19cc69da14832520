import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { partCounts } from "../../src/facts/part-counts.ts";
import type { PlacedScrew, ScrewedPart } from "../../src/facts/placed.ts";
import { screwedParts } from "../../src/facts/screwed-parts.ts";
import { socketOf } from "../../src/facts/sockets.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { builtinStock } from "../../src/model/stock/builtin-stock.ts";
import { known, near, one } from "./known.ts";

const read = (path: string): FrameFile => JSON.parse(readFileSync(path, "utf8"));
const guard = read("docs/demo/mixer-guard.frame.json");
const cabinet = read("tests/defects/frames/seed-cabinet.frame.json");
const table = read("tests/defects/frames/timber-table.frame.json");

const trestle = (): FrameFile => read("tests/defects/frames/braced-trestle.frame.json");

const freeOf = (file: FrameFile): readonly ScrewedPart[] => known(screwedParts, file).free;
const part = (file: FrameFile, id: string): ScrewedPart =>
  one(
    freeOf(file).find(({ ref }) => ref.id === id),
    id,
  );
const screw = (file: FrameFile, id: string): PlacedScrew =>
  one(
    freeOf(file)
      .flatMap(({ screws }) => screws)
      .find(({ ref }) => ref.id === id),
    id,
  );
const landing = ({ into }: PlacedScrew) => one(into.kind === "nut" ? into.landing : undefined, "nut");

/** Two bars of 40 mm, one on the other, tied 300 mm from their ends; the upper one lifted by a gap, mm. */
function pair(gap = 0, profile = "40x40-8", tie = "side-tie-8", pitch = 40): FrameFile {
  return {
    format: 1,
    title: "two bars tied",
    units: "mm-N-kg",
    bars: [
      { id: "lower", profile, from: [0, 0, 0], to: [600, 0, 0] },
      { id: "upper", profile, from: [0, 0, pitch + gap], to: [600, 0, pitch + gap] },
    ],
    ties: [{ id: "tie", bars: ["lower", "upper"], part: tie, at: [300] }],
  };
}

describe("the screw of a tie", () => {
  it("has its head behind the lips of the first bar, 4 mm thick, and its key through a hole of 7 mm across that bar", () => {
    const { seat, axis, grip, drive } = screw(pair(), "tie/1/a1");
    expect(seat).toEqual(near([300, 0, 16]));
    expect(axis).toEqual([0, 0, 1]);
    expect(grip).toBeCloseTo(0.004, 12);
    expect(drive.point).toEqual(near([300, 0, -20]));
    const [hole] = part(pair(), "tie/1").bored;
    expect(hole).toMatchObject({ bar: "lower", radius: 0.0035 });
    expect(part(pair(), "tie/1").inSlots).toMatchObject([{ bar: "lower", face: "A", what: "screw head" }]);
  });

  it("sits in a nut of the second bar; a gap between the bars is gripped with the lips", () => {
    const apart = screw(pair(0.3), "tie/1/a1");
    expect(apart.grip).toBeCloseTo(0.0043, 12);
    expect(landing(apart)).toMatchObject({ bar: "upper", face: "C" });
    expect(landing(apart).station).toBeCloseTo(0.3, 12);
  });

  it("is reached 34.2 mm deep: 31.6 mm to the head 4.4 mm high, and a socket of 2.6 mm (ISO 7380-1)", () => {
    const tie = part(pair(), "tie/1");
    const socket = one(socketOf(tie, one(tie.screws[0]), new Map()));
    expect(socket.depth * 1000).toBeCloseTo(34.2, 9);
    expect(socket.hole).toBeCloseTo(0.007, 12);
  });

  it("fits every profile of its slot size, where both bars are alike", () => {
    for (const { name, pitch, slotSize, slots, width, height } of builtinStock().profiles.values()) {
      if (width !== pitch || height !== pitch || slots.some(({ closed }) => closed)) continue;
      const size = `${(pitch * 1000).toFixed(4)} mm`;
      const file = pair(0, name, `side-tie-${slotSize}`);
      for (const end of ["from", "to"] as const) one(file.bars[1])[end] = [end === "from" ? 0 : 600, 0, size];
      // docs/stock-format.md, screw lengths: 0.5 mm off the slot floor, the whole nut engaged.
      const { screw: fitted, grip, into } = screw(file, "tie/1/a1");
      const slot = one(one(into.kind === "nut" ? into : undefined).landing.slot);
      const nut = one(into.kind === "nut" ? into.nut : undefined, `nut for ${name}`);
      const below = fitted.length - grip;
      expect(slot.depth - below, name).toBeGreaterThan(0.5e-3 - 1e-9);
      expect(below - slot.lip, name).toBeGreaterThan(0.9 * nut.engagement - 1e-9);
    }
  });

  it("has no place where the bars do not lie side by side", () => {
    expect(freeOf(pair(25))).toEqual([]);
  });
});

describe("the leaves of hinges and latches", () => {
  it("lie on the faces both bars show, their holes on the slots: half the gap of 4 mm and 20 mm from the axis", () => {
    // The axis stands at x = 42 mm before the door's bar at 64 and the post at 20; the leaf is 5 mm thick.
    for (const [id, x, z] of [
      ["h1", 64, 310],
      ["h2", 64, 290],
      ["h3", 20, 310],
      ["h4", 20, 290],
    ] as const)
      expect(screw(guard, `door/hinge-1/${id}`).seat).toEqual(near([x, -5, z]));
    expect(landing(screw(guard, "door/hinge-1/h1")).bar).toBe("door-hung");
    expect(landing(screw(guard, "door/hinge-1/h3")).bar).toBe("post-1");
  });

  it("are pushed along onto the slots: a latch 1.5 mm off them on either side", () => {
    // 838 ± 20.5 mm, where the slots run at 816 and 860.
    expect(screw(guard, "door/latch/h1").seat).toEqual(near([816, -5, 1000]));
    expect(screw(guard, "door/latch/h2").seat).toEqual(near([860, -5, 1000]));
  });

  it("have no place between bars that cross, nor half way between two planes", () => {
    const crossing = trestle();
    for (const pin of crossing.pivots ?? []) pin.part = "pivot-40";
    expect(freeOf(crossing)).toEqual([]);
    expect(known(screwedParts, crossing).unplaced.map(({ ref, lack }) => [ref.id, lack])).toEqual(
      [1, 2, 3, 4, 5, 6].map((i) => [`pin-${i}/1`, "no plane"]),
    );
    const midway = structuredClone(guard);
    const [hinge] = one(midway.doors?.[0]).hinges;
    hinge.at = [42, 20, 300];
    expect(known(screwedParts, midway).unplaced).toMatchObject([{ ref: { id: "door/hinge-1" }, lack: "two planes" }]);
  });
});

describe("a tie where two bars cross", () => {
  // The brace lies outside on the left posts, x from 40 to 80 mm, and crosses post-1 at z = 250.
  it("has its head behind the lips of the first bar, its nut in the second and its key through a hole from outside", () => {
    const { seat, axis, drive, grip, into } = screw(trestle(), "pin-1/1/a1");
    expect(seat).toEqual(near([76, 20, 250]));
    expect(axis[0]).toBe(1);
    expect(drive.point).toEqual(near([40, 20, 250]));
    expect(grip).toBeCloseTo(0.004, 12);
    expect(one(into.kind === "nut" ? into : undefined).landing).toMatchObject({ bar: "post-1", off: 0 });
    const [hole] = part(trestle(), "pin-1/1").bored;
    expect(hole).toMatchObject({ bar: "brace-left", radius: 0.0035 });
    // From the pin to the end of the brace as drawn: 14 mm across and 13.25 mm down.
    expect(one(part(trestle(), "pin-1/1").head).station).toBeCloseTo(Math.hypot(0.014, 0.01325), 12);
  });
});

/** A sheet of 6 mm on two bars 600 mm long. */
function screwed(edit: (file: FrameFile) => void = () => {}): FrameFile {
  const file: FrameFile = {
    format: 1,
    title: "a sheet on two bars",
    units: "mm-N-kg",
    bars: [
      { id: "a", profile: "40x40-8", from: [0, 0, 0], to: [600, 0, 0] },
      { id: "b", profile: "40x40-8", from: [0, 300, 0], to: [600, 300, 0] },
    ],
    panels: [{ id: "deck", sheet: "hpl-6", held: "on-face", on: "+z", bars: ["a", "b"], screws: { pitch: 250 } }],
  };
  edit(file);
  return file;
}
const stations = (file: FrameFile, row: string): readonly number[] =>
  part(file, row).screws.map((one) => Math.round(landing(one).station * 1e5) / 100);

describe("the screws of a sheet", () => {
  it("stand evenly from 20 mm to 20 mm off the ends, no farther apart than asked: 560 mm in three", () => {
    expect(stations(screwed(), "deck/a")).toEqual([20, 206.67, 393.33, 580]);
    expect(screw(screwed(), "deck/b/1").seat).toEqual(near([20, 300, 26]));
  });

  it("are low heads of 8 mm where the file names none, as long as the nut asks: 6 + 4 + 6 mm", () => {
    expect(screw(screwed(), "deck/a/1").screw.name).toBe("M8x16-button");
    const named = screwed((file) => {
      const deck = one(file.panels?.[0]);
      deck.screws = { pitch: 250, screw: "M8x20" };
    });
    expect(screw(named, "deck/a/1").screw.name).toBe("M8x20");
  });

  it("make way for a nut that is there, and keep from under a post: the nut fills 383 to 403 mm, the post 415 to 455", () => {
    const beside = screwed((file) => {
      file.bars.push({ id: "up", profile: "40x40-8", from: [435, 0, 20], to: [435, 0, 300] });
      file.fastenings = [
        { id: "foot", part: "inside-bracket-40", on: "+z", against: "-x", at: [415, 0, 20], holds: ["a", "up"] },
      ];
    });
    expect(stations(beside, "deck/a")).toEqual([20, 206.67, 373, 580]);
    expect(stations(beside, "deck/b")).toEqual([20, 206.67, 393.33, 580]);
  });
});

it("as many screws have a place as lie on the bench", () => {
  for (const file of [guard, cabinet, table]) {
    const laid = known(partCounts, file).filter(({ kind }) => kind === "screw");
    const placed = known(screwedParts, file).all.flatMap(({ screws }) => screws);
    expect(placed.length).toBe(laid.reduce((sum, { count }) => sum + count, 0));
  }
});
