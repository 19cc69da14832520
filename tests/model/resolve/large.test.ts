import { expect, test } from "vitest";
import { readFrameDocument } from "../../../src/model/read-frame.ts";
import { openDocument } from "../../../src/model/text/document.ts";
import { read } from "./read.ts";
import { smallStock } from "./small-stock.ts";

const head = { format: 1, title: "Large", units: "mm-N-kg" };
const kits = { corner: [{ connector: "inside-bracket-40", on: "below" }] };

/** A ring of bars, each jointed onto the next, each with a foot and a load, all in one group and under one mass. */
function ring(count: number): object {
  const indices = Array.from({ length: count }, (_, index) => index);
  const next = (index: number): string => `bar-${(index + 1) % count}`;
  const ids = indices.map((index) => `bar-${index}`);
  return {
    ...head,
    kits,
    bars: indices.map((index) => {
      const at = [(index % 100) * 200, Math.floor(index / 100) * 100];
      const ends = { to: { butt: next(index) } };
      return { id: `bar-${index}`, profile: "40x40-8", from: [...at, 0], to: [...at, 500], ends };
    }),
    joints: indices.map((index) => ({ bars: [`bar-${index}`], onto: next(index), by: "corner" })),
    stands: [{ part: "foot-40-M8", bars: ids }],
    loads: indices.map((index) => ({ case: `c${index % 5}`, on: `bar-${index}`, force: 100 })),
    masses: [{ id: "deck", mass: 100, centre: [0, 0, 0], on: ids }],
    groups: [{ id: "all", parts: ids }],
    copies: indices.slice(0, count / 10).map((index) => ({ of: [`bar-${index}`], shift: [0, 0, 900], suffix: "-up" })),
  };
}

// Anything that looks through all bars for each bar takes minutes here.
test("20,000 bars, each with joints, a foot and a load, and 2,000 copies resolve in seconds", {
  timeout: 20_000,
}, () => {
  const { frame, problems } = read(ring(20_000));
  expect(problems).toEqual([]);
  expect(frame?.bars.length).toBe(22_000);
  expect(frame?.joints.length).toBe(44_000);
  expect(frame?.loads.length).toBe(22_000);
});

const bar = (id: string, more: object = {}) => ({ id, profile: "40x40-8", from: [0, 0, 0], to: [500, 0, 0], ...more });

test("10,000 wrong names are told as 200 and a count, in seconds", { timeout: 20_000 }, () => {
  const bars = Array.from({ length: 10_000 }, (_, index) => bar(`b${index}`, { profile: `40x40-${index + 10}` }));
  const { problems, frame } = read({ ...head, bars });
  expect(frame).toBeUndefined();
  expect(problems.length).toBe(201);
  expect(problems.at(-1)).toMatchObject({ code: "more-problems", weight: "error", found: "9800 more problems" });
});

test("10,000 entries of the wrong form are told as 200 and a count, in seconds", { timeout: 20_000 }, () => {
  const bars = Array.from({ length: 10_000 }, (_, index) => bar(`b${index}`, { roll: true }));
  const { problems } = read({ ...head, bars });
  expect(problems.length).toBe(201);
  expect(problems.at(-1)?.found).toBe("9800 more problems or entries with problems");
});

test("exactly 200 problems need no count", () => {
  const bars = Array.from({ length: 200 }, (_, index) => bar(`b${index}`, { profile: "none" }));
  expect(read({ ...head, bars }).problems.map((problem) => problem.code)).toEqual(Array(200).fill("unknown-stock"));
});

test("errors are told before warnings are", () => {
  const far = Array.from({ length: 4 }, (_, index) => bar(`far-${index}`, { to: [500_000, 0, 0] }));
  const wrong = Array.from({ length: 199 }, (_, index) => bar(`b${index}`, { profile: "none" }));
  const { problems } = read({ ...head, bars: [...far, ...wrong] });
  expect(problems.filter((problem) => problem.weight === "error").length).toBe(199);
  expect(problems.at(-1)).toMatchObject({ code: "more-problems", weight: "warning", found: "7 more problems" });
});

test("one slip in a unit is doubted a few times, not for every bar", () => {
  const bars = Array.from({ length: 100 }, (_, index) => bar(`b${index}`, { to: [500_000, 0, 0] }));
  const { problems, frame } = read({ ...head, bars });
  expect(problems.map((problem) => problem.code)).toEqual(Array(10).fill("doubtful-value"));
  expect(frame?.bars.length).toBe(100);
});

const tooMany = (copies: readonly object[], more: object = {}) =>
  read({ ...head, bars: [bar("a"), bar("b")], copies, ...more }).problems.map(
    ({ code, place }) => `${place.pointer} ${code}`,
  );

test("copies that would fill the machine are refused before they are made", () => {
  const bars = Array.from({ length: 51 }, (_, index) => bar(`b${index}`));
  const copies = [
    { of: bars.map(({ id }) => id), shift: [0, 1, 0], times: 10_000, suffix: "x" },
    { of: ["b0"], shift: [0, 1, 0], suffix: "y" },
  ];
  expect(tooMany(copies, { bars })).toEqual(["/copies/0 too-many-parts"]);
});

test("copies of many loads on one bar are refused too", () => {
  const loads = Array.from({ length: 60 }, () => ({ case: "c", on: "a", force: 100 }));
  expect(tooMany([{ of: ["a"], shift: [0, 1, 0], times: 9_999, suffix: "x" }], { loads })).toEqual([
    "/copies/0 too-many-parts",
  ]);
});

test("500,001 bars are refused", () => {
  const text = JSON.stringify({ ...head, bars: [bar("a")] });
  const { document } = openDocument("a.frame.json", new TextEncoder().encode(text));
  if (document === undefined) throw new Error("the text is sound");
  const value = { ...head, bars: Array(500_001).fill(bar("a")) };
  const { problems } = readFrameDocument({ ...document, value }, smallStock);
  expect(problems).toMatchObject([{ code: "too-many-parts", found: "500001 bars", place: { pointer: "/bars" } }]);
});
