import { describe, expect, it } from "vitest";
import { add, cross, dot, subtract, type Vec3 } from "../../src/geometry/vector.ts";
import { freeMotions, type HingedLink, type RigidLink, type TurnLine } from "../../src/mechanics/free-motions.ts";

const X: Vec3 = [1, 0, 0];
const Y: Vec3 = [0, 1, 0];
const Z: Vec3 = [0, 0, 1];
const line = (point: Vec3, axis: Vec3): TurnLine => ({ point, axis });
const hinge = (a: number, b: number, point: Vec3, axis: Vec3): HingedLink => ({ a, b, about: [line(point, axis)] });

/** A square patch of the given half width that bears along its normal. */
function patch(middle: Vec3, u: Vec3, v: Vec3, half: number): RigidLink {
  const points = [-1, 1].flatMap((i) =>
    [-1, 1].map(
      (j): Vec3 => [
        middle[0] + half * (i * u[0] + j * v[0]),
        middle[1] + half * (i * u[1] + j * v[1]),
        middle[2] + half * (i * u[2] + j * v[2]),
      ],
    ),
  );
  return { a: 0, b: 1, points, normal: cross(u, v) };
}

/** Distance of a point from a line. */
function off(point: Vec3, { point: on, axis }: TurnLine): number {
  const r = cross(subtract(point, on), axis);
  return Math.sqrt(dot(r, r));
}
const count = (bodies: number, links: readonly RigidLink[], size = 1): number =>
  freeMotions(bodies, 0, links, size).length;

describe("free motions of rigid bodies (counted by hand)", () => {
  it("a pin-jointed four-bar has one; its coupler turns about the point where crank and rocker lines cross", () => {
    // Crank on x = 0, rocker from [3, 0] to [2, 2]: y = 6 − 2x; they cross at [0, 6]. (Aronhold–Kennedy theorem.)
    const links = [
      hinge(0, 1, [0, 0, 0], Z),
      hinge(1, 2, [0, 1, 0], Z),
      hinge(2, 3, [2, 2, 0], Z),
      hinge(3, 0, [3, 0, 0], Z),
    ];
    const [motions = [], ...others] = freeMotions(4, 0, links, 3);
    expect(others).toEqual([]);
    const poles: readonly (readonly [number, Vec3])[] = [
      [1, [0, 0, 0]],
      [2, [0, 6, 0]],
      [3, [3, 0, 0]],
    ];
    for (const [body, pole] of poles) {
      const motion = motions.find((one) => one.body === body);
      expect(motion?.kind).toBe("turn");
      expect(off(motion?.point ?? X, line(pole, Z))).toBeLessThan(1e-9);
      expect(Math.abs(dot(motion?.direction ?? X, Z))).toBeCloseTo(1, 9);
    }
    // The pins go with both bodies they join: the coupler's rate moves [0, 1] as the crank's does, and [2, 2] as the rocker's.
    const moved = (body: number, at: Vec3): Vec3 => {
      const { turn, shift } = motions.find((one) => one.body === body)?.rate ?? { turn: X, shift: X };
      return add(shift, cross(turn, at));
    };
    for (const [body, pin] of [
      [1, [0, 1, 0]],
      [3, [2, 2, 0]],
    ] as const) {
      const [own, coupler] = [moved(body, pin), moved(2, pin)];
      expect(Math.hypot(...own)).toBeGreaterThan(0.01);
      own.forEach((c, i) => {
        expect(c).toBeCloseTo(coupler[i] ?? Number.NaN, 9);
      });
    }
  });

  it("a four-bar drawn a kilometre away moves about the same poles there", () => {
    const far: Vec3 = [1000, -2000, 500];
    const at = (x: number, y: number): Vec3 => [far[0] + x, far[1] + y, far[2]];
    const links = [
      hinge(0, 1, at(0, 0), Z),
      hinge(1, 2, at(0, 1), Z),
      hinge(2, 3, at(2, 2), Z),
      hinge(3, 0, at(3, 0), Z),
    ];
    const [motions = [], ...others] = freeMotions(4, 0, links, 3);
    expect(others).toEqual([]);
    const coupler = motions.find((one) => one.body === 2);
    expect(off(coupler?.point ?? X, line(at(0, 6), Z))).toBeLessThan(1e-9);
    expect(count(4, [...links, hinge(0, 2, at(2, 0), X)], 3)).toBe(0);
  });

  it("a parallelogram lets its coupler slide", () => {
    const links = [
      hinge(0, 1, [0, 0, 0], Z),
      hinge(1, 2, [0, 1, 0], Z),
      hinge(2, 3, [2, 1, 0], Z),
      hinge(3, 0, [2, 0, 0], Z),
    ];
    const [motions = []] = freeMotions(4, 0, links, 2);
    const coupler = motions.find((one) => one.body === 2);
    expect(coupler?.kind).toBe("slide");
    expect(Math.abs(dot(coupler?.direction ?? Y, X))).toBeCloseTo(1, 9);
  });

  it("a triangle of three pins has none", () => {
    expect(count(3, [hinge(0, 1, [0, 0, 0], Z), hinge(1, 2, [0, 1, 0], Z), hinge(2, 0, [1, 0, 0], Z)])).toBe(0);
  });

  it.each<[string, Vec3, Vec3, number]>([
    ["in line", [0, 0, 2], Z, 1],
    ["beside each other", [0.01, 0, 2], Z, 0],
    ["square to each other", [0, 0, 2], X, 0],
  ])("a door on two hinges %s", (_, point, axis, expected) => {
    expect(count(2, [hinge(0, 1, [0, 0, 0], Z), hinge(0, 1, point, axis)])).toBe(expected);
  });

  it.each([0.1, 1, 10, 100])("the same frame %f times as large has the same", (s) => {
    const links = [hinge(0, 1, [5 * s, 0, 0], Z), hinge(0, 1, [5 * s, 0, 2 * s], Z)];
    expect(count(2, links, s)).toBe(1);
  });

  it("one line to turn about: one turn, about it", () => {
    const [motions = [], ...others] = freeMotions(2, 0, [hinge(0, 1, [3, 4, 0], Z)], 1);
    expect(others).toEqual([]);
    expect(motions).toHaveLength(1);
    expect(motions[0]?.kind).toBe("turn");
    expect(off(motions[0]?.point ?? X, line([3, 4, 0], Z))).toBeLessThan(1e-9);
  });

  it("three lines through one point are a ball: three turns through it", () => {
    const centre: Vec3 = [0.3, 0.2, 0.1];
    const found = freeMotions(2, 0, [{ a: 0, b: 1, about: [X, Y, Z].map((axis) => line(centre, axis)) }], 1);
    expect(found).toHaveLength(3);
    for (const [motion] of found) {
      expect(motion?.kind).toBe("turn");
      expect(off(centre, line(motion?.point ?? X, motion?.direction ?? X))).toBeLessThan(1e-9);
    }
  });

  it("no line to turn about: one solid", () => {
    expect(count(2, [{ a: 0, b: 1, about: [] }])).toBe(0);
  });

  it("a chain of two hinges has two", () => {
    expect(count(3, [hinge(0, 1, [0, 0, 0], Z), hinge(1, 2, [1, 0, 0], Z)])).toBe(2);
  });
});

