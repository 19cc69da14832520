import { clipConvex } from "../geometry/convex.ts";
import { area as areaOf, type Region } from "../geometry/polygon.ts";
import { add, dot, scale, type Vec3 } from "../geometry/vector.ts";
import type { Panel } from "../model/frame.ts";
import { type Body, bodies, cutStation } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { panelBoxes } from "./panel-boxes.ts";
import { panelNormal } from "./panel-normal.ts";
import { planeAxes } from "./plane-axes.ts";
import { type Between, between, nearestSupport, pastEnds, type Support, supportLines } from "./supports-beside.ts";

/** A stretch of a bar and the share of one panel's area it carries: m² per m of bar. */
export interface PanelStrip {
  readonly bar: string;
  readonly from: number;
  readonly to: number;
  readonly areaPerLength: number;
}

export interface PanelShare {
  readonly panel: Panel;
  /** Out of the panel, the way its positive pressure is counted against. */
  readonly normal: Vec3;
  /** Ways in its plane along which it carries, square to each other. */
  readonly ways: readonly [Vec3, Vec3];
  /** m² */
  readonly area: number;
  /** Of its rectangle or of its corners, between the axes of the bars that hold it, m. */
  readonly middle: Vec3;
  readonly strips: readonly PanelStrip[];
}

const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;

/** Cells along each side into which a panel is cut to share its load. */
const CELLS = 24;
/** One of the cells a panel is cut into. */
interface Cell {
  readonly index: readonly [number, number];
  readonly low: readonly [number, number];
  readonly size: readonly [number, number];
}

/** What one bar carries, by stretch: along a direction of the cells one stretch a cell, else one a part of the bar. */
type Stretches = Map<string, { from: number; to: number; area: number }>;

function put(stretches: Stretches, key: string, [from, to]: readonly [number, number], area: number): void {
  const known = stretches.get(key);
  if (known) known.area += area;
  else stretches.set(key, { from, to, area });
}

/**
 * Shares along a bar at `met`, or square to it, as parts of its length from 0 to 1. What reaches past an end bears on that end and lifts the other, as a lever does that lies on
 * the bar.
 */
function addTo(stretches: Stretches, support: Support, cell: Cell, area: number, met?: number): void {
  const run = [support.to[0] - support.from[0], support.to[1] - support.from[1]] as const;
  const square = run[0] ** 2 + run[1] ** 2;
  if (!(square > 0)) return;
  const middle = [cell.low[0] + cell.size[0] / 2, cell.low[1] + cell.size[1] / 2] as const;
  const t = met ?? ((middle[0] - support.from[0]) * run[0] + (middle[1] - support.from[1]) * run[1]) / square;
  const straight = ([0, 1] as const).find((d) => Math.abs(run[1 - d] as number) < 1e-9 * Math.abs(run[d]));
  const half = straight === undefined ? 0.5 / CELLS : cell.size[straight] / Math.abs(run[straight]) / 2;
  const key = straight === undefined ? Math.min(CELLS - 1, Math.max(0, Math.floor(t * CELLS))) : cell.index[straight];
  const centre = straight === undefined ? (key + 0.5) / CELLS : t;
  const first = [0, Math.min(1, 2 * half)] as const;
  const last = [Math.max(0, 1 - 2 * half), 1] as const;
  let own: readonly [number, number] = [Math.max(centre - half, 0), Math.min(centre + half, 1)];
  if (own[1] - own[0] < 1e-3 * half) own = centre < 0.5 ? first : last;
  const near = (own[0] + own[1]) / 2;
  const other = centre < 0.5 ? last : first;
  const far = (other[0] + other[1]) / 2;
  const reaches = straight === undefined ? t < 0 || t > 1 : Math.abs(t - near) > 1e-9;
  const lifted = reaches && Math.abs(far - near) > 1e-6 ? (area * (near - t)) / (near - far) : 0;
  put(stretches, `${key}`, own, area - lifted);
  if (lifted !== 0) put(stretches, `${key} lifts`, other, lifted);
}

