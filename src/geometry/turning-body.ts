import type { Prism } from "./prism.ts";
import { prismPenetration } from "./prism-penetration.ts";
import type { Vec3 } from "./vector.ts";
import { add, cross, distance, dot, length, rotateAbout, scale, subtract } from "./vector.ts";

/** A line to turn about: a point on it [m] and its unit direction, right-handed. */
export interface Pin {
  readonly point: Vec3;
  readonly axis: Vec3;
}

/** A body turned about a pin by an angle [rad]. */
export function turned(prism: Prism, { point, axis }: Pin, angle: number): Prism {
  const way = (v: Vec3): Vec3 => rotateAbout(v, axis, angle);
  const place = (p: Vec3): Vec3 => add(point, way(subtract(p, point)));
  return {
    faces: prism.faces.map(({ normal, vertices }) => ({ normal: way(normal), vertices: vertices.map(place) })),
    vertices: prism.vertices.map(place),
    edges: prism.edges.map(way),
  };
}

interface Ball {
  readonly centre: Vec3;
  readonly radius: number;
}

function ballOf({ vertices }: Prism): Ball {
  const sum = vertices.reduce<Vec3>(add, [0, 0, 0]);
  const centre = scale(sum, 1 / Math.max(1, vertices.length));
  return { centre, radius: Math.max(0, ...vertices.map((vertex) => distance(vertex, centre))) };
}

function stretch({ vertices }: Prism, axis: Vec3): readonly [number, number] {
  const at = vertices.map((vertex) => dot(vertex, axis));
  return [Math.min(...at), Math.max(...at)];
}

/** Balls this far apart [m] stand for their bodies: near enough to step by. */
const FAR = 0.05;
/** The least step, as a share of the depth allowed over the arm: what is missed is less deep than the share more than allowed. */
const LEAST = 0.1;
/** Halvings of the last step: an angle is then exact to 1e-9 of it. */
const HALVINGS = 30;

/**
 * The turn [rad, ≥ 0] after which a body turned about a pin runs deeper than `allowed` [m] into one that stands; 0 when it does so
 * from the start, undefined when it never does on its way through `through` [rad, either sign]. No point of the body moves farther than its
 * arm times the turn, so a gap lasts for gap / arm (conservative advancement: B. Mirtich, "Impulse-based Dynamic Simulation", 1996, 2.3):
 * nothing is stepped over. Takes convex bodies.
 */
export function turnUntilDeep(
  moving: Prism,
  standing: Prism,
  pin: Pin,
  through: number,
  allowed: number,
): number | undefined {
  const [low, high] = stretch(moving, pin.axis);
  const [bottom, top] = stretch(standing, pin.axis);
  // Turning keeps a body in its stretch along the pin.
  if (Math.min(high, top) - Math.max(low, bottom) <= allowed) return undefined;
  const arm = Math.max(0, ...moving.vertices.map((vertex) => length(cross(subtract(vertex, pin.point), pin.axis))));
  const [own, other] = [ballOf(moving), ballOf(standing)];
  const way = Math.sign(through);
  const deep = (turn: number): number => prismPenetration(turned(moving, pin, way * turn), standing).depth;
  const end = Math.abs(through);
  let before = 0;
  for (let turn = 0; ; ) {
    const centre = add(pin.point, rotateAbout(subtract(own.centre, pin.point), pin.axis, way * turn));
    const balls = distance(centre, other.centre) - own.radius - other.radius;
    const depth = balls > FAR ? -balls : deep(turn);
    if (depth > allowed) {
      let [free, met] = [before, turn];
      for (let i = 0; i < HALVINGS && met > free; i++) {
        const middle = (free + met) / 2;
        if (deep(middle) > allowed) met = middle;
        else free = middle;
      }
      return met;
    }
    if (turn >= end || arm === 0) return undefined;
    before = turn;
    turn = Math.min(end, turn + Math.max(allowed - depth, LEAST * allowed) / arm);
  }
}
