import { MANY_BARS } from "../drawing/many-bars.ts";
import type { BarData, FormData, ModelData, PieceData } from "../drawing/model3d/model-data.ts";
import { add, cross, dot, mix, size, times, unit, type Vec, vecAt } from "./vec.ts";

/** Corners of triangles or ends of lines, with all that moves and colours them. */
export interface Mesh {
  readonly at: Float32Array;
  readonly normal: Float32Array;
  /** Where it goes when parts are drawn apart, for a spread of one. */
  readonly away: Float32Array;
  /** Where it belongs: index of a bar, or of a piece after all bars. */
  readonly part: Int32Array;
  /** The bar it moves with, −1 for none, and the station along it, 0 to 1. */
  readonly rides: Int32Array;
  readonly station: Float32Array;
}

export interface Fibre {
  readonly from: Vec;
  readonly to: Vec;
}

export interface Meshes {
  readonly solid: Mesh;
  readonly panels: Mesh;
  readonly edges: Mesh;
  /** Axis of each bar from cut to cut. */
  readonly axes: readonly Fibre[];
  /** Where each part goes when they are drawn apart, for a spread of one; bars first. */
  readonly away: readonly Vec[];
  readonly low: Vec;
  readonly high: Vec;
}

export class Growing {
  readonly at: number[] = [];
  readonly normal: number[] = [];
  readonly part: number[] = [];
  readonly rides: number[] = [];
  readonly station: number[] = [];
  put(p: Vec, n: Vec, part: number, rides: number, station: number): void {
    this.at.push(p[0], p[1], p[2]);
    this.normal.push(n[0], n[1], n[2]);
    this.part.push(part);
    this.rides.push(rides);
    this.station.push(station);
  }
  done(away: readonly Vec[]): Mesh {
    const moved = new Float32Array(this.at.length);
    this.part.forEach((part, i) => {
      const own = away[part];
      if (own) moved.set(own, 3 * i);
    });
    return {
      at: Float32Array.from(this.at),
      normal: Float32Array.from(this.normal),
      away: moved,
      part: Int32Array.from(this.part),
      rides: Int32Array.from(this.rides),
      station: Float32Array.from(this.station),
    };
  }
}

/** Pieces that a bar bends in, and those in a frame of many bars; it is drawn in one until a shape is shown. */
const PIECES = 8;
const FEW_PIECES = 4;
/** Whether the envelope of bars stands for their true outline, which is too much to draw. */
const isRough = ({ bars }: ModelData): boolean => bars.length > MANY_BARS;

const piecesFor = (model: ModelData, bends: boolean): number => {
  if (!bends || model.shapes.length === 0) return 1;
  return isRough(model) ? FEW_PIECES : PIECES;
};

/** Corners of an outline that turn by more than this show as an edge along the bar. */
const SHARP = Math.cos(Math.PI / 6);

/** The line along the bar through a point of its section, from cut to cut. */
export function fibre({ frame, cuts }: BarData, y: number, z: number): Fibre {
  const [x, oy, oz] = [vecAt(frame, 3), vecAt(frame, 6), vecAt(frame, 9)];
  const base = add(add(vecAt(frame, 0), oy, y), oz, z);
  const onto = (cut: readonly number[]): Vec => {
    const normal = vecAt(cut, 3);
    const slope = dot(normal, x);
    return Math.abs(slope) < 1e-9 ? base : add(base, x, dot(add(vecAt(cut, 0), base, -1), normal) / slope);
  };
  return { from: onto(cuts[0]), to: onto(cuts[1]) };
}

function outlineOf(model: ModelData, bar: BarData): readonly number[] {
  const profile = model.profiles[bar.profile];
  if (!profile) return [];
  const [h, w] = profile.half;
  return isRough(model) ? [h, -w, h, w, -h, w, -h, -w] : profile.outer;
}

