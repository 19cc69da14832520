import { describe, expect, it } from "vitest";
import { acting, GRAVITY } from "../../src/facts/acting.ts";
import { bodies } from "../../src/facts/bodies.ts";
import { factOf } from "../../src/facts/fact.ts";
import { response } from "../../src/facts/response.ts";
import { sags } from "../../src/facts/sag.ts";
import { spans } from "../../src/facts/spans.ts";
import { structure } from "../../src/facts/structure.ts";
import { add, along, cross, scale, type Vec3 } from "../../src/geometry/vector.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { tee } from "../rules/base-frames.ts";
import { barData, gantry } from "../rules/gantry.ts";
import { frameOf, one } from "./known.ts";

const NOTHING: Vec3 = [0, 0, 0];

interface Resting {
  readonly bar: string;
  /** Stations along the bar, m; alike for a point. */
  readonly from: number;
  readonly to: number;
  readonly force: Vec3;
  readonly moment: Vec3;
  /** About the origin, N·m. */
  readonly turning: Vec3;
}

/** What one case puts on the bars, stretch by stretch. */
function resting(file: FrameFile, name: string): readonly Resting[] {
  const frame = frameOf(file);
  const { cases, lost } = factOf(acting, frame);
  expect(lost).toEqual([]);
  const members = one(cases.find((each) => each.name === name)).loads.members ?? [];
  return members.flatMap((load): Resting[] => {
    if (load.kind === "strain") throw new Error("a strain is no load of equipment");
    const piece = one(factOf(structure, frame).pieces[load.member]);
    const { bar, axes } = one(factOf(bodies, frame).get(piece.bar));
    const [from, to] = load.kind === "line" ? [load.start, load.end] : [load.along, load.along];
    const [first, last] = load.kind === "line" ? (load.force ?? [NOTHING, NOTHING]) : [load.force, load.force];
    expect(last).toEqual(first);
    const force = load.kind === "line" ? scale(first ?? NOTHING, to - from) : (first ?? NOTHING);
    const moment = load.kind === "line" ? NOTHING : (load.moment ?? NOTHING);
    const stations = [piece.stations[0] + from, piece.stations[0] + to] as const;
    const at = along(bar.from, axes.x, (stations[0] + stations[1]) / 2);
    const turning = add(cross(at, force), moment);
    return [{ bar: piece.bar, from: stations[0], to: stations[1], force, moment, turning }];
  });
}

function sumsOf(parts: readonly Resting[]): readonly [Vec3, Vec3] {
  return [parts.reduce((sum, p) => add(sum, p.force), NOTHING), parts.reduce((sum, p) => add(sum, p.turning), NOTHING)];
}

/** Force and moment about the origin of what the case "turn" puts on the bars, N and N·m. */
function sums(
  on: [string, ...string[]],
  direction: "+x" | "-z",
  box?: [number, number, number],
): readonly [Vec3, Vec3] {
  const file = tee();
  file.masses = [{ id: "motor", mass: 5, centre: [200, 50, 600], on, ...(box ? { box } : {}) }];
  file.loads = [{ case: "turn", on: "motor", moment: 20, direction }];
  return sumsOf(resting(file, "turn"));
}

it.each([
  ["one point", ["rail"], undefined],
  ["a stretch of one bar", ["rail"], [200, 100, 100]],
  ["bars at an angle", ["rail", "post"], [200, 100, 100]],
] as const)("a moment on a thing reaches what carries it whole, without a force: %s", (_, on, box) => {
  for (const [direction, expected] of [
    ["+x", [20, 0, 0]],
    ["-z", [0, 0, -20]],
  ] as const) {
    const [force, moment] = sums([...on] as [string, ...string[]], direction, box && [...box]);
    for (const i of [0, 1, 2] as const) {
      expect(force[i]).toBeCloseTo(0, 9);
      expect(moment[i]).toBeCloseTo(expected[i], 9);
    }
  }
});

type Put = NonNullable<FrameFile["masses"]>[number];

/** Two beams along x at y = 0 and 500 mm, axes 600 mm up, with a thing of 100 kg on them that is taken off in use. */
function carrying(put: Partial<Put>, top?: readonly string[]): FrameFile {
  const file = gantry(1000, { depth: 500 });
  file.masses = [{ id: "chest", mass: 100, centre: [500, 250, 700], on: ["front", "back"], fixed: false, ...put }];
  if (top)
    file.panels = [{ id: "top", sheet: "plywood-18", held: "laid", bars: [...top] }] as NonNullable<
      FrameFile["panels"]
    >;
  return file;
}
const W = 100 * GRAVITY;

