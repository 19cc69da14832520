import { scale } from "../../geometry/vector.ts";
import type { Block } from "../assembly/blocks.ts";
import { memberBlock } from "../assembly/blocks.ts";
import type { FrameParts } from "../assembly/frame.ts";
import { frameParts } from "../assembly/frame.ts";
import { closedLinks } from "../contact/closed.ts";
import { contactLinks } from "../contact/links.ts";
import type { Piecewise } from "../piecewise.ts";
import { extrema, valueAt } from "../piecewise.ts";
import { memberForces, solvedState } from "../results.ts";
import type { Solution } from "../statics/solve.ts";
import { armBlock } from "./arm.ts";
import { geometricMatrix } from "./element-matrices.ts";
import type { PencilModes } from "./pencil.ts";
import { lowestModes } from "./pencil.ts";
import { subdivide } from "./subdivide.ts";

/**
 * A cubic piece of length h overestimates the critical factor by (βh)⁴/720, β² = N/EI (four pieces in a pinned column:
 * 0.05 %). This βh leaves 2e-5.
 */
const PHASE_OF_PIECE = 0.35;
const MOST_PIECES = 32;
/** Pieces of compressed members in the first estimate. */
const FIRST_PIECES = 2;

interface Compressed {
  readonly N: Piecewise;
  /** Largest compression, N; zero or less when there is none. */
  readonly push: number;
}

function geometricBlocks(
  parts: FrameParts,
  axial: readonly Compressed[],
  firstPiece: Int32Array,
  pieces: Int32Array,
): Block[] {
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

/**
 * The lowest factors by which the axial forces of a solved combination may grow before the frame buckles (λ of a mode;
 * α_cr is the first), with modes at the nodes of the frame. Linear buckling about the undeformed shape: axial forces
 * only; bending moments (lateral-torsional buckling) and warping are not in it. Members are cut finely enough for 1e-4.
 * Contacts stay as the combination left them. An empty list when nothing is compressed.
 */
export function bucklingModes(solution: Solution, combination: number, count: number): PencilModes {
  const { frame } = solution;
  const status = solvedState(solution, combination).contacts.map((contact) => contact.status);
  const axial = frame.model.members.map((_, m): Compressed => {
    const { N } = memberForces(solution, combination, m);
    return { N, push: -extrema(N).min.value };
  });
  const most = axial.reduce((largest, { push }) => Math.max(largest, push), 0);
  if (!(most > 0)) return { kind: "modes", modes: [] };
  const run = (pieces: Int32Array): PencilModes => {
    const { model, firstPiece } = subdivide(frame.model, frame.parts.table.length, pieces);
    const parts = frameParts(model);
    const links = closedLinks(contactLinks(parts), model.contacts ?? [], status);
    return lowestModes(parts, links, geometricBlocks(parts, axial, firstPiece, pieces), count);
  };
  const coarse = run(Int32Array.from(axial, ({ push }) => (push > 0 ? FIRST_PIECES : 1)));
  if (coarse.kind === "mechanism" || coarse.modes.length === 0) return coarse;
  const highest = coarse.modes[coarse.modes.length - 1]?.lambda ?? 0;
  const pieces = Int32Array.from(axial, ({ push }, m) => {
    const { EIy, EIz } = frame.model.members[m] ?? { EIy: 1, EIz: 1 };
    if (!(push > 0)) return 1;
    const phase = Math.sqrt((highest * push) / Math.min(EIy, EIz)) * (frame.parts.table.length[m] as number);
    return Math.min(Math.max(Math.ceil(phase / PHASE_OF_PIECE), 1), MOST_PIECES);
  });
  const fine = run(pieces);
  if (fine.kind === "mechanism") return fine;
  const own = 6 * frame.model.nodes.length;
  return {
    kind: "modes",
    modes: fine.modes.map((mode) => ({ ...mode, displacements: mode.displacements.slice(0, own) })),
  };
}
