import { expect, it } from "vitest";
import { combinations } from "../../src/facts/combinations.ts";
import { factOf } from "../../src/facts/fact.ts";
import { stability } from "../../src/facts/stability.ts";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import { stockInForce } from "../../src/inspection/stock-in-force.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { readFrame } from "../../src/model/read-frame.ts";
import { rule } from "../../src/rules/bar.buckles.ts";
import { barData, barOf, gantry, testedBrackets } from "./gantry.ts";
import { type Factors, OWN, PARTIAL } from "./hung-rails.ts";

const { section, E, fo, weight } = barData("20x20-5");
const SPAN = 0.6;
const DEPTH = 0.4;
/** Axis of the beams and top of the posts over the floor, and top of the foot, m. */
const HEIGHT = 0.9;
const TOP = HEIGHT - 0.01;
const FOOT = 0.03;

/** Corners that hardly give, so that the frame can be pressed at all. */
const STIFF = [testedBrackets(20, 1e6)];

function loadPosts(file: FrameFile, P: number): void {
  for (const leg of ["leg-1", "leg-2", "leg-3", "leg-4"])
    barOf(file, leg).from = [...barOf(file, leg).from.slice(0, 2), 30] as never;
  // Leaning lifts the far posts of so light a table.
  for (const stand of file.stands ?? []) stand.hold = "anchored";
  // Forces over the posts: two for each beam.
  file.loads = [10, 610].map((at) => ({ case: "goods", on: ["front", "back"], force: P, at }));
}

interface Way {
  readonly method: NonNullable<FrameFile["method"]>;
  readonly factors: Factors;
  /** What the proof strength is divided by. */
  readonly over: number;
}
const USUAL: Way = { method: "partial-factors", factors: PARTIAL, over: 1.1 };
/** Bow and sway grow as if the loads were 1.5 times as large, in the manner of AISC 360-16, C2.1(4) (from memory). */
const ALLOWABLE: Way = { method: "allowable-stress", factors: OWN, over: 1.1 * 1.45 };

/**
 * A post of a table on pinned feet, someone leaning on it: N = 1.35 G + 1.05 P + what the lean of 1.5 × 250 N adds over the
 * shorter side; M = a quarter of the lean at the joint, grown by 1/(1 − 1/α_cr) of the frame (proved with frame.buckles), which
 * is more here than 1/(1 − N/Ncr) of the post; χ after EN 1999-1-1, 6.3.1.2, class A: α = 0.2, λ0 = 0.1.
 */
function use(P: number, { method, factors: [G, Q], over } = USUAL): number {
  const lean = Q * 250;
  const bars = 4 * (TOP - FOOT) + 2 * (SPAN + 0.03) + 2 * (DEPTH - 0.02);
  const N = (G * weight * bars) / 4 + 0.7 * Q * P + (lean * TOP) / (2 * DEPTH);
  const length = TOP - FOOT;
  const critical = (Math.PI ** 2 * E * section.Iy) / length ** 2;
  const slenderness = Math.sqrt((section.A * fo) / critical);
  const phi = 0.5 * (1 + 0.2 * (slenderness - 0.1) + slenderness ** 2);
  const chi = 1 / (phi + Math.sqrt(phi ** 2 - slenderness ** 2));
  const M = (lean / 4) * TOP * Math.max(1 / (1 - ((1.5 / Q) * N) / critical), sway(P, method));
  return N / ((chi * section.A * fo) / over) + M / ((section.elastic.yPlus * fo) / over);
}

/** Growth of sway of the table with P over each post, someone leaning on it. */
function sway(P: number, method: Way["method"]): number {
  const file = { ...base(), method };
  loadPosts(file, P);
  const bytes = new TextEncoder().encode(JSON.stringify(file));
  const { frame } = readFrame({ file: "table", bytes, stock: stockInForce(STIFF).stock });
  if (!frame) throw new Error("the table cannot be read");
  const leans = factOf(combinations, frame).all.find((c) => c.name.includes("leaning"));
  if (!leans) throw new Error("nobody leans");
  return factOf(stability, frame).amplification(leans);
}

/** The force over each post for a use, by halving. */
function forceFor(wanted: number, way = USUAL): number {
  let [low, high] = [0, 500];
  for (let i = 0; i < 14; i += 1) {
    const middle = (low + high) / 2;
    if (use(middle, way) < wanted) low = middle;
    else high = middle;
  }
  return low;
}

const base = (): FrameFile =>
  gantry(600, { depth: 400, height: 900, past: 10, profile: "20x20-5", pitch: 20, foot: "foot-20-M5" });

const BEYOND = forceFor(1.03);
const BEYOND_ALLOWABLE = forceFor(1.03, ALLOWABLE);

it("bar.buckles: N/χAfo + amplified M/Wfo of a post someone leans on", () => {
  const every = ["leg-1", "leg-2", "leg-3", "leg-4"];
  const found = (measured: number) => every.map((at) => ({ at, key: "buckles", measured, within: 0.01 }));
  const wrong = proveRule(
    rule,
    base(),
    [
      { title: "just beyond", edit: (file) => loadPosts(file, BEYOND), finds: found(1.03) },
      {
        title: "just within, where the house takes no partial factor",
        edit: (file) => {
          loadPosts(file, BEYOND);
          file.criteria = { "member-factor": 1 };
        },
        finds: [],
      },
      {
        title: "by allowable stress, safety factor 1.45",
        edit: (file) => {
          loadPosts(file, BEYOND_ALLOWABLE);
          file.method = "allowable-stress";
          file.criteria = { "safety-factor": 1.45 };
        },
        finds: found(1.03),
      },
      {
        title: "a greater factor on one post",
        edit: (file) => {
          loadPosts(file, BEYOND);
          file.criteria = { "member-factor": 1 };
          barOf(file, "leg-2").criteria = { "member-factor": 1.25 };
        },
        finds: [{ at: "leg-2", key: "buckles", measured: (1.03 * 1.25) / 1.1, within: 0.01 }],
      },
    ],
    STIFF,
  );
  expect(wrong).toEqual([]);
});
