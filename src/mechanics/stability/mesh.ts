import { scale } from "../../geometry/vector.ts";
import type { Block } from "../assembly/blocks.ts";
import { memberBlock } from "../assembly/blocks.ts";
import type { FrameParts } from "../assembly/frame.ts";
import { frameParts } from "../assembly/frame.ts";
import type { System } from "../assembly/system.ts";
import { buildSystem } from "../assembly/system.ts";
import { closedLinks } from "../contact/closed.ts";
import { contactLinks } from "../contact/links.ts";
import type { Frame } from "../frame.ts";
import type { ContactStatus } from "../statics/state.ts";
import { armBlock } from "./arm.ts";
import type { Axial } from "./axial.ts";
import { geometricMatrix } from "./element-matrices.ts";
import type { Mode } from "./pencil.ts";
import { subdivide } from "./subdivide.ts";

/** The frame cut into pieces, its contacts as some combination left them. */
export interface Mesh {
  /** How many pieces each member is cut into, and the first of them. */
  readonly pieces: Int32Array;
  readonly firstPiece: Int32Array;
  readonly status: readonly ContactStatus[];
  readonly parts: FrameParts;
  readonly system: System;
}

export const alike = <T>(a: readonly T[], b: readonly T[]): boolean =>
  a.length === b.length && a.every((value, i) => value === b[i]);

/** Cuts the frame and factorises it; pattern and order of elimination are taken over from `like` where they fit. */
export function meshOf(frame: Frame, pieces: Int32Array, status: readonly ContactStatus[], like: System): Mesh {
  const { model, firstPiece } = subdivide(frame.model, frame.parts.table.length, pieces);
  const parts = frameParts(model, frame.parts);
  const system = buildSystem(parts, closedLinks(contactLinks(parts), model.contacts ?? [], status), like);
  return { pieces, firstPiece, status, parts, system };
}

/** B of the pencil K − λ B: minus the geometric stiffness of the axial forces, so that compression counts as positive. */
export function geometricBlocks(
  { parts, pieces, firstPiece }: Pick<Mesh, "parts" | "pieces" | "firstPiece">,
  axial: readonly Axial[],
): Block[] {
  const { table, model } = parts;
  const blocks: Block[] = [];
  axial.forEach(({ press }, m) => {
    const count = pieces[m] as number;
    const first = firstPiece[m] as number;
    const step = table.length[first] as number;
    for (let k = 0; k < count; k++) {
      const piece = first + k;
      const member = model.members[piece];
      if (!member) continue;
      const [start, end] = [k * step, (k + 1) * step];
      blocks.push(
        memberBlock(
          table,
          piece,
          geometricMatrix(member, step, (xi) => press(start + xi * step)),
        ),
      );
      if (k === 0 && member.fromOffset) {
        blocks.push(armBlock(member.from, member.fromOffset, scale(member.axes.x, press(0, "after"))));
      }
      if (k === count - 1 && member.toOffset) {
        blocks.push(armBlock(member.to, member.toOffset, scale(member.axes.x, -press(end))));
      }
    }
  });
  return blocks;
}

/** Displacements of a mode at the ends of the pieces of member m, six numbers each. */
export function shapeAlong(
  { parts: { model }, pieces, firstPiece }: Mesh,
  { displacements }: Mode,
  m: number,
): Float64Array {
  const [count, first] = [pieces[m] as number, firstPiece[m] as number];
  const out = new Float64Array(6 * (count + 1));
  for (let k = 0; k <= count; k++) {
    const piece = model.members[first + Math.min(k, count - 1)];
    const node = k < count ? piece?.from : piece?.to;
    out.set(displacements.subarray(6 * (node ?? 0), 6 * (node ?? 0) + 6), 6 * k);
  }
  return out;
}
