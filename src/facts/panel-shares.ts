import { dot, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Panel } from "../model/frame.ts";
import { type Body, bodies, cutPoint, cutStation } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { planeAxes, sheets } from "./sheets.ts";

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
  /** m² */
  readonly area: number;
  readonly strips: readonly PanelStrip[];
}

/** Cells along each side into which a panel is cut to share its load. */
const CELLS = 24;
/** A bar carries a strip of panel that crosses it within its length and this much more, m. */
const BEYOND = 0.001;

interface Support {
  readonly body: Body;
  /** Line of the bar in the plane of the panel. */
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

/** Where a line at constant u (or v) meets a support: its other coordinate, or undefined. */
function crossing(support: Support, fixed: 0 | 1, value: number): number | undefined {
  const other = fixed === 0 ? 1 : 0;
  const [a, b] = [support.from[fixed], support.to[fixed]];
  const run = b - a;
  if (Math.abs(run) < 1e-9) return undefined;
  const t = (value - a) / run;
  const slack = BEYOND / Math.abs(run);
  if (t < -slack || t > 1 + slack) return undefined;
  return support.from[other] + t * (support.to[other] - support.from[other]);
}

interface Between {
  readonly low?: { readonly support: Support; readonly at: number };
  readonly high?: { readonly support: Support; readonly at: number };
}

/** The supports on both sides of a point, along one of the two directions. */
function between(supports: readonly Support[], fixed: 0 | 1, value: number, at: number): Between {
  let low: Between["low"];
  let high: Between["high"];
  for (const support of supports) {
    const found = crossing(support, fixed, value);
    if (found === undefined) continue;
    if (found <= at && (!low || found > low.at)) low = { support, at: found };
    if (found >= at && (!high || found < high.at)) high = { support, at: found };
  }
  return { ...(low ? { low } : {}), ...(high ? { high } : {}) };
}

interface Gathered {
  readonly sums: Map<string, Float64Array>;
  add(support: Support, uv: readonly [number, number], area: number): void;
}

function gather(bins: number): Gathered {
  const sums = new Map<string, Float64Array>();
  return {
    sums,
    add(support, uv, area) {
      const id = support.body.bar.ref.id;
      let own = sums.get(id);
      if (!own) {
        own = new Float64Array(bins);
        sums.set(id, own);
      }
      const [du, dv] = [support.to[0] - support.from[0], support.to[1] - support.from[1]];
      const square = du * du + dv * dv;
      const t = square > 0 ? ((uv[0] - support.from[0]) * du + (uv[1] - support.from[1]) * dv) / square : 0;
      const bin = Math.min(bins - 1, Math.max(0, Math.floor(t * bins)));
      own[bin] = (own[bin] ?? 0) + area;
    },
  };
}

function share(
  low: readonly [number, number],
  high: readonly [number, number],
  supports: readonly Support[],
): Map<string, Float64Array> {
  const bins = gather(CELLS);
  const [du, dv] = [(high[0] - low[0]) / CELLS, (high[1] - low[1]) / CELLS];
  for (let i = 0; i < CELLS; i += 1) {
    for (let j = 0; j < CELLS; j += 1) {
      const uv = [low[0] + (i + 0.5) * du, low[1] + (j + 0.5) * dv] as const;
      const area = du * dv;
      const alongU = between(supports, 1, uv[1], uv[0]);
      const alongV = between(supports, 0, uv[0], uv[1]);
      const spanU = alongU.low && alongU.high ? alongU.high.at - alongU.low.at : Infinity;
      const spanV = alongV.low && alongV.high ? alongV.high.at - alongV.low.at : Infinity;
      // Two strips that cross share a load so that they sag alike: as the fourth powers of the other's span.
      let partU = 0;
      if (Number.isFinite(spanU) && Number.isFinite(spanV))
        partU = spanV ** 4 / Math.max(spanU ** 4 + spanV ** 4, 1e-30);
      else if (Number.isFinite(spanU)) partU = 1;
      const lever = (found: Between, at: number, axis: 0 | 1, part: number): void => {
        if (part <= 0 || !found.low || !found.high) return;
        const span = found.high.at - found.low.at;
        const toHigh = span > 1e-9 ? (at - found.low.at) / span : 0.5;
        const place = (value: number): readonly [number, number] => (axis === 0 ? [value, uv[1]] : [uv[0], value]);
        bins.add(found.low.support, place(found.low.at), area * part * (1 - toHigh));
        bins.add(found.high.support, place(found.high.at), area * part * toHigh);
      };
      if (Number.isFinite(spanU) || Number.isFinite(spanV)) {
        lever(alongU, uv[0], 0, partU);
        lever(alongV, uv[1], 1, Number.isFinite(spanV) ? 1 - partU : 0);
        continue;
      }
      // An overhang rests on the bar nearest to it.
      const sides = [alongU.low, alongU.high, alongV.low, alongV.high].filter((side) => side !== undefined);
      const near = [
        alongU.low && uv[0] - alongU.low.at,
        alongU.high && alongU.high.at - uv[0],
        alongV.low && uv[1] - alongV.low.at,
        alongV.high && alongV.high.at - uv[1],
      ].filter((d) => d !== undefined);
      let best = 0;
      for (const [k, d] of near.entries()) if (d < (near[best] ?? Infinity)) best = k;
      const side = sides[best] ?? nearestSupport(supports, uv);
      if (side) bins.add(side.support, uv, area);
    }
  }
  return bins.sums;
}

function nearestSupport(supports: readonly Support[], uv: readonly [number, number]): { support: Support } | undefined {
  let best: { support: Support; distance: number } | undefined;
  for (const support of supports) {
    const [du, dv] = [support.to[0] - support.from[0], support.to[1] - support.from[1]];
    const square = du * du + dv * dv;
    const t =
      square > 0
        ? Math.min(1, Math.max(0, ((uv[0] - support.from[0]) * du + (uv[1] - support.from[1]) * dv) / square))
        : 0;
    const distance = Math.hypot(uv[0] - support.from[0] - t * du, uv[1] - support.from[1] - t * dv);
    if (!best || distance < best.distance) best = { support, distance };
  }
  return best;
}

/**
 * How a load on a panel goes to the bars that hold it. The panel is cut into cells; each spans both ways between the bars
 * next to it, sharing its load between the two ways so that strips crossing there sag alike (Rankine–Grashof), and each
 * strip passes its share to the bars at its ends by the lever. Force and moment stay in balance.
 */
export const panelShares = defineFact<
  ReadonlyMap<string, PanelShare>,
  { bodies: typeof bodies; sheets: typeof sheets }
>({
  id: "panel-shares",
  needs: { bodies, sheets },
  compute({ bodies: all, sheets: laid }, frame) {
    const shares = new Map<string, PanelShare>();
    for (const panel of frame.panels) {
      const ids =
        panel.held.kind === "in-slot"
          ? panel.held.edges.flatMap((edge) => (edge.kind === "bar" ? [edge.bar] : []))
          : panel.held.bars;
      const held = ids.map((id) => all.get(id)).filter((body) => body?.prism !== undefined) as Body[];
      const sheet = laid.find((s) => s.panel === panel);
      const normal = sheet?.normal ?? panelNormal(held);
      if (!normal || held.length === 0) continue;
      const [u, v] = planeAxes(normal);
      const flat = (p: Vec3): readonly [number, number] => [dot(p, u), dot(p, v)];
      const supports = held.map(
        (body): Support => ({ body, from: flat(cutPoint(body, "from")), to: flat(cutPoint(body, "to")) }),
      );
      const corners = sheet ? sheet.corners.map(flat) : supports.flatMap((s) => [s.from, s.to]);
      const us = corners.map((c) => c[0]);
      const vs = corners.map((c) => c[1]);
      const low = [Math.min(...us), Math.min(...vs)] as const;
      const high = [Math.max(...us), Math.max(...vs)] as const;
      const strips: PanelStrip[] = [];
      for (const [bar, sums] of share(low, high, supports)) {
        const body = all.get(bar);
        if (!body) continue;
        const [a, b] = [cutStation(body, "from"), cutStation(body, "to")];
        const step = (b - a) / CELLS;
        for (const [i, area] of sums.entries())
          if (area !== 0) strips.push({ bar, from: a + i * step, to: a + (i + 1) * step, areaPerLength: area / step });
      }
      shares.set(panel.ref.id, { panel, normal, area: (high[0] - low[0]) * (high[1] - low[1]), strips });
    }
    return shares;
  },
});

/** Normal of the plane that the bars round a panel lie in. */
function panelNormal(held: readonly Body[]): Vec3 | undefined {
  const [first, ...others] = held;
  if (!first) return undefined;
  for (const other of others) {
    const across =
      Math.abs(dot(first.axes.x, other.axes.x)) > 0.9
        ? subtract(cutPoint(other, "from"), cutPoint(first, "from"))
        : other.axes.x;
    const n: Vec3 = [
      first.axes.x[1] * across[2] - first.axes.x[2] * across[1],
      first.axes.x[2] * across[0] - first.axes.x[0] * across[2],
      first.axes.x[0] * across[1] - first.axes.x[1] * across[0],
    ];
    const size = Math.hypot(...n);
    if (size > 1e-9) return [n[0] / size, n[1] / size, n[2] / size];
  }
  return undefined;
}