function addBar(model: ModelData, bar: BarData, index: number, steps: number, solid: Growing, edges: Growing): void {
  const outline = outlineOf(model, bar);
  const profile = model.profiles[bar.profile];
  if (!profile) return;
  const [half, axisY, axisZ] = [profile.half, vecAt(bar.frame, 6), vecAt(bar.frame, 9)];
  const count = outline.length / 2;
  const point = (i: number): readonly [number, number] => [
    outline[2 * (i % count)] ?? 0,
    outline[2 * (i % count) + 1] ?? 0,
  ];
  const fibres = Array.from({ length: count }, (_, i) => fibre(bar, ...point(i)));
  for (let i = 0; i < count; i++) {
    const [a, b] = [point(i), point(i + 1)];
    const [dy, dz] = [b[0] - a[0], b[1] - a[1]];
    const long = Math.hypot(dy, dz) || 1;
    // The outline runs from y towards z: its outside lies to the right of each edge.
    const normal = add(times(axisY, dz / long), axisZ, -dy / long);
    const [f, g] = [fibres[i], fibres[(i + 1) % count]];
    if (!f || !g) continue;
    for (let k = 0; k < steps; k++) {
      const [s, t] = [k / steps, (k + 1) / steps];
      const [p, q, r, u] = [mix(f.from, f.to, s), mix(g.from, g.to, s), mix(g.from, g.to, t), mix(f.from, f.to, t)];
      for (const [corner, station] of [
        [p, s],
        [q, s],
        [r, t],
        [p, s],
        [r, t],
        [u, t],
      ] as const)
        solid.put(corner, normal, index, index, station);
    }
    const before = point(i + count - 1);
    const turn =
      ((a[0] - before[0]) * dy + (a[1] - before[1]) * dz) /
      (long * (Math.hypot(a[0] - before[0], a[1] - before[1]) || 1));
    const outside = Math.abs(Math.abs(a[0]) - half[0]) < 0.3 || Math.abs(Math.abs(a[1]) - half[1]) < 0.3;
    if (turn < SHARP && outside)
      for (let k = 0; k < steps; k++)
        for (const t of [k / steps, (k + 1) / steps]) edges.put(mix(f.from, f.to, t), normal, index, index, t);
    for (const end of ["from", "to"] as const) {
      edges.put(f[end], normal, index, index, end === "from" ? 0 : 1);
      edges.put(g[end], normal, index, index, end === "from" ? 0 : 1);
    }
  }
  addCaps(model, bar, index, solid, fibres);
}

function addCaps(model: ModelData, bar: BarData, index: number, solid: Growing, fibres: readonly Fibre[]): void {
  const profile = model.profiles[bar.profile];
  if (!profile) return;
  const rough = isRough(model);
  const rings = rough ? [] : profile.holes;
  const points = rough
    ? fibres
    : [
        ...fibres,
        ...rings.flatMap((ring) =>
          Array.from({ length: ring.length / 2 }, (_, i) => fibre(bar, ring[2 * i] ?? 0, ring[2 * i + 1] ?? 0)),
        ),
      ];
  const triangles = rough ? [0, 1, 2, 0, 2, 3] : profile.triangles;
  for (const [end, cut, station] of [
    ["from", bar.cuts[0], 0],
    ["to", bar.cuts[1], 1],
  ] as const)
    for (const i of triangles) {
      const at = points[i];
      if (at) solid.put(at[end], vecAt(cut, 3), index, index, station);
    }
}

const NOTHING: FormData = { points: [], faces: [] };
const cornersOf = ({ origin }: PieceData, { points }: FormData): readonly Vec[] =>
  Array.from({ length: points.length / 3 }, (_, k) => add(vecAt(origin, 0), vecAt(points, 3 * k), 0.1));

/** Normal of a flat loop, by the sum of its edges' cross products (M. Newell). */
function normalOf(loop: readonly Vec[]): Vec {
  let sum: Vec = [0, 0, 0];
  loop.forEach((p, i) => {
    sum = add(sum, cross(p, loop[(i + 1) % loop.length] ?? p));
  });
  return unit(sum);
}

/** The bar a point moves with, and where along it. */
type Ride = (p: Vec) => readonly [bar: number, station: number];

function addPiece(
  corners: readonly Vec[],
  { faces }: FormData,
  index: number,
  ride: Ride,
  into: Growing,
  edges: Growing,
): void {
  for (const face of faces) {
    const loop = face.at.map((place): Vec => corners[place] ?? [0, 0, 0]);
    const normal = normalOf(loop);
    const fan = face.triangles ?? loop.slice(2).flatMap((_, i) => [0, i + 1, i + 2]);
    for (const i of fan) into.put(loop[i] ?? [0, 0, 0], normal, index, ...ride(loop[i] ?? [0, 0, 0]));
    loop.forEach((p, i) => {
      for (const end of [p, loop[(i + 1) % loop.length] ?? p]) edges.put(end, normal, index, ...ride(end));
    });
  }
}

