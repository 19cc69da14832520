import { describe, expect, it } from "vitest";
import { type Parts, pickAdverse } from "../../src/facts/adverse.ts";
import { bodies } from "../../src/facts/bodies.ts";
import { combinations } from "../../src/facts/combinations.ts";
import { factOf } from "../../src/facts/fact.ts";
import { footing } from "../../src/facts/footing.ts";
import { solverModel } from "../../src/facts/solver-model.ts";
import { type Structure, structure } from "../../src/facts/structure.ts";
import { prepareFrame } from "../../src/mechanics/frame.ts";
import { valueAt } from "../../src/mechanics/piecewise.ts";
import { memberForces } from "../../src/mechanics/results.ts";
import { type Solution, solveFrame } from "../../src/mechanics/statics/solve.ts";
import type { Bar, FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { gantry } from "../rules/gantry.ts";
import { frameOf } from "./known.ts";

const SPAN = 1000;

/** Two beams over so many equal spans, on posts that carry no moment; each span of both is a case of its own, N/mm. */
function viaduct(spans: number, line: number): FrameFile {
  const file = gantry(spans * SPAN);
  for (let i = 1; i < spans; i += 1)
    for (const y of [0, 500]) {
      const id = `prop-${i}-${y}`;
      file.bars.push({ id, profile: "40x40-8", from: [i * SPAN, y, 50], to: [i * SPAN, y, 600] } as Bar);
      file.joints?.push({ bars: [id], ends: "to", by: "post" });
      file.stands?.push({ part: "foot-40-M8", bars: [id] });
    }
  file.loads = Array.from({ length: spans }, (_, i) => ({
    case: `span-${i + 1}`,
    on: ["front", "back"],
    line,
    // Stations run from the beam's end, 20 mm before the first post.
    part: [20 + i * SPAN, 20 + (i + 1) * SPAN],
  })) as NonNullable<FrameFile["loads"]>;
  return file;
}

/** Moment of the front beam about its level axis at a station, N·m. */
function bending(solution: Solution, combination: number, known: Structure, at: number): number {
  for (const index of known.piecesOf("front")) {
    const [start = 0, end = 0] = known.pieces[index]?.stations ?? [];
    if (at < start - 1e-9 || at > end + 1e-9) continue;
    return valueAt(memberForces(solution, combination, index).Mz, at - start);
  }
  throw new Error(`no beam at ${at}`);
}

/** Largest moments of the front beam under all service combinations as shares of q L²: over each inner post and in each span. */
function coefficients(spans: number): { readonly over: number[]; readonly within: number[]; readonly names: string[] } {
  // So little load that the frame's own weight holds every foot down; what it does is taken off again.
  const line = 0.1;
  const frame = frameOf(viaduct(spans, line));
  const [known, all, feet, { cases, all: combined }] = [
    factOf(structure, frame),
    factOf(bodies, frame),
    factOf(footing, frame),
    factOf(combinations, frame),
  ];
  const service = combined.filter(({ kind }) => kind === "service");
  const model = solverModel(known, all, feet, frame.stock, "stiff", "free", []);
  const solution = solveFrame(prepareFrame(model), cases, [
    cases.map((_, i) => (i === 0 ? 1 : 0)),
    ...service.map(({ factors }) => factors),
  ]);
  const own = (c: number, at: number): number => bending(solution, c + 1, known, at) - bending(solution, 0, known, at);
  const size = line * 1e3 * (SPAN / 1000) ** 2;
  const sags = Math.sign(own(0, 0.42));
  const stations = (from: number, count: number): number[] =>
    Array.from({ length: count }, (_, i) => 0.02 + from + ((i + 0.5) / count) * (SPAN / 1000));
  const most = (at: readonly number[], sign: number): number =>
    Math.max(...service.flatMap((_, c) => at.map((x) => (sign * own(c, x)) / size)));
  const over = Array.from({ length: spans - 1 }, (_, i) => most([0.02 + ((i + 1) * SPAN) / 1000], -sags));
  const within = Array.from({ length: spans }, (_, i) => most(stations((i * SPAN) / 1000, 40), sags));
  return { over, within, names: service.map(({ name }) => name) };
}

/** Beams also give in shear and posts in length, and what adds less than 1 % is not asked for. */
const near =
  (value: number) =>
  (found: number): boolean =>
    Math.abs(found / value - 1) < 0.02;

const loaded = (spans: string): string => `self-weight + ${spans.replace(/\d/g, "span-$&")}`;

describe("patterns", () => {
  // Handbook tables of continuous beams of equal spans, moving load, from memory; worked again by the three-moment equation over all
  // patterns: over the posts, then in the spans, in q L².
  it.each([
    [3, [0.1167, 0.1167], [0.1013, 0.075, 0.1013]],
    [4, [0.1205, 0.1071, 0.1205], [0.0996, 0.0805, 0.0805, 0.0996]],
  ] as const)("of a beam over %i spans bend each post and each span as the tables have it", (spans, over, within) => {
    const found = coefficients(spans);
    for (const [i, value] of over.entries()) expect(found.over[i]).toSatisfy(near(value), `over post ${i + 2}`);
    for (const [i, value] of within.entries()) expect(found.within[i]).toSatisfy(near(value), `in span ${i + 1}`);
    // Every other span, and both beside a post: two of four are away, which no case alone and none left out gives.
    if (spans > 3) expect(found.names).toEqual(expect.arrayContaining(["1 + 3", "2 + 4", "2 + 3"].map(loaded)));
  });

  const still = (name: string, act: number): Parts => ({ name, still: [act], roamers: [] });

  it("are of cases that may act together, those that add to an effect and no others (influence)", () => {
    // Self-weight and four cases; the first and the third exclude each other.
    const effects = [{ by: Float64Array.of(1, 5, -2, 4, 3), scale: 10 }];
    const [a, b, c, d] = [still("a", 1), still("b", 2), still("c", 3), still("d", 4)];
    const found = pickAdverse(
      effects,
      [0],
      {
        sets: [
          [a, b, d],
          [b, c, d],
        ],
        whole: false,
      },
      { start: [], limit: 8 },
    );
    // Up 1 + 5 + 3; down only 1 − 2.
    expect(found).toEqual([
      { acts: [1, 4], names: ["a", "d"] },
      { acts: [2], names: ["b"] },
    ]);
    expect(pickAdverse(effects, [0], { sets: [[a, b, d]], whole: false }, { start: [[1, 4], [2]], limit: 8 })).toEqual(
      [],
    );
  });

  it("put loads that roam each where it does most, the first of the plan where two places are alike", () => {
    const roaming = (acts: number[], from: number): Parts => ({
      name: "goods",
      still: [],
      roamers: [{ acts, at: acts.map((_, i) => [Math.abs(from - i), 0, 0] as const) }],
    });
    const effects = [{ by: Float64Array.of(0, 1, 2, 1, 1, 3, 3), scale: 5 }];
    const pick = (from: number): unknown => {
      const sets = [[roaming([1, 2, 3], 0), { ...roaming([4, 5, 6], from), name: "tools" }]];
      return pickAdverse(effects, [0], { sets, whole: true }, { start: [[1, 4]], limit: 1 });
    };
    expect(pick(0)).toEqual([{ acts: [2, 5], names: ["goods", "tools"] }]);
    expect(pick(2)).toEqual([{ acts: [2, 6], names: ["goods", "tools"] }]);
  });
});
