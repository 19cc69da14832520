import { describe, expect, it } from "vitest";
import type { Combined } from "../../src/facts/combinations.ts";
import { giving, type Racked } from "../../src/facts/giving-sheets.ts";
import type { SheetBrace } from "../../src/facts/sheet-braces.ts";
import type { View } from "../../src/facts/view.ts";

/** A sheet that bears a force of 1 and no more. */
const brace = { couplings: [{}], use: ([force = 0]) => Math.abs(force) } as unknown as SheetBrace;

type Lean = NonNullable<Combined["side"]>["sign"];

const solved = new Map<number, object>();
/** One solution for all views of a frame. */
function wholeOf(factor: number): object {
  const whole = solved.get(factor) ?? {
    falling: (indices: readonly number[], asked: number) => (factor > asked ? [] : indices),
    swayFactor: () => factor,
  };
  solved.set(factor, whole);
  return whole;
}

/** A view of a frame with this critical factor, also in the way it leans. */
function view(kind: Combined["kind"], factor: number, lean?: Lean): View {
  const name = lean ? `weight along ${lean > 0 ? "+" : "-"}x` : "weight";
  const stands = (asked: number): boolean => factor > asked;
  const whole = wholeOf(factor);
  return {
    combination: { name, kind, ...(lean ? { side: { axis: 0, sign: lean } } : {}) },
    stands,
    solvedAs: { whole, index: 0 },
  } as unknown as View;
}

/** Leaning both ways with this force in the sheet, beside what weight does to it; or pushed one way alone. */
function racked(kind: Combined["kind"], factor: number, force: number, both: boolean): readonly Racked[] {
  if (!both) return [{ view: view(kind, factor), couplings: Float64Array.of(force) }];
  const weight = 5;
  return ([1, -1] as const).map((lean) => ({
    view: view(kind, factor, lean),
    couplings: Float64Array.of(weight + lean * force),
  }));
}

const gives = (kind: Combined["kind"], factor: number, force: number, reserve = 1): readonly boolean[] =>
  [true, false].map((both) => giving([brace], racked(kind, factor, force, both), reserve).has(brace));

describe("sheets that give to what pushes the frame sideways (EN 1993-1-1:2005, 5.2.2: 1/(1 − 1/α_cr) from 10 down)", () => {
  it.each([
    // 0.7 / (1 − 1/α) is 1 at α = 3.333; 0.95 would need 20, and from 10 on nothing grows.
    { force: 1.01, factor: 100, falls: true },
    { force: 0.99, factor: 100, falls: false },
    { force: 0.7, factor: 3.3, falls: true },
    { force: 0.7, factor: 3.4, falls: false },
    { force: 0.95, factor: 9.9, falls: true },
    { force: 0.95, factor: 10.1, falls: false },
    { force: 0.1, factor: 1.1, falls: true },
    { force: 0.1, factor: 1.2, falls: false },
  ])("bearing $force of what it can, in a frame of α_cr $factor: $falls", ({ force, factor, falls }) => {
    expect(gives("strength", factor, force)).toEqual([falls, falls]);
  });

  it("by allowable stress is judged under loads 1.5 times as large, α_cr with them", () => {
    expect(gives("strength", 1.5 * 3.3, 0.7 / 1.5, 1.5)).toEqual([true, true]);
    expect(gives("strength", 1.5 * 3.4, 0.7 / 1.5, 1.5)).toEqual([false, false]);
  });

  it("in use nothing is grown", () => {
    expect(gives("sway", 1.5, 0.9)).toEqual([false, false]);
    expect(gives("sway", 1.5, 1.1)).toEqual([true, true]);
  });
});
