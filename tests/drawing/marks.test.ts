import { expect, it } from "vitest";
import { drawnMarks } from "../../src/drawing/marks.ts";
import type { Vec2, Vec3 } from "../../src/geometry/vector.ts";

it("keeps every balloon whole within the picture, also those at its corners and those moved off one another", () => {
  const corners: readonly Vec3[] = [
    [0, 0, 0],
    [100, 0, 0],
    [0, 80, 0],
    [100, 80, 0],
    [100, 79, 0],
  ];
  const place = ([x, y]: Vec3): Vec2 => [x, y];
  const svg = drawnMarks(
    corners.map((at, i) => ({ at, word: `1${i}` })),
    place,
    [100, 80],
  );
  const boxes = [...svg.matchAll(/<rect x="([^"]*)" y="([^"]*)" width="([^"]*)" height="([^"]*)"/g)];
  expect(boxes).toHaveLength(corners.length);
  for (const [, ...numbers] of boxes) {
    const [x = Number.NaN, y = Number.NaN, width = Number.NaN, height = Number.NaN] = numbers.map(Number);
    expect(Math.min(x, y)).toBeGreaterThanOrEqual(0);
    expect(x + width).toBeLessThanOrEqual(100);
    expect(y + height).toBeLessThanOrEqual(80);
  }
});