/** Expects the chest and a push on it to reach the bars with their whole force and moment. */
function balanced(file: FrameFile): void {
  const centre = scale(one(file.masses?.[0]).centre as Vec3, 1e-3);
  file.loads = [{ case: "push", on: "chest", force: 300, direction: "+x" }];
  for (const [name, force] of [
    ["chest", [0, 0, -W]],
    ["push", [300, 0, 0]],
  ] as const) {
    const found = sumsOf(resting(file, name));
    const expected = [force, cross(centre, [...force])];
    for (const k of [0, 1] as const)
      for (const i of [0, 1, 2] as const) expect(found[k][i]).toBeCloseTo(one(expected[k])[i] ?? 0, 8);
  }
}

describe("a thing with a box on bars", () => {
  it("is a line load as long as its box, by the lever from bar to bar", () => {
    const parts = resting(carrying({ centre: [400, 100, 700], box: [600, 300, 200] }), "chest");
    for (const [bar, share] of [
      ["front", 0.8],
      ["back", 0.2],
    ] as const) {
      const own = parts.filter((part) => part.bar === bar);
      // Stations run from the drawn end, 20 mm before the axis of the posts at x = 0.
      expect(Math.min(...own.map((part) => part.from))).toBeCloseTo(0.12, 9);
      expect(Math.max(...own.map((part) => part.to))).toBeCloseTo(0.72, 9);
      for (const { from, to, force } of own)
        if (to > from) expect(force[2] / (to - from)).toBeCloseTo((-share * W) / 0.6, 6);
    }
    for (const { moment } of parts) expect(Math.hypot(...moment)).toBeLessThan(1e-9);
  });

  it("sags no less than 5qL⁴/384EI + qL²/8GA (Gere) where its box is as long as the span", () => {
    const frame = frameOf(carrying({ box: [1000, 600, 200] }));
    const found = factOf(response, frame);
    if (found.kind !== "solved") throw new Error(found.kind);
    const views = found.views.filter(({ combination, bound }) => combination.kind === "service" && bound === "typical");
    const span = one(factOf(spans, frame).get("front")?.[0]);
    const sag = Math.max(...views.map((view) => factOf(sags, frame).of(view, "front", span) ?? 0));
    const { section, E, G, weight } = barData("40x40-8");
    const q = W / 2 + weight;
    const expected = (5 * q) / (384 * E * section.Iz) + q / (8 * G * section.Avy);
    expect(Math.abs(sag / expected - 1)).toBeLessThan(0.01);
  });

  it("rests on the two ends of it where it is rigid", () => {
    const parts = resting(carrying({ box: [600, 600, 200], rigid: true }), "chest");
    expect(parts).toHaveLength(4);
    for (const { from, to, force } of parts) {
      expect(to).toBe(from);
      expect(Math.abs(from - 0.52)).toBeCloseTo(0.3, 9);
      expect(force[2]).toBeCloseTo(-W / 4, 9);
    }
  });

  it.each([
    ["in the middle", { box: [600, 300, 200] }],
    ["to one side", { centre: [200, 430, 900], box: [300, 100, 200] }],
    ["past the end of the bars", { centre: [900, 100, 700], box: [600, 100, 200] }],
    ["clear of the bars", { centre: [1500, -200, 700], box: [600, 100, 200] }],
    ["on one bar, out to its side", { centre: [300, -80, 700], box: [300, 100, 200], on: ["front"] }],
    ["on bars and a post", { box: [600, 300, 200], on: ["front", "cross-1", "leg-3"] }],
    ["on bars, rigid", { centre: [300, 80, 700], box: [300, 100, 200], rigid: true }],
    ["a point", { centre: [300, 80, 700] }],
  ] as const)("keeps the force and the moment of its weight and of a push: %s", (_, put) =>
    balanced(carrying(JSON.parse(JSON.stringify(put)) as Partial<Put>)),
  );
});