describe("flat sides that bear", () => {
  it("a patch leaves two slides and a turn in its plane", () => {
    const found = freeMotions(2, 0, [patch([0, 0, 0], X, Y, 0.02)], 1);
    expect(found).toHaveLength(3);
    for (const [motion] of found) {
      if (motion?.kind === "turn") expect(Math.abs(motion.direction[2])).toBeCloseTo(1, 9);
      else expect(motion?.direction[2]).toBeCloseTo(0, 9);
    }
    expect(found.filter(([motion]) => motion?.kind === "turn").length).toBeGreaterThan(0);
  });

  it("two patches square to each other leave a slide along both", () => {
    const [motions = [], ...others] = freeMotions(
      2,
      0,
      [patch([0, 0, 0], X, Y, 0.02), patch([0, 0, 0], Z, X, 0.02)],
      1,
    );
    expect(others).toEqual([]);
    expect(motions[0]?.kind).toBe("slide");
    expect(Math.abs(motions[0]?.direction[0] ?? 0)).toBeCloseTo(1, 9);
  });

  const rolling = hinge(0, 1, [0, 0, 0], X);
  it.each<[string, RigidLink, number]>([
    ["under the line holds: it closes on one side whichever way the turn goes", patch([0, 0, -0.02], X, Y, 0.02), 0],
    ["across the line does not: its points move within it", patch([0.1, 0, 0], Y, Z, 0.02), 1],
    [
      "no wider than the line does not",
      {
        a: 0,
        b: 1,
        points: [
          [0, 0, -0.02],
          [1, 0, -0.02],
        ],
        normal: Z,
      },
      1,
    ],
  ])("a patch %s", (_, bearing, expected) => {
    expect(count(2, [rolling, bearing])).toBe(expected);
  });
});