function share(
  low: readonly [number, number],
  high: readonly [number, number],
  supports: readonly Support[],
  shape?: Region,
): Map<string, Stretches> {
  const all = new Map<string, Stretches>();
  const give = (support: Support, cell: Cell, area: number, met?: number): void => {
    const id = support.body.bar.ref.id;
    const own = all.get(id) ?? new Map();
    all.set(id, own);
    if (area !== 0) addTo(own, support, cell, area, met);
  };
  const size = [(high[0] - low[0]) / CELLS, (high[1] - low[1]) / CELLS] as const;
  const cells = Array.from({ length: CELLS * CELLS }, (_, n): Cell => {
    const index = [Math.floor(n / CELLS), n % CELLS] as const;
    return { index, low: [low[0] + index[0] * size[0], low[1] + index[1] * size[1]], size };
  });
  const middleOf = ({ low: [u, v] }: Cell): readonly [number, number] => [u + size[0] / 2, v + size[1] / 2];
  const whole = size[0] * size[1];
  /** How much of a cell the panel covers, m². */
  const coveredOf = ({ low: [u, v] }: Cell): number => {
    if (!shape) return whole;
    const ring = [
      [u, v],
      [u + size[0], v],
      [u + size[0], v + size[1]],
      [u, v + size[1]],
    ] as const;
    return areaOf({ outer: clipConvex(ring, shape.outer), holes: [] });
  };
  for (const cell of cells) {
    const area = coveredOf(cell);
    if (area === 0) continue;
    const uv = middleOf(cell);
    const alongU = between(supports, 1, uv[1], uv[0]);
    const alongV = between(supports, 0, uv[0], uv[1]);
    // A strip that runs through the cell meets its two bars where it crosses them, one past their ends bears square to them.
    const lever = ({ low: a, high: b }: Between, at: number, part: number, fixed?: 0 | 1): void => {
      const toHigh = (at - a.at) / (b.at - a.at);
      const met = ({ from, to }: Support): number | undefined =>
        fixed === undefined ? undefined : ((uv[fixed] ?? 0) - from[fixed]) / (to[fixed] - from[fixed]);
      give(a.support, cell, part * (1 - toHigh), met(a.support));
      give(b.support, cell, part * toHigh, met(b.support));
    };
    const [insideU, insideV] = [alongU?.inside === true, alongV?.inside === true];
    if (alongU && alongV && insideU && insideV) {
      // Two strips that cross share a load so that they sag alike: as the fourth powers of the other's span.
      const [u, v] = [(alongU.high.at - alongU.low.at) ** 4, (alongV.high.at - alongV.low.at) ** 4];
      lever(alongU, uv[0], (area * v) / (u + v), 1);
      lever(alongV, uv[1], (area * u) / (u + v), 0);
    } else if (alongU && insideU) lever(alongU, uv[0], area, 1);
    else if (alongV && insideV) lever(alongV, uv[1], area, 0);
    else {
      // Past the last bar the panel is a lever over the two next to it, by the way that reaches out less.
      const past = (found: Between | undefined, at: number): number =>
        found ? Math.max(found.low.at - at, at - found.high.at) : Infinity;
      const [u, v] = [past(alongU, uv[0]), past(alongV, uv[1])];
      if (alongU && u <= v) lever(alongU, uv[0], area, 1);
      else if (alongV) lever(alongV, uv[1], area, 0);
      else {
        const strips = pastEnds(supports, uv);
        for (const { found, along: at } of strips) lever(found, at, area / strips.length);
        const near = strips.length === 0 ? nearestSupport(supports, uv) : undefined;
        if (near) give(near.support, cell, area);
      }
    }
  }
  return all;
}

/**
 * How a load on a panel goes to the bars that hold it. The panel is cut into cells; each spans both ways between the bars
 * next to it, sharing its load between the two ways so that strips crossing there sag alike (Rankine–Grashof), and each
 * strip passes its share to the bars at its ends by the lever. Force and moment stay in balance.
 */
export const panelShares = defineFact<
  ReadonlyMap<string, PanelShare>,
  { bodies: typeof bodies; boxes: typeof panelBoxes }
>({
  id: "panel-shares",
  needs: { bodies, boxes: panelBoxes },
  compute({ bodies: all, boxes }, frame) {
    const shares = new Map<string, PanelShare>();
    for (const panel of frame.panels) {
      const ids =
        panel.held.kind === "in-slot"
          ? panel.held.edges.flatMap((edge) => (edge.kind === "bar" ? [edge.bar] : []))
          : panel.held.bars;
      const held = ids.map((id) => all.get(id)).filter((body) => body?.prism !== undefined) as Body[];
      const { box, outline = [], normal = panelNormal(held) } = boxes.get(panel.ref.id) ?? {};
      if (!normal || held.length === 0) continue;
      const [u, v] = box?.axes ?? planeAxes(normal);
      const flat = (p: Vec3): readonly [number, number] => [dot(p, u), dot(p, v)];
      const supports = supportLines(held, [u, v]);
      // Bars of a panel in slots may run on past it: posts beside one panel over the other.
      const corners = outline.length > 0 ? outline.map(flat) : supports.flatMap((s) => [s.from, s.to]);
      const shape: Region | undefined = box || outline.length === 0 ? undefined : { outer: corners, holes: [] };
      const us = corners.map((c) => c[0]);
      const vs = corners.map((c) => c[1]);
      const low = [Math.min(...us), Math.min(...vs)] as const;
      const high = [Math.max(...us), Math.max(...vs)] as const;
      const strips: PanelStrip[] = [];
      for (const [bar, stretches] of share(low, high, supports, shape)) {
        const body = all.get(bar);
        if (!body) continue;
        const [a, b] = [cutStation(body, "from"), cutStation(body, "to")];
        for (const { from, to, area } of stretches.values())
          if (area !== 0 && to > from)
            strips.push({
              bar,
              from: a + from * (b - a),
              to: a + to * (b - a),
              areaPerLength: area / ((to - from) * (b - a)),
            });
      }
      const out = held.reduce((sum, { bar }) => sum + dot(bar.from, normal) / held.length, 0);
      const flatMiddle = shape ? [mean(us), mean(vs)] : [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2];
      const middle = add(scale(normal, out), add(scale(u, flatMiddle[0] ?? 0), scale(v, flatMiddle[1] ?? 0)));
      const area = shape ? areaOf(shape) : (high[0] - low[0]) * (high[1] - low[1]);
      shares.set(panel.ref.id, { panel, normal, ways: [u, v], area, middle, strips });
    }
    return shares;
  },
});
