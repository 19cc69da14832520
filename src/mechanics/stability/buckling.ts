import { scale } from "../../geometry/vector.ts";
import type { Block } from "../assembly/blocks.ts";
import { memberBlock } from "../assembly/blocks.ts";
import type { FrameParts } from "../assembly/frame.ts";
import { frameParts } from "../assembly/frame.ts";
import type { System } from "../assembly/system.ts";
import { buildSystem } from "../assembly/system.ts";
import { closedLinks } from "../contact/closed.ts";
import { contactLinks } from "../contact/links.ts";
import type { Piecewise } from "../piecewise.ts";
import { extrema, valueAt } from "../piecewise.ts";
import { memberForces, solvedState } from "../results.ts";
import type { Solution } from "../statics/solve.ts";
import type { ContactStatus } from "../statics/state.ts";
import { armBlock } from "./arm.ts";
import { geometricMatrix } from "./element-matrices.ts";
import type { Mode, PencilModes } from "./pencil.ts";
import { lowestModes, noneUpTo, roughLambdas } from "./pencil.ts";
import { subdivide } from "./subdivide.ts";

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
}

interface Axial {
  readonly N: Piecewise;
  /** Largest compression, N; zero or less when there is none. */
  readonly push: number;
  /** Largest force either way, N: a pulled member that is cut too coarsely holds the frame too stiffly. */
  readonly size: number;
}

/** The frame cut into pieces, its contacts as some combination left them. */
interface Mesh {
  /** How many pieces each member is cut into, and the first of them. */
  readonly pieces: Int32Array;
  readonly firstPiece: Int32Array;
  readonly status: readonly ContactStatus[];
  readonly parts: FrameParts;
  readonly system: System;
}

function geometricBlocks({ parts, pieces, firstPiece }: Mesh, axial: readonly Axial[]): Block[] {
  const { table, model } = parts;
  const blocks: Block[] = [];
  axial.forEach(({ N }, m) => {
    const count = pieces[m] as number;
    const first = firstPiece[m] as number;
    const step = table.length[first] as number;
    for (let k = 0; k < count; k++) {
      const piece = first + k;
      const member = model.members[piece];
      if (!member) continue;
      const [start, end] = [k * step, (k + 1) * step];
      const press = (xi: number): number => -valueAt(N, start + xi * step);
      // B is minus the geometric stiffness, so that compression counts as positive.
      blocks.push(memberBlock(table, piece, geometricMatrix(member, step, press)));
      if (k === 0 && member.fromOffset) {
        blocks.push(armBlock(member.from, member.fromOffset, scale(member.axes.x, -valueAt(N, 0, "after"))));
      }
      if (k === count - 1 && member.toOffset) {
        blocks.push(armBlock(member.to, member.toOffset, scale(member.axes.x, valueAt(N, end))));
      }
    }
  });
  return blocks;
}

function shapeAlong({ parts: { model }, pieces, firstPiece }: Mesh, { displacements }: Mode, m: number): Float64Array {
  const [count, first] = [pieces[m] as number, firstPiece[m] as number];
  const out = new Float64Array(6 * (count + 1));
  for (let k = 0; k <= count; k++) {
    const piece = model.members[first + Math.min(k, count - 1)];
    const node = k < count ? piece?.from : piece?.to;
    out.set(displacements.subarray(6 * (node ?? 0), 6 * (node ?? 0) + 6), 6 * k);
  }
  return out;
}

const alike = <T>(a: readonly T[], b: readonly T[]): boolean =>
  a.length === b.length && a.every((value, i) => value === b[i]);

export function bucklingOf(solution: Solution): Buckling {
  const { frame } = solution;
  const meshes: Mesh[] = [];

  const axialOf = (combination: number): Axial[] =>
    frame.model.members.map((_, m) => {
      const { N } = memberForces(solution, combination, m);
      const { min, max } = extrema(N);
      return { N, push: -min.value, size: Math.max(-min.value, max.value) };
    });

  const statusOf = (combination: number): ContactStatus[] =>
    solvedState(solution, combination).contacts.map(({ status }) => (status === "slips" ? "holds" : status));

  const meshOf = (
    pieces: Int32Array,
    status: readonly ContactStatus[],
    fits: (own: number, wanted: number) => boolean,
  ): Mesh => {
    const known = meshes.find(
      (mesh) => alike(mesh.status, status) && mesh.pieces.every((own, m) => fits(own, pieces[m] as number)),
    );
    if (known) return known;
    const { model, firstPiece } = subdivide(frame.model, frame.parts.table.length, pieces);
    const parts = frameParts(model, frame.parts);
    const like = meshes.find((mesh) => alike([...mesh.pieces], [...pieces]))?.system ?? frame.system;
    const system = buildSystem(parts, closedLinks(contactLinks(parts), model.contacts ?? [], status), like);
    const mesh = { pieces, firstPiece, status, parts, system };
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

  return {
    modes(combination, count, upTo = Infinity) {
      const axial = axialOf(combination);
      if (!axial.some(({ push }) => push > 0)) return { kind: "modes", modes: [] };
      const status = statusOf(combination);
      const coarse = meshOf(
        Int32Array.from(axial, ({ push }) => (push > 0 ? FIRST_PIECES : 1)),
        status,
        exactly,
      );
      const noneAt = (mesh: Mesh, factor: number): boolean =>
        noneUpTo(mesh.system, geometricBlocks(mesh, axial), factor);
      // Coarse pieces put factors too high, so that only the fine ones show that there is none; but they say where it is worth asking.
      if (Number.isFinite(upTo) && coarse.system.mechanisms.length === 0 && noneAt(coarse, upTo))
        if (noneAt(meshOf(piecesUpTo(axial, upTo), status, atLeast), upTo)) return { kind: "modes", modes: [] };
      const rough = roughLambdas(coarse.system, geometricBlocks(coarse, axial), count);
      if (rough.length === 0 && coarse.system.mechanisms.length === 0) return { kind: "modes", modes: [] };
      const mesh = meshOf(piecesUpTo(axial, rough.at(-1) ?? 0), status, exactly);
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
    stands(combination, factor) {
      const axial = axialOf(combination);
      if (!axial.some(({ push }) => push > 0)) return true;
      const wanted = piecesUpTo(axial, factor);
      const mesh = meshOf(wanted, statusOf(combination), atLeast);
      return mesh.system.mechanisms.length === 0 && noneUpTo(mesh.system, geometricBlocks(mesh, axial), factor);
    },
  };
}

/** The lowest buckling modes of one combination; for several of one solution `bucklingOf` shares the work. */
export const bucklingModes = (solution: Solution, combination: number, count: number): BucklingShapes =>
  bucklingOf(solution).modes(combination, count);