describe("a thing on a laid sheet", () => {
  const RING = ["front", "back", "cross-1", "cross-2"];
  const sharesOf = (put: Partial<Put>, top: readonly string[]): ReadonlyMap<string, number> => {
    const by = new Map<string, number>();
    for (const { bar, force } of resting(carrying({ on: ["top"], ...put }, top), "chest"))
      by.set(bar, (by.get(bar) ?? 0) - force[2] / W);
    return by;
  };

  it.each([undefined, [200, 160, 100]] as const)("goes to two bars by the lever, box %j", (box) => {
    const by = sharesOf({ centre: [600, 100, 700], ...(box ? { box: [...box] } : {}) }, ["front", "back"]);
    expect(by.get("front")).toBeCloseTo(0.8, 9);
    expect(by.get("back")).toBeCloseTo(0.2, 9);
  });

  it("goes to the bars that have it between them, and to no other", () => {
    const file = carrying({ on: ["top"], centre: [200, 150, 700] }, ["cross-1", "inner", "cross-2"]);
    const cross = one(file.bars.find(({ id }) => id === "cross-1"));
    file.bars.push({ ...cross, id: "inner", from: [400, 0, 600], to: [400, 500, 600] });
    one(file.joints?.[1]).bars.push("inner");
    const by = new Map<string, number>();
    for (const { bar, force } of resting(file, "chest")) by.set(bar, (by.get(bar) ?? 0) - force[2] / W);
    expect([...by.keys()].sort()).toEqual(["cross-1", "inner"]);
    for (const share of by.values()) expect(share).toBeCloseTo(0.5, 9);
  });

  it("in the middle of four bars goes over the short way as the cube of the long: PL³/48EI (Gere)", () => {
    const by = sharesOf({}, RING);
    for (const bar of ["front", "back"]) expect(by.get(bar)).toBeCloseTo(8 / 9 / 2, 9);
    for (const bar of ["cross-1", "cross-2"]) expect(by.get(bar)).toBeCloseTo(1 / 9 / 2, 9);
  });

  it.each([
    [500, 5, "front"],
    [300, 495, "back"],
    [5, 250, "cross-1"],
    [995, 350, "cross-2"],
  ] as const)("over a bar loads that one alone, within a twentieth: at %d, %d", (x, y, bar) => {
    const by = sharesOf({ centre: [x, y, 700], box: [40, 40, 100] }, RING);
    expect(Math.abs((by.get(bar) ?? 0) - 1)).toBeLessThan(0.05);
    for (const [other, share] of by) if (other !== bar) expect(Math.abs(share)).toBeLessThan(0.05);
  });

  it.each([
    ["in the middle", { box: [600, 300, 200] }, RING],
    ["in a corner, wider than the sheet", { centre: [50, 60, 700], box: [400, 300, 200] }, RING],
    ["out over the front", { centre: [500, -90, 700], box: [200, 60, 200] }, RING],
    ["past the ends of two bars", { centre: [1150, 100, 700], box: [200, 60, 200] }, ["front", "back"]],
    ["past all four", { centre: [1150, -100, 700] }, RING],
    ["rigid", { centre: [300, 100, 700], box: [300, 200, 200], rigid: true }, RING],
    ["a point", { centre: [300, 80, 700] }, RING],
  ] as const)("keeps the force and the moment of its weight and of a push: %s", (_, put, top) =>
    balanced(carrying({ on: ["top"], ...(JSON.parse(JSON.stringify(put)) as Partial<Put>) }, top)),
  );
});

describe("a force on a panel", () => {
  const F = 400;
  const RING = ["front", "back", "cross-1", "cross-2"];
  const pushing = (direction: "-z" | "+x", top: readonly string[]): readonly Resting[] => {
    const file = carrying({ on: ["top"] }, top);
    file.loads = [{ case: "push", on: "top", force: F, direction }];
    return resting(file, "push");
  };

  it("presses a hand's breadth in its middle and goes over the short way as the cube of the long: PL³/48EI (Gere)", () => {
    const parts = pushing("-z", RING);
    for (const [bar, share] of [
      ["front", 8 / 9 / 2],
      ["cross-1", 1 / 9 / 2],
    ] as const) {
      const own = parts.filter((part) => part.bar === bar);
      // The strips of a patch 0.1 of 0.5 m wide are not all alike in what they give.
      expect(own.reduce((sum, { force }) => sum - force[2] / F, 0) / share).toBeCloseTo(1, 1);
      expect(Math.max(...own.map(({ to }) => to)) - Math.min(...own.map(({ from }) => from))).toBeCloseTo(0.1, 6);
    }
    const [force, moment] = sumsOf(parts);
    for (const [i, value] of [0, 0, -F].entries()) expect(force[i]).toBeCloseTo(value, 8);
    // In the middle of 1000 by 500 mm.
    for (const [i, value] of [-0.25 * F, 0.5 * F, 0].entries()) expect(moment[i]).toBeCloseTo(value, 8);
  });

  it("along its plane goes to the bars by what they hold of it", () => {
    const [force] = sumsOf(pushing("+x", ["front", "back"]));
    for (const [i, value] of [F, 0, 0].entries()) expect(force[i]).toBeCloseTo(value, 8);
  });

  it("bends two bars under it as a load in the middle, PL³/48EI, and not as one spread out, 5/8 of that (Gere)", () => {
    const moments = pushing("-z", ["front", "back"]).filter(({ bar }) => bar === "front");
    // What each stretch bends the middle of a beam from end to end of the bar, x/2 of it (Gere), the breadth of the patch taken off the whole.
    const L = 1.04;
    const middle = moments.reduce((sum, { from, to, force }) => {
      const at = (from + to) / 2;
      return sum - (force[2] * Math.min(at, L - at)) / 2;
    }, 0);
    expect(middle / ((F / 2) * (L / 4 - 0.1 / 8))).toBeCloseTo(1, 2);
  });
});
