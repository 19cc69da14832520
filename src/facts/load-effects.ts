import { prepareFrame } from "../mechanics/frame.ts";
import type { FrameModel, Spring } from "../mechanics/model.ts";
import { valueAt } from "../mechanics/piecewise.ts";
import { memberForces, solvedState } from "../mechanics/results.ts";
import { type Solution, solveFrame } from "../mechanics/statics/solve.ts";
import type { Acting } from "./acting.ts";
import type { Effect } from "./adverse.ts";
import type { Body } from "./bodies.ts";
import { sectionOf } from "./sections.ts";
import { HELD } from "./solver-model.ts";
import type { Structure } from "./structure.ts";

/** What of its kind is less than this share of the largest in the frame is measured by that share. */
const SLIGHT = 0.1;

/** Sideways a foot gives so much, N/m, soft beside any frame: none lends thrust, and what pushes sideways all take alike, whichever comes first. */
const SLIDING = 1e3;

/** Feet as props that press and pull alike: what superposition is exact for. */
function propped(model: FrameModel): FrameModel {
  const axes = { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] } as const;
  const props = (model.contacts ?? []).map(({ from, to, at }): Spring => {
    return { from, to, axes, stiffness: [SLIDING, SLIDING, HELD, 0, 0, 0], ...(at ? { at } : {}) };
  });
  return { ...model, springs: [...(model.springs ?? []), ...props], contacts: [] };
}

/** Effects of one thing, not yet measured: one array for each, an entry for each acting case. */
interface Thing {
  readonly by: readonly Float64Array[];
}

/** The size of an effect where everything acts that makes it larger. */
const sizeOf = (by: Float64Array): number => by.reduce((sum, value) => sum + Math.abs(value), 0);

/** Measures effects of things of one kind, each by the largest of its own thing. */
function measured(kind: readonly (readonly Thing[])[]): readonly Effect[] {
  const sizes = kind.map((things) =>
    things.reduce((m, { by }) => by.reduce((n, one) => Math.max(n, sizeOf(one)), m), 0),
  );
  const least = SLIGHT * sizes.reduce((a, b) => Math.max(a, b), 0);
  return kind.flatMap((things, i) => {
    const scale = Math.max(sizes[i] ?? 0, least);
    return scale > 0 ? things.flatMap(({ by }) => by.map((one): Effect => ({ by: one, scale }))) : [];
  });
}

/** Stresses [Pa] of a bar at the corners of its envelope and of shear, wherever its forces jump, and half way. */
function stressesOf(body: Body, known: Structure, solution: Solution, count: number): readonly Thing[] {
  const { profile, ref } = body.bar;
  const section = sectionOf(profile);
  const [high, wide] = [profile.height / 2, profile.width / 2];
  const corners = [1, -1].flatMap((y) => [1, -1].map((z) => [y * high, z * wide] as const));
  return known.piecesOf(ref.id).flatMap((index) => {
    const forces = Array.from({ length: count }, (_, act) => memberForces(solution, act, index));
    const breaks = [...new Set(forces.flatMap(({ My, Mz }) => [...My.breaks, ...Mz.breaks]))].sort((a, b) => a - b);
    const [first = 0, last = 0] = [breaks[0], breaks.at(-1)];
    const stations = breaks.length === 2 ? [first, (first + last) / 2, last] : breaks;
    return stations.map((at): Thing => {
      const side = at === first ? "after" : "before";
      const by = Array.from({ length: corners.length + 3 }, () => new Float64Array(count));
      for (const [act, { N, My, Mz, T, Vy, Vz }] of forces.entries()) {
        const axial = valueAt(N, at, side) / section.A;
        const [my, mz] = [valueAt(My, at, side) / section.Iy, valueAt(Mz, at, side) / section.Iz];
        for (const [i, [y, z]] of corners.entries())
          (by[i] as Float64Array)[act] = axial + my * (z - section.centroid.z) - mz * (y - section.centroid.y);
        const shear = [T, Vy, Vz];
        const over = [section.Wt, section.Avy, section.Avz];
        for (const [i, force] of shear.entries())
          (by[corners.length + i] as Float64Array)[act] = (Math.sqrt(3) * valueAt(force, at, side)) / (over[i] ?? 1);
      }
      return { by };
    });
  });
}

/**
 * What each acting case does to bars, joints and feet by itself, in a frame whose feet press and pull: influence, which adds up.
 * Undefined of a frame that moves freely.
 */
export function loadEffects(
  { cases }: Acting,
  known: Structure,
  bodies: ReadonlyMap<string, Body>,
  model: FrameModel,
): readonly Effect[] | undefined {
  const prepared = prepareFrame(propped(model));
  if (prepared.mechanisms.length > 0) return undefined;
  const alone = cases.map((_, i) => cases.map((_, k) => (i === k ? 1 : 0)));
  const solution = solveFrame(
    prepared,
    cases.map(({ loads }) => loads),
    alone,
  );
  const states = cases.map((_, act) => solvedState(solution, act));
  const springs = (spring: number, of: readonly number[]): Thing => ({
    by: of.map((i) => Float64Array.from(states, (state) => state.springs[6 * spring + i] ?? 0)),
  });
  const joints = (of: readonly number[]) => known.links.map((_, i) => [springs(i, of)]);
  const bars = [...bodies.values()].map((body) => stressesOf(body, known, solution, cases.length));
  const props = model.contacts?.length ?? 0;
  const first = model.springs?.length ?? 0;
  const feet = Array.from({ length: props }, (_, i) => [springs(first + i, [2])]);
  return [measured(bars), measured(joints([0, 1, 2])), measured(joints([3, 4, 5])), measured(feet)].flat();
}
