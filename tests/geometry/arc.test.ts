import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Arc,
  arcSize,
  arcsOverlap,
  FULL_TURN,
  gapsBetween,
  mergeArcs,
  WHOLE,
  wrap,
} from "../../src/geometry/arc.ts";

const arcs: fc.Arbitrary<readonly Arc[]> = fc.array(
  fc
    .tuple(fc.integer({ min: 0, max: 359 }), fc.integer({ min: 1, max: 360 }))
    .map(([from, size]) => ({ from: (from * FULL_TURN) / 360, to: ((from + size) * FULL_TURN) / 360 })),
  { maxLength: 6 },
);
const covers = (list: readonly Arc[], angle: number): boolean =>
  list.some((arc) => arcsOverlap(arc, { from: angle, to: angle + 1e-6 }));

describe("arcs", () => {
  it("brings angles into one turn", () => {
    expect(wrap(-Math.PI / 2)).toBeCloseTo(1.5 * Math.PI, 14);
    expect(wrap(FULL_TURN)).toBe(0);
    expect(wrap(-1e-20)).toBe(0);
  });

  it("joins by hand: 0…2 and 1…3 are 0…3, and 6…7 (through 2π) with 0.5…1 is 6…2π+1", () => {
    expect(
      mergeArcs([
        { from: 1, to: 3 },
        { from: 0, to: 2 },
      ]),
    ).toEqual([{ from: 0, to: 3 }]);
    expect(
      mergeArcs([
        { from: 0.5, to: 1 },
        { from: 6, to: 7 },
      ]),
    ).toEqual([{ from: 6, to: FULL_TURN + 1 }]);
    expect(
      mergeArcs([
        { from: 0, to: 4 },
        { from: 3, to: 7 },
      ]),
    ).toEqual([WHOLE]);
    expect(mergeArcs([])).toEqual([]);
  });

  it("closes slits that are rounding only, also at 2π", () => {
    expect(
      mergeArcs([
        { from: 1, to: 2 },
        { from: 2 + 1e-13, to: 3 },
      ]),
    ).toEqual([{ from: 1, to: 3 }]);
    expect(
      mergeArcs([
        { from: 0, to: 1 },
        { from: 6, to: FULL_TURN - 1e-13 },
      ]),
    ).toEqual([{ from: 6, to: FULL_TURN + 1 }]);
    expect(
      mergeArcs([
        { from: 1, to: 2 },
        { from: 2 + 1e-9, to: 3 },
      ]).length,
    ).toBe(2);
  });

  it("leaves what is not covered: beside 1…2 the turn is free from 2 round to 1", () => {
    expect(gapsBetween([{ from: 1, to: 2 }])).toEqual([{ from: 2, to: 1 + FULL_TURN }]);
    // 6…7 ends at 7 − 2π = 0.717: that gap comes first.
    expect(
      gapsBetween([
        { from: 1, to: 2 },
        { from: 6, to: 7 },
      ]).map((arc) => arc.to),
    ).toEqual([1, 6]);
    expect(gapsBetween([])).toEqual([WHOLE]);
    expect(gapsBetween([WHOLE])).toEqual([]);
  });

  it("sees overlap through 2π, and none where arcs only meet", () => {
    expect(arcsOverlap({ from: 6, to: 7 }, { from: 0.5, to: 1 })).toBe(true);
    expect(arcsOverlap({ from: 1, to: 2 }, { from: 2, to: 3 })).toBe(false);
  });

  it("covers every half degree once: by an arc or by a gap, and the sizes make a turn", () => {
    fc.assert(
      fc.property(arcs, (list) => {
        const [merged, gaps] = [mergeArcs(list), gapsBetween(list)];
        const total = [...merged, ...gaps].reduce((sum, arc) => sum + arcSize(arc), 0);
        expect(total).toBeCloseTo(FULL_TURN, 9);
        for (let degree = 0.5; degree < 360; degree += 1) {
          const angle = (degree * FULL_TURN) / 360;
          expect(covers(merged, angle)).toBe(covers(list, angle));
          expect(covers(gaps, angle)).toBe(!covers(list, angle));
        }
      }),
    );
  });
});
