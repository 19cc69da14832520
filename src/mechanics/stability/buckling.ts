import { solvedState } from "../results.ts";
import type { Solution } from "../statics/solve.ts";
import type { ContactStatus } from "../statics/state.ts";
import { type Axial, axialOf, hardestPressed } from "./axial.ts";
import { alike, geometricBlocks, type Mesh, meshOf, shapeAlong } from "./mesh.ts";
import type { Mode, PencilModes } from "./pencil.ts";
import { lowestModes, noneUpTo, roughLambdas } from "./pencil.ts";
import { swayFactor } from "./sway-factor.ts";

/**
 * A cubic piece of length h overestimates the critical factor by (βh)⁴/720, β² = N/EI (four pieces in a pinned column:
 * 0.05 %). This βh leaves 2e-5.
 */
const PHASE_OF_PIECE = 0.35;
const MOST_PIECES = 32;
/** Pieces of compressed members in the first estimate. */
const FIRST_PIECES = 2;
/** Meshes that are kept: neighbouring combinations mostly ask for the same ones. */
const KEPT = 3;

export interface BucklingShape extends Mode {
  /** Displacements of member m at the ends of the equal pieces it was cut into, six numbers each, its start first. */
  alongMember(m: number): Float64Array;
}

export type BucklingShapes =
  | { readonly kind: "modes"; readonly modes: readonly BucklingShape[] }
  | Extract<PencilModes, { kind: "mechanism" }>;

/** Linear buckling of the solved combinations of one frame; what they share is computed once. */
export interface Buckling {
  /**
   * The lowest factors by which the axial forces of a solved combination may grow before the frame buckles (λ of a mode;
   * α_cr is the first), with modes at the nodes of the frame. Linear buckling about the undeformed shape: axial forces
   * only; bending moments (lateral-torsional buckling) and warping are not in it. Members are cut finely enough for 1e-4.
   * Contacts stay as the combination left them, those that slip held: swaying back they stick. An empty list when nothing is compressed,
   * or so little beside what is pulled that no factor lies below `upTo`: such factors are not looked for.
   */
  modes(combination: number, count: number, upTo?: number): BucklingShapes;
  /** Whether the axial forces may grow by this factor without buckling: one factorisation, no modes. False for a mechanism. */
  stands(combination: number, factor: number): boolean;
  /**
   * Those of several combinations that buckle before their axial forces have grown by this factor. B grows with every axial
   * force, so where the frame stands pressed everywhere as hard as in the worst of them, it stands in each: one factorisation
   * clears all whose contacts are alike, and only halves that it does not clear are looked into.
   */
  falling(combinations: readonly number[], factor: number): readonly number[];
  /** The factor of one combination in the way the frame moves between it and another (sway-factor.ts). */
  swayFactor(one: number, other: number): number;
}

