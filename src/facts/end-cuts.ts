import { boxBounds } from "../geometry/box.ts";
import { intersectLine, mitrePlane, type Plane } from "../geometry/plane.ts";
import { closestPoints } from "../geometry/segment.ts";
import { overlappingPairs } from "../geometry/sweep-and-prune.ts";
import { along, dot, midpoint, rotateAbout, scale, subtract, type Vec3 } from "../geometry/vector.ts";
import type { BarEnd } from "../model/frame.ts";
import type { EndName } from "../model/ref.ts";
import type { FaceName } from "../model/stock/stock.ts";
import { faceNames, faceNormal } from "./axes.ts";
import { doubles } from "./doubles.ts";
import { defineFact } from "./fact.ts";
import type { Question } from "./question.ts";
import { faceDistance, inTube, type Tube, tubes } from "./tubes.ts";

/** How one end is sawn: the plane of the cut, its normal pointing out of the bar. */
export interface EndCut {
  readonly end: BarEnd;
  readonly plane: Plane;
  /** The bar it is cut against, and that bar's face. */
  readonly against?: { readonly bar: string; readonly face: FaceName };
}

export interface EndCuts {
  readonly of: (bar: string, end: EndName) => EndCut | undefined;
  readonly questions: readonly Question[];
}

/** A drawn point counts as inside a section when it is at least this far under every face, m: more than rounding, less than any wall. */
const INSIDE = 1e-6;
/** Bars nearer to parallel than this (cosine; about 5°) do not butt against each other's sides. */
const PARALLEL_COSINE = Math.cos((5 * Math.PI) / 180);

const outward = (tube: Tube, end: EndName): Vec3 => scale(tube.axes.x, end === "to" ? 1 : -1);
const drawn = (tube: Tube, end: EndName): Vec3 => tube.bar[end];

/** Whether a drawn point lies within a bar's section and between its drawn ends. */
function holds(tube: Tube, point: Vec3): boolean {
  const [x, y, z] = inTube(tube, point);
  return (
    x > -INSIDE && x < tube.length + INSIDE && Math.abs(y) < tube.half.y - INSIDE && Math.abs(z) < tube.half.z - INSIDE
  );
}

/** The face of `other` through which a line running outward from the bar enters it, and the plane of a cut there. */
function buttCut(tube: Tube, end: EndName, other: Tube): EndCut {
  const d = outward(tube, end);
  const origin = drawn(tube, end === "to" ? "from" : "to");
  let best: { face: FaceName; at: number; plane: Plane } | undefined;
  for (const face of faceNames) {
    const normal = faceNormal(other.axes, face);
    if (dot(normal, d) > -1e-9) continue;
    const plane: Plane = { point: along(other.bar.from, normal, faceDistance(other, face)), normal };
    const at = intersectLine(plane, origin, d);
    // The line enters the square tube where it has passed the last of the planes that look at it.
    if (at !== undefined && (best === undefined || at > best.at + 1e-12)) best = { face, at, plane };
  }
  if (best === undefined) return asDrawn(tube, end);
  return {
    end: tube.bar.ends[end],
    plane: { point: along(origin, d, best.at), normal: scale(best.plane.normal, -1) },
    against: { bar: other.bar.ref.id, face: best.face },
  };
}

function asDrawn(tube: Tube, end: EndName): EndCut {
  return { end: tube.bar.ends[end], plane: { point: drawn(tube, end), normal: outward(tube, end) } };
}

function mitreCut(tube: Tube, end: EndName, other: Tube): EndCut {
  const meet = closestPoints({ from: tube.bar.from, to: tube.bar.to }, { from: other.bar.from, to: other.bar.to });
  const corner = midpoint(meet.first, meet.second);
  const far = dot(subtract(midpoint(other.bar.from, other.bar.to), corner), other.axes.x) >= 0 ? 1 : -1;
  const plane = mitrePlane(corner, scale(outward(tube, end), -1), scale(other.axes.x, far));
  return { end: tube.bar.ends[end], plane };
}

/** Ends cut by what their author wrote alone; undefined where another bar's place has to be looked for. */
function written(tube: Tube, end: EndName, all: ReadonlyMap<string, Tube>): EndCut | undefined {
  const { cut } = tube.bar.ends[end];
  switch (cut.kind) {
    case "as-drawn":
      return asDrawn(tube, end);
    case "plane":
      return {
        end: tube.bar.ends[end],
        plane: {
          point: drawn(tube, end),
          normal: dot(cut.normal, outward(tube, end)) < 0 ? scale(cut.normal, -1) : cut.normal,
        },
      };
    case "angle":
      return {
        end: tube.bar.ends[end],
        plane: { point: drawn(tube, end), normal: rotateAbout(outward(tube, end), cut.about, cut.angle) },
      };
    case "mitre": {
      const other = all.get(cut.with);
      return other ? mitreCut(tube, end, other) : undefined;
    }
    case "butt": {
      const other = cut.against === undefined ? undefined : all.get(cut.against);
      return other ? buttCut(tube, end, other) : undefined;
    }
  }
}

interface Open {
  readonly tube: Tube;
  readonly end: EndName;
  candidates: readonly Tube[];
}

/** Whether the other bar's own end, if it stops here, still waits to be cut: then neither of the two is known to run through. */
function mutual(open: Open, other: Tube, waiting: ReadonlySet<string>): boolean {
  for (const end of ["from", "to"] as const) {
    if (waiting.has(`${other.bar.ref.id}/${end}`) && holds(open.tube, drawn(other, end))) return true;
  }
  return false;
}