export function stationOn({ from, to }: Fibre, p: Vec): number {
  const run = add(to, from, -1);
  return Math.min(1, Math.max(0, dot(add(p, from, -1), run) / (dot(run, run) || 1)));
}

/** A piece goes with its bar where it sits on it; a panel with the bars next to each of its corners. */
function rideOf(piece: PieceData, axes: readonly Fibre[], middle: Vec): Ride {
  const own = axes[piece.bar];
  if (piece.kind === "panel")
    return (p) => {
      let [best, nearest] = [-1, Infinity];
      axes.forEach((axis, i) => {
        const far = size(add(p, mix(axis.from, axis.to, stationOn(axis, p)), -1));
        if (far < nearest) [best, nearest] = [i, far];
      });
      const axis = axes[best];
      return [best, axis ? stationOn(axis, p) : 0];
    };
  const station = own ? stationOn(own, middle) : 0;
  return () => [piece.bar, station];
}

/** Each sub-assembly goes away from the middle as one; without any, each part does. */
function awayOf(model: ModelData, middles: readonly Vec[], centre: Vec): readonly Vec[] {
  const own = (i: number): Vec => add(middles[i] ?? centre, centre, -1);
  const groups = model.groups.map((_, group) => {
    const members = model.bars.flatMap((bar, i) => (bar.group === group ? [own(i)] : []));
    return times(
      members.reduce((a, b) => add(a, b), [0, 0, 0] as Vec),
      1 / Math.max(1, members.length),
    );
  });
  const ofBar = (i: number): Vec => {
    const group = model.bars[i]?.group ?? -1;
    return groups[group] ?? (model.groups.length > 0 ? [0, 0, 0] : times(own(i), 0.6));
  };
  return middles.map((_, i) => {
    if (i < model.bars.length) return ofBar(i);
    const piece = model.pieces[i - model.bars.length];
    if (!piece) return [0, 0, 0];
    // Panels go up and out on their own, so that what is under them shows.
    if (piece.kind === "panel" || piece.bar < 0) return add(own(i), [0, 0, 0.35 * size(own(i))]);
    return ofBar(piece.bar);
  });
}

/** The frame as triangles and lines, fine enough to bend only where that is asked for: most of it is bars. */
export function meshesOf(model: ModelData, bends = false): Meshes {
  const steps = piecesFor(model, bends);
  const [solid, panels, edges] = [new Growing(), new Growing(), new Growing()];
  const axes = model.bars.map((bar) => fibre(bar, 0, 0));
  const middles: Vec[] = axes.map(({ from, to }) => mix(from, to, 0.5));
  for (const [i, bar] of model.bars.entries()) addBar(model, bar, i, steps, solid, edges);
  model.pieces.forEach((piece, i) => {
    const form = model.forms[piece.form] ?? NOTHING;
    const points = cornersOf(piece, form);
    const middle = times(
      points.reduce((a, b) => add(a, b), [0, 0, 0] as Vec),
      1 / Math.max(1, points.length),
    );
    middles.push(middle);
    const into = piece.kind === "panel" ? panels : solid;
    addPiece(points, form, model.bars.length + i, rideOf(piece, axes, middle), into, edges);
  });
  let [low, high]: [Vec, Vec] = [
    [Infinity, Infinity, Infinity],
    [-Infinity, -Infinity, -Infinity],
  ];
  for (const list of [solid.at, panels.at])
    for (let i = 0; i < list.length; i += 3) {
      const p = vecAt(list, i);
      low = [Math.min(low[0], p[0]), Math.min(low[1], p[1]), Math.min(low[2], p[2])];
      high = [Math.max(high[0], p[0]), Math.max(high[1], p[1]), Math.max(high[2], p[2])];
    }
  const away = awayOf(model, middles, mix(low, high, 0.5));
  return { solid: solid.done(away), panels: panels.done(away), edges: edges.done(away), axes, away, low, high };
}
