import { dot, rotateAbout, type Vec3 } from "../geometry/vector.ts";
import type { LoadCase, MemberLoad, NodeLoad } from "../mechanics/model.ts";
import { up } from "./axes.ts";
import { placedBy, type Turn } from "./opened-model.ts";
import type { Structure } from "./structure.ts";

/** A vector turned with a door about plumb, so that weight stays weight where the hinge line leans a little. */
function aboutPlumb({ pin, angle }: Turn): (way: Vec3) => Vec3 {
  const turn = dot(pin.axis, up) < 0 ? -angle : angle;
  return (way) => rotateAbout(way, up, turn);
}

/** The loads of a case with those on opened doors turned with them: forces, arms and moments alike. */
export function turnedLoads(
  { members = [], nodes = [], ...rest }: LoadCase,
  known: Structure,
  turnOf: (bar: string) => Turn | undefined,
): LoadCase {
  return {
    ...rest,
    members: members.map((load): MemberLoad => {
      const turn = load.kind === "strain" ? undefined : turnOf(known.pieces[load.member]?.bar ?? "");
      if (!turn || load.kind === "strain") return load;
      const way = aboutPlumb(turn);
      const arm = load.arm ? { arm: way(load.arm) } : {};
      if (load.kind === "point")
        return {
          ...load,
          ...arm,
          ...(load.force ? { force: way(load.force) } : {}),
          ...(load.moment ? { moment: way(load.moment) } : {}),
        };
      const both = ([from, to]: readonly [Vec3, Vec3]) => [way(from), way(to)] as const;
      return {
        ...load,
        ...arm,
        ...(load.force ? { force: both(load.force) } : {}),
        ...(load.moment ? { moment: both(load.moment) } : {}),
      };
    }),
    nodes: nodes.map((load): NodeLoad => {
      const turn = turnOf(known.nodes[load.node]?.bar ?? "");
      if (!turn) return load;
      const way = aboutPlumb(turn);
      return {
        ...load,
        ...(load.force ? { force: way(load.force) } : {}),
        ...(load.moment ? { moment: way(load.moment) } : {}),
        ...(load.at ? { at: placedBy(turn, load.at) } : {}),
      };
    }),
  };
}
