import { expect, it } from "vitest";
import { endCuts } from "../../src/facts/end-cuts.ts";
import { factOf } from "../../src/facts/fact.ts";
import { placements } from "../../src/facts/placements.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { frameOf, one } from "./known.ts";

type Bars = FrameFile["bars"];

/** A rail on top of a post, fastened to it: as drawn, with the rail drawn again, in whichever order. */
const railOnPost = (edit: (file: FrameFile) => void) => {
  const file: FrameFile = {
    format: 1,
    title: "a rail on a post",
    units: "mm-N-kg",
    bars: [
      { id: "post", profile: "40x40-8", from: [300, 0, 0], to: [300, 0, 800] },
      { id: "rail", profile: "40x40-8", from: [0, 0, 800], to: [600, 0, 800] },
    ],
    joints: [{ bars: ["post/to"], by: [{ connector: "inside-bracket-40", on: "+x" }] }],
  };
  edit(file);
  const frame = frameOf(file);
  const [cuts, placed] = [factOf(endCuts, frame), factOf(placements, frame)];
  return {
    questions: [...cuts.questions, ...placed.questions].length,
    against: cuts.of("post", "to")?.against?.bar,
    onto: placed.met.map(({ contact }) => contact.b.bar),
  };
};
const again = (bars: Bars, id: string, shift: readonly [number, number, number] = [0, 0, 0]): Bars[number] => {
  const rail = one(bars.find((bar) => bar.id === "rail"));
  const moved = (point: unknown) => (point as number[]).map((c, i) => c + (shift[i] ?? 0)) as [number, number, number];
  return { ...rail, id, from: moved(rail.from), to: moved(rail.to) };
};

it("a bar drawn twice: what ends in both ends in the first by name, and nobody is asked", () => {
  const found = { questions: 0, against: "rail", onto: ["rail"] };
  expect(railOnPost(() => {})).toEqual(found);
  expect(railOnPost(({ bars }) => bars.push(again(bars, "rail-b")))).toEqual(found);
  expect(railOnPost(({ bars }) => bars.unshift(again(bars, "rail-b")))).toEqual(found);
  // Drawn again half its length further on, and a little beside its line.
  expect(railOnPost(({ bars }) => bars.push(again(bars, "rail-b", [250, 5, 0])))).toEqual(found);
  expect(railOnPost(({ bars }) => bars.push(again(bars, "a-rail")))).toEqual({
    ...found,
    against: "a-rail",
    onto: ["a-rail"],
  });
});

it("bars that cross, or lie side by side, are no doubles: there somebody has to say which", () => {
  expect(
    railOnPost(({ bars }) =>
      bars.push({ id: "cross", profile: "40x40-8", from: [300, -300, 800], to: [300, 300, 800] }),
    ).questions,
  ).toBe(1);
  // Half under each of two rails: neither bears most of its end.
  expect(
    railOnPost(({ bars }) => {
      const rail = one(bars.find((bar) => bar.id === "rail"));
      [rail.from, rail.to] = [
        [0, -20, 800],
        [600, -20, 800],
      ];
      one(bars.find((bar) => bar.id === "post")).to = [300, 0, 780];
      bars.push(again(bars, "beside", [0, 40, 0]));
    }).questions,
  ).toBe(1);
});

it("an end cut at the face of a bar it names is fastened to that bar", () => {
  const crossed = (cut: object, by: object = {}) =>
    railOnPost(({ bars, joints }) => {
      bars.push({ id: "cross", profile: "40x40-8", from: [300, -300, 800], to: [300, 300, 800] });
      Object.assign(one(bars.find((bar) => bar.id === "post")), { ends: { to: cut } });
      Object.assign(one(joints?.[0]), by);
    });
  expect(crossed({ butt: "cross" })).toEqual({ questions: 0, against: "cross", onto: ["cross"] });
  expect(crossed({ butt: "rail" })).toEqual({ questions: 0, against: "rail", onto: ["rail"] });
  // A joint that names its bar has the last word.
  expect(crossed({ butt: "rail" }, { onto: "cross" }).onto).toEqual(["cross"]);
});
