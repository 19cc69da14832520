import { describe, expect, it } from "vitest";
import { GRAVITY } from "../../src/facts/acting.ts";
import { factOf } from "../../src/facts/fact.ts";
import { footing } from "../../src/facts/footing.ts";
import { gathered, masses } from "../../src/facts/mass.ts";
import { response, type View } from "../../src/facts/response.ts";
import { stability } from "../../src/facts/stability.ts";
import { extrema } from "../../src/mechanics/piecewise.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { frameFrom, table } from "../rules/table.ts";

/** The table with a block of 40 kg over its middle, on a floor uneven by so much, mm. */
function uneven(by: number, more: Partial<FrameFile> = {}): FrameFile {
  return {
    ...table(),
    masses: [{ id: "block", mass: 40, centre: [0, 0, 900], on: ["top"], fixed: true }],
    floor: { uneven: by },
    ...more,
  };
}

const LEGS = ["leg-1", "leg-2", "leg-3", "leg-4"];
const STRONG = /^1\.35 self-weight.*, (.*) (in a hollow|on a bump) of the floor$/;

function views(file: FrameFile): {
  readonly all: readonly View[];
  readonly weight: number;
  readonly feet: readonly string[];
} {
  const frame = frameFrom(file);
  const found = factOf(response, frame);
  if (found.kind !== "solved") throw new Error(found.kind);
  const known = factOf(masses, frame);
  const carried = [...known.own, ...known.fixed].filter(({ ref }) => ref.kind !== "stand");
  return {
    all: found.views.filter(({ combination }) => combination.gaps),
    weight: gathered(carried).mass * GRAVITY,
    feet: factOf(footing, frame).map(({ ref }) => ref.id),
  };
}

describe("a frame on an uneven floor (statics)", () => {
  it("is taken with each of its four feet in turn over a hollow and on a bump, for three stiffnesses of joints", () => {
    const { all } = views(uneven(3));
    expect(all).toHaveLength(4 * 2 * 3);
    expect(new Set(all.map(({ combination }) => STRONG.exec(combination.name)?.slice(1).join(" "))).size).toBe(8);
    for (const { combination } of all) expect(combination.kind).toBe("strength");
  });

  it("hangs a foot over a hollow deeper than it gives: the two beside it carry half of 1.35 W each, their legs too", () => {
    const { all, weight, feet } = views(uneven(50));
    for (const view of all.filter(({ combination }) => / in a hollow/.test(combination.name))) {
      const odd = STRONG.exec(view.combination.name)?.[1] ?? "";
      const at = feet.indexOf(odd);
      const push = (foot: number): number => view.foot(foot % 4) / (1.35 * weight);
      expect(push(at)).toBe(0);
      expect(push(at + 1)).toBeCloseTo(0.5, 2);
      expect(push(at + 2)).toBeCloseTo(0, 2);
      expect(push(at + 3)).toBeCloseTo(0.5, 2);
      const N = view.forces(`leg-${((at + 1) % 4) + 1}`)?.N;
      if (!N) throw new Error("no axial force");
      expect(-extrema(N).min.value / (1.35 * weight)).toBeCloseTo(0.5, 2);
    }
  });

  it("buckles as a whole as the same frame does that has three feet (statics)", () => {
    // The weight stands a little to the side of the third foot, so that this one bears on the floor beyond doubt.
    const heavy = (by: number, feet: readonly string[]) => {
      const frame = frameFrom({
        ...uneven(by),
        masses: [{ id: "block", mass: 800, centre: [30, 60, 900], on: ["top"], fixed: true }],
        stands: [{ part: "foot-40-M8", bars: feet }] as NonNullable<FrameFile["stands"]>,
      });
      const found = factOf(response, frame);
      if (found.kind !== "solved") throw new Error(found.kind);
      const factors = (all: readonly View[], named: RegExp): readonly number[] =>
        all.flatMap((view) =>
          view.bound === "typical" && named.test(view.combination.name) ? (view.buckling()?.factor ?? 0) : [],
        );
      return { found, factors, least: factOf(stability, frame).governing };
    };
    const odd = heavy(80, LEGS);
    const [hollow = 0, ...more] = odd.factors(odd.found.oddlyHeld, /leg-1.foot in a hollow/);
    expect(more).toEqual([]);
    const three = heavy(0, LEGS.slice(1));
    const [ahead = 0, back = 0] = three.factors(three.found.views, /out of plumb along [+-]x/);
    expect(Math.abs((2 * hollow) / (ahead + back) - 1)).toBeLessThan(0.03);
    expect(odd.least?.view.combination.name).toMatch(/foot (in a hollow|on a bump) of the floor$/);
    expect(odd.least?.mode.factor).toBeLessThanOrEqual(hollow * (1 + 1e-6));
    expect(hollow).toBeLessThan(0.5 * Math.min(...odd.factors(odd.found.views, /out of plumb/)));
  });

  it("stands as on an even floor where its feet are three, or the floor is even", () => {
    const three = uneven(50);
    three.stands = [{ part: "foot-40-M8", bars: ["leg-1", "leg-2", "leg-3"] }];
    expect(() => views(three)).not.toThrow();
    expect(views(three).all).toEqual([]);
    expect(views(uneven(0)).all).toEqual([]);
  });
});