/** Whether the drawn point is still inside the other bar, or on its cut, once that bar's settled cuts are made. */
function stillInside(point: Vec3, other: Tube, settled: ReadonlyMap<string, EndCut>): boolean {
  for (const end of ["from", "to"] as const) {
    const cut = settled.get(`${other.bar.ref.id}/${end}`);
    if (cut && dot(subtract(point, cut.plane.point), cut.plane.normal) > INSIDE) return false;
  }
  return true;
}

/** Which bars each drawn end lies in. */
function findCandidates(all: readonly Tube[], wanted: ReadonlySet<string>): Map<string, Tube[]> {
  const found = new Map<string, Tube[]>();
  const boxes = all.map((tube) =>
    boxBounds({
      centre: midpoint(tube.bar.from, tube.bar.to),
      axes: [tube.axes.x, tube.axes.y, tube.axes.z],
      half: [tube.length / 2, tube.half.y, tube.half.z],
    }),
  );
  for (const [i, j] of overlappingPairs(boxes, 1e-6)) {
    const pair = [all[i], all[j]] as const;
    for (const [tube, other] of [pair, [pair[1], pair[0]] as const]) {
      if (!tube || !other || Math.abs(dot(tube.axes.x, other.axes.x)) > PARALLEL_COSINE) continue;
      for (const end of ["from", "to"] as const) {
        const key = `${tube.bar.ref.id}/${end}`;
        if (!wanted.has(key) || !holds(other, drawn(tube, end))) continue;
        const list = found.get(key);
        if (list) list.push(other);
        else found.set(key, [other]);
      }
    }
  }
  return found;
}

function ask(open: Open): Question {
  const names = open.candidates.map((c) => c.bar.ref.id).sort();
  const id = `${open.tube.bar.ref.id}/${open.end}`;
  const first = names[0] ?? "";
  return {
    at: open.tube.bar.ends[open.end].ref,
    found: `${id} drawn inside ${names.join(" and ")}, which also end${names.length === 1 ? "s" : ""} there`,
    expected: "one bar that runs through, for the other to be cut against",
    mend: `say it on one of them: "ends": {"${open.end}": {"butt": "${first}"}} cuts ${open.tube.bar.ref.id} at the face of ${first}; {"cut": "as-drawn"} lets it run through`,
  };
}

/**
 * Where every end is cut. An end drawn inside one other bar is cut at the face it meets; inside several, at the only one that runs
 * through. Where two bars end inside each other, or several run through, the author is asked. Ends drawn in the open are cut square at the point.
 */
export const endCuts = defineFact<EndCuts, { tubes: typeof tubes; doubles: typeof doubles }>({
  id: "end-cuts",
  needs: { tubes, doubles },
  compute({ tubes: all, doubles: twice }) {
    const settled = new Map<string, EndCut>();
    const waiting = new Set<string>();
    const list = [...all.values()];
    for (const tube of list) {
      for (const end of ["from", "to"] as const) {
        const cut = written(tube, end, all);
        const key = `${tube.bar.ref.id}/${end}`;
        if (cut) settled.set(key, cut);
        else waiting.add(key);
      }
    }
    const candidates = findCandidates(list, waiting);
    let open: Open[] = [];
    for (const key of waiting) {
      const slash = key.lastIndexOf("/");
      const tube = all.get(key.slice(0, slash));
      const end = key.slice(slash + 1) as EndName;
      if (!tube) continue;
      const inside = twice.singly(candidates.get(key) ?? [], (other) => other.bar.ref.id);
      if (inside.length === 0) {
        settled.set(key, asDrawn(tube, end));
        waiting.delete(key);
      } else open.push({ tube, end, candidates: inside });
    }
    const settle = ({ tube, end }: Open, against: Tube | undefined): void => {
      const key = `${tube.bar.ref.id}/${end}`;
      settled.set(key, against ? buttCut(tube, end, against) : asDrawn(tube, end));
      waiting.delete(key);
    };
    // An end that lies in one running bar is settled at once; every cut made may settle another.
    for (let progress = true; progress; ) {
      const before = open.length;
      const left: Open[] = [];
      for (const entry of open) {
        const point = drawn(entry.tube, entry.end);
        entry.candidates = entry.candidates.filter((other) => stillInside(point, other, settled));
        const [only, second] = entry.candidates;
        if (only && (second || mutual(entry, only, waiting))) left.push(entry);
        else settle(entry, only);
      }
      open = left;
      progress = open.length < before;
      if (progress) continue;
      // At a corner of three bars the one that runs through goes before those that end there too. Seen for all before any is cut:
      // the order of the file must not matter.
      const corners = open.flatMap((entry) => {
        const [through, another] = entry.candidates.filter((other) => !mutual(entry, other, waiting));
        return through && !another ? [{ entry, through }] : [];
      });
      for (const { entry, through } of corners) settle(entry, through);
      const cut = new Set(corners.map(({ entry }) => entry));
      open = open.filter((entry) => !cut.has(entry));
      progress = cut.size > 0;
    }
    for (const { tube, end } of open) settled.set(`${tube.bar.ref.id}/${end}`, asDrawn(tube, end));
    return { of: (bar, end) => settled.get(`${bar}/${end}`), questions: open.map(ask) };
  },
});
