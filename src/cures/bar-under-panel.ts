import { axesOf } from "../facts/axes.ts";
import { along, dot, length, scale, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Bar } from "../model/frame.ts";
import type { Cure, Patient, Proposal } from "./cure.ts";
import { panelOf } from "./panel-of.ts";
import { freshId, jointOf, pointInFile, writtenBar } from "./written.ts";

/** Bars this near to parallel (cosine) carry a panel alike. */
const PARALLEL = 0.999;
/** Bars closer than this have no room for another between them, m. */
const ROOM = 0.2;

interface Pair {
  readonly a: Bar;
  /** From the first bar square across to the second, m. */
  readonly across: Vec3;
}

/** Pairs of parallel bars under a panel with none of the others between them, the farthest apart first. */
function pairs(bars: readonly Bar[]): readonly Pair[] {
  const list = bars.flatMap((a, i) =>
    bars.slice(i + 1).flatMap((b): Pair[] => {
      const x = axesOf(a).x;
      if (Math.abs(dot(x, axesOf(b).x)) < PARALLEL || a.profile.name !== b.profile.name) return [];
      const way = subtract(b.from, a.from);
      const across = along(way, x, -dot(way, x));
      const between = bars.some((c) => {
        if (c === a || c === b || Math.abs(dot(x, axesOf(c).x)) < PARALLEL) return false;
        const share = dot(subtract(c.from, a.from), across) / dot(across, across);
        return share > 0 && share < 1;
      });
      return between || length(across) < ROOM ? [] : [{ a, across }];
    }),
  );
  return list.sort((p, q) => length(q.across) - length(p.across));
}

/** The kit that fastens both ends of a bar, where one entry does. */
function kitOf({ file }: Patient, bar: string): unknown {
  const [from, to] = [jointOf(file, bar, "from"), jointOf(file, bar, "to")];
  return from && to && from.index === to.index ? from.joint.by : undefined;
}

/** Another bar like two that carry the panel, half way between them. */
export const barUnderPanel: Cure = {
  id: "bar-under-panel",
  turn: 2,
  mends: ["panel.flexes"],
  *propose(ailment, patient): Iterable<Proposal> {
    const found = panelOf(ailment, patient);
    if (!found || found.panel.held.kind === "in-slot") return;
    const { frame, file } = patient;
    const under = new Set(found.panel.held.bars);
    for (const { a, across } of pairs(frame.bars.filter(({ ref }) => under.has(ref.id)))) {
      const written = writtenBar(file, a.ref.id);
      const by = kitOf(patient, a.ref.id);
      if (!written || by === undefined) continue;
      const id = freshId(file, `${found.panel.ref.id}-middle`);
      const half = scale(across, 0.5);
      const moved = (end: "from" | "to"): unknown => pointInFile(along(a[end], half, 1), file);
      yield {
        words: `another bar like ${a.ref.id} half way to the next`,
        edits: [
          { pointer: "/bars/-", to: { ...written.bar, id, from: moved("from"), to: moved("to") } },
          { pointer: "/joints/-", to: { bars: [id], by } },
          { pointer: `${found.pointer}/bars/-`, to: id },
        ],
      };
    }
  },
};