export function bucklingOf(solution: Solution): Buckling {
  const { frame } = solution;
  const meshes: Mesh[] = [];
  // What a rigid arm adds to B may take from it as well: members with arms are looked at one combination at a time.
  const armless = frame.model.members.every(({ fromOffset, toOffset }) => !fromOffset && !toOffset);

  const statusOf = (combination: number): ContactStatus[] =>
    solvedState(solution, combination).contacts.map(({ status }) => (status === "slips" ? "holds" : status));

  const meshFor = (
    pieces: Int32Array,
    status: readonly ContactStatus[],
    fits: (own: number, wanted: number) => boolean,
  ): Mesh => {
    const known = meshes.find(
      (mesh) => alike(mesh.status, status) && mesh.pieces.every((own, m) => fits(own, pieces[m] as number)),
    );
    if (known) return known;
    const like = meshes.find((mesh) => alike([...mesh.pieces], [...pieces]))?.system ?? frame.system;
    const mesh = meshOf(frame, pieces, status, like);
    meshes.unshift(mesh);
    meshes.length = Math.min(meshes.length, KEPT);
    return mesh;
  };
  const exactly = (own: number, wanted: number): boolean => own === wanted;
  const atLeast = (own: number, wanted: number): boolean => own >= wanted;

  /** Pieces that do for critical factors up to this one. */
  const piecesUpTo = (axial: readonly Axial[], factor: number): Int32Array =>
    Int32Array.from(axial, ({ size }, m) => {
      const { EIy, EIz } = frame.model.members[m] ?? { EIy: 1, EIz: 1 };
      const phase = Math.sqrt((factor * size) / Math.min(EIy, EIz)) * (frame.parts.table.length[m] as number);
      return Math.min(Math.max(Math.ceil(phase / PHASE_OF_PIECE), 1), MOST_PIECES);
    });

  const standsPressed = (axial: readonly Axial[], status: readonly ContactStatus[], factor: number): boolean => {
    if (!axial.some(({ push }) => push > 0)) return true;
    const mesh = meshFor(piecesUpTo(axial, factor), status, atLeast);
    return mesh.system.mechanisms.length === 0 && noneUpTo(mesh.system, geometricBlocks(mesh, axial), factor);
  };

  /** Of combinations whose contacts are alike. */
  const fallingAlike = (
    all: readonly { readonly combination: number; readonly axial: readonly Axial[] }[],
    status: readonly ContactStatus[],
    factor: number,
  ): readonly number[] => {
    const [first] = all;
    if (!first) return [];
    const hardest = all.length === 1 || armless ? hardestPressed(all.map(({ axial }) => axial)) : undefined;
    if (hardest && standsPressed(hardest, status, factor)) return [];
    if (all.length === 1) return [first.combination];
    const half = Math.ceil(all.length / 2);
    return [all.slice(0, half), all.slice(half)].flatMap((part) => fallingAlike(part, status, factor));
  };

  return {
    modes(combination, count, upTo = Infinity) {
      const axial = axialOf(solution, combination);
      if (!axial.some(({ push }) => push > 0)) return { kind: "modes", modes: [] };
      const status = statusOf(combination);
      const coarse = meshFor(
        Int32Array.from(axial, ({ push }) => (push > 0 ? FIRST_PIECES : 1)),
        status,
        exactly,
      );
      const noneAt = (mesh: Mesh, factor: number): boolean =>
        noneUpTo(mesh.system, geometricBlocks(mesh, axial), factor);
      // Coarse pieces put factors too high, so that only the fine ones show that there is none; but they say where it is worth asking.
      if (Number.isFinite(upTo) && coarse.system.mechanisms.length === 0 && noneAt(coarse, upTo))
        if (noneAt(meshFor(piecesUpTo(axial, upTo), status, atLeast), upTo)) return { kind: "modes", modes: [] };
      const rough = roughLambdas(coarse.system, geometricBlocks(coarse, axial), count);
      if (rough.length === 0 && coarse.system.mechanisms.length === 0) return { kind: "modes", modes: [] };
      const mesh = meshFor(piecesUpTo(axial, rough.at(-1) ?? 0), status, exactly);
      const fine = lowestModes(mesh.system, geometricBlocks(mesh, axial), count, rough[0]);
      if (fine.kind === "mechanism") return fine;
      const own = 6 * frame.model.nodes.length;
      return {
        kind: "modes",
        modes: fine.modes.map((mode) => ({
          ...mode,
          displacements: mode.displacements.slice(0, own),
          alongMember: (m) => shapeAlong(mesh, mode, m),
        })),
      };
    },
    stands: (combination, factor) => standsPressed(axialOf(solution, combination), statusOf(combination), factor),
    swayFactor: (one, other) => swayFactor(solution, one, other),
    falling(combinations, factor) {
      const alikes = new Map<string, number[]>();
      for (const combination of combinations) {
        const key = statusOf(combination).join();
        alikes.set(key, [...(alikes.get(key) ?? []), combination]);
      }
      return [...alikes.values()].flatMap((own) =>
        fallingAlike(
          own.map((combination) => ({ combination, axial: axialOf(solution, combination) })),
          statusOf(own[0] ?? 0),
          factor,
        ),
      );
    },
  };
}

/** The lowest buckling modes of one combination; for several of one solution `bucklingOf` shares the work. */
export const bucklingModes = (solution: Solution, combination: number, count: number): BucklingShapes =>
  bucklingOf(solution).modes(combination, count);
