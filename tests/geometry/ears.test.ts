import { expect, it } from "vitest";
import { convexPieces } from "../../src/geometry/ears.ts";
import { type Ring, signedArea } from "../../src/geometry/polygon.ts";
import { platePrism, prismBounds, prismVolume } from "../../src/geometry/prism.ts";

const ell: Ring = [
  [-19, -19],
  [99, -19],
  [99, 19],
  [19, 19],
  [19, 99],
  [-19, 99],
];
const tee: Ring = [
  [-19, -59],
  [19, -59],
  [19, -19],
  [99, -19],
  [99, 19],
  [19, 19],
  [19, 59],
  [-19, 59],
];

it("cuts an L and a T into pieces that add up to their area, each turning left", () => {
  for (const [ring, area] of [
    [ell, 118 * 38 + 38 * 80],
    [tee, 38 * 118 + 80 * 38],
    [[...ell].reverse(), 118 * 38 + 38 * 80],
  ] as const) {
    const pieces = convexPieces(ring);
    expect(pieces.reduce((sum, piece) => sum + signedArea(piece), 0)).toBeCloseTo(area, 9);
    for (const piece of pieces) expect(signedArea(piece)).toBeGreaterThan(0);
  }
});

it("leaves a convex outline whole, turned to run left", () => {
  const square: Ring = [
    [0, 0],
    [0, 1],
    [1, 1],
    [1, 0],
  ];
  expect(convexPieces(square)).toEqual([[...square].reverse()]);
});

it("makes a plate of a loop: area times thickness, on the side the normal points to", () => {
  const plate = platePrism(
    [
      [0, 0, 5],
      [4, 0, 5],
      [0, 3, 5],
    ],
    [0, 0, 1],
    2,
  );
  expect(prismVolume(plate)).toBeCloseTo(6 * 2, 12);
  expect(prismBounds(plate)).toEqual({ min: [0, 0, 5], max: [4, 3, 7] });
  expect(plate.vertices).toHaveLength(6);
});
