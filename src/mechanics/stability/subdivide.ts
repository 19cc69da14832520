import { add, scale } from "../../geometry/vector.ts";
import type { FrameModel, Member, Six, Vec3 } from "../model.ts";
import { ORIGIN } from "../triad.ts";

/** A model whose members are cut into equal pieces. Old nodes keep their numbers. */
export interface Subdivided {
  readonly model: FrameModel;
  /** First piece of each member; pieces follow each other. */
  readonly firstPiece: Int32Array;
}

const NONE: Six<boolean> = [false, false, false, false, false, false];

/** Cuts member m into `pieces[m]` equal lengths; the model itself where all stay whole. */
export function subdivide(model: FrameModel, lengths: Float64Array, pieces: Int32Array): Subdivided {
  if (pieces.every((count) => count === 1)) return { model, firstPiece: pieces.map((_, m) => m) };
  const nodes: Vec3[] = [...model.nodes];
  const members: Member[] = [];
  const firstPiece = new Int32Array(model.members.length);
  model.members.forEach((member, m) => {
    firstPiece[m] = members.length;
    const count = pieces[m] as number;
    if (count === 1) {
      members.push(member);
      return;
    }
    const start = add(model.nodes[member.from] ?? ORIGIN, member.fromOffset ?? ORIGIN);
    for (let k = 0; k < count; k++) {
      const [first, last] = [k === 0, k === count - 1];
      const from = first ? member.from : nodes.length - 1;
      if (!last) nodes.push(add(start, scale(member.axes.x, ((lengths[m] as number) * (k + 1)) / count)));
      members.push({
        ...member,
        from,
        to: last ? member.to : nodes.length - 1,
        fromOffset: first ? (member.fromOffset ?? ORIGIN) : ORIGIN,
        toOffset: last ? (member.toOffset ?? ORIGIN) : ORIGIN,
        fromReleases: first ? (member.fromReleases ?? NONE) : NONE,
        toReleases: last ? (member.toReleases ?? NONE) : NONE,
      });
    }
  });
  return { model: { ...model, nodes, members }, firstPiece };
}
