import { describe, expect, test } from "vitest";
import { sag } from "../../src/mechanics/member/sag.ts";
import { extrema, linearCombination } from "../../src/mechanics/piecewise.ts";
import { memberDeflections, memberForces } from "../../src/mechanics/results.ts";
import { beam, EI, L, MEMBER, near, on, PINNED, uniform } from "./one-beam.ts";

describe("sag", () => {
  const w = 520;
  const s = beam(
    PINNED,
    PINNED,
    on(uniform(w), {
      kind: "line",
      member: 0,
      start: 0,
      end: L,
      force: [
        [0, 0, 300],
        [0, 0, 300],
      ],
    }),
  );
  const d = memberDeflections(s, 0, 0);
  const y = (5 * w * L ** 4) / (384 * EI);
  const z = (5 * 300 * L ** 4) / (384 * MEMBER.EIy);

  test("between the ends: the distance from the chord, located at midspan", () => {
    const found = sag(d, 0, L);
    near(found.value, Math.hypot(y, z));
    near(found.at, L / 2, 1e-7);
    near(found.y, -y);
  });

  test("along a direction it is signed", () => {
    near(sag(d, 0, L, [1, 0]).value, -y);
    near(sag(d, 0, L, [0, 1]).value, z);
  });

  test("between two stations inside it is measured from the chord there", () => {
    // Deflection is a quartic; over the middle half its sag below the chord is v(L/2) − v(L/4).
    const v = (x: number): number => (w * x * (L ** 3 - 2 * L * x ** 2 + x ** 3)) / (24 * EI);
    near(sag(d, L / 4, (3 * L) / 4, [1, 0]).value, -(v(L / 2) - v(L / 4)), 1e-10);
  });

  test("a rigid motion of the whole member is no sag", () => {
    const moved = beam(PINNED, PINNED, { settlements: [{ node: 1, component: 1, value: -0.01 }] });
    expect(sag(memberDeflections(moved, 0, 0), 0, L).value).toBeLessThan(1e-15);
  });

  test("stress at a point of the section is a combination of diagrams with its own extremum", () => {
    const { N, My, Mz } = memberForces(s, 0, 0);
    const stress = linearCombination([
      [1 / 1e-3, N],
      [0.02 / 1.6e-7, My],
      [-0.02 / 1.6e-7, Mz],
    ]);
    const worst = extrema(stress).min;
    near(worst.value, (-0.02 / 1.6e-7) * (((w - 300) * L * L) / 8), 1e-10); // the two bend this corner opposite ways
    near(worst.at, L / 2, 1e-9);
  });
});
