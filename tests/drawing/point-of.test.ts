import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { pointsOf } from "../../src/drawing/point-of.ts";
import { sceneOf } from "../../src/drawing/scene.ts";
import { factOf } from "../../src/facts/fact.ts";
import { screwedParts } from "../../src/facts/screwed-parts.ts";
import type { Frame } from "../../src/model/frame.ts";
import { endRef, type Ref, ref } from "../../src/model/ref.ts";
import { frameOf } from "../facts/known.ts";

/** Demo frames with faults, and the faulty frame of each rule's page: parts that hold nothing, touch nothing, lie beside all else. */
const FRAMES = ["docs/demo", "docs/rules"].flatMap((folder) =>
  readdirSync(folder)
    .filter((name) => /fault(y)?\.frame\.json$/.test(name))
    .map((name) => `${folder}/${name}`),
);

function partsOf(frame: Frame): readonly Ref[] {
  const { all, unplaced } = factOf(screwedParts, frame);
  const screws = all.flatMap((part) => part.screws.map((screw) => screw.ref));
  const whole = [
    ...frame.bars,
    ...frame.joints,
    ...frame.fastenings,
    ...frame.ties,
    ...frame.pivots,
    ...frame.panels,
    ...frame.doors,
    ...frame.stands,
    ...frame.masses,
    ...frame.loads,
    ...frame.groups,
    ...frame.zones,
    ...all,
    ...unplaced,
  ].map((one): Ref => one.ref);
  const ends = frame.bars.flatMap((bar) => [endRef(bar.ref.id, "from"), endRef(bar.ref.id, "to")]);
  return [...whole, ...ends, ...screws, ...screws.map(({ id }) => ref("nut", `${id}/nut`))];
}

describe("where parts are pointed at", () => {
  it.each(FRAMES)("is somewhere for every part of %s", (path) => {
    const frame = frameOf(JSON.parse(readFileSync(path, "utf8")));
    const pointOf = pointsOf(frame, sceneOf(frame));
    const lost = partsOf(frame).filter((part) => !pointOf(part)?.every(Number.isFinite));
    expect(lost.map(({ kind, id }) => `${kind} ${id}`)).toEqual([]);
  });

  it("is the end it is on for a joint that meets no bar, and where it is written for a plate without a place, and between its bars for a tie of bars that lie apart", () => {
    const bar = (id: string, y: number) => ({
      id,
      profile: "40x40-8",
      from: [0, y, 500] as [number, number, number],
      to: [600, y, 500] as [number, number, number],
    });
    const frame = frameOf({
      format: 1,
      title: "two bars",
      units: "mm-N-kg",
      bars: [bar("a", 0), bar("b", 200)],
      joints: [{ bars: ["a"], ends: "to", by: [{ connector: "inside-bracket-40", on: "below" }] }],
      fastenings: [
        { id: "cleat", part: "gusset-bracket-40", on: "-y", against: "-y", at: [100, 0, 800], holds: ["a", "b"] },
      ],
      ties: [{ id: "t", part: "side-tie-8", bars: ["a", "b"], at: [300] }],
    });
    const pointOf = pointsOf(frame, sceneOf(frame));
    expect(pointOf(ref("joint", "a.to"))).toEqual([0.6, 0, 0.5].map((c) => expect.closeTo(c, 9)));
    for (const cleat of [ref("joint", "cleat"), ref("connector", "cleat/1")])
      expect(pointOf(cleat)).toEqual([0.1, 0, 0.8].map((c) => expect.closeTo(c, 9)));
    expect(pointOf(ref("joint", "t"))).toEqual([0.3, 0.1, 0.5].map((c) => expect.closeTo(c, 9)));
  });
});
