/** A stretch of angles about an axis [rad], counter-clockwise: from in [0, 2π), to in (from, from + 2π]. It may pass through 2π. */
export interface Arc {
  readonly from: number;
  readonly to: number;
}

export const FULL_TURN = 2 * Math.PI;

/** Arcs nearer than this [rad] are one: rounding, 1e-12 m at a metre's reach. */
export const SAME_ANGLE = 1e-12;

/** The whole turn as an arc. */
export const WHOLE: Arc = { from: 0, to: FULL_TURN };

/** An angle [rad] brought into [0, 2π). */
export function wrap(angle: number): number {
  const rest = angle % FULL_TURN;
  const positive = rest < 0 ? rest + FULL_TURN : rest;
  return positive < FULL_TURN ? positive : 0;
}

export const arcSize = (arc: Arc): number => arc.to - arc.from;

const isWhole = (arc: Arc): boolean => arcSize(arc) + SAME_ANGLE >= FULL_TURN;

/** Whether two arcs share more than their ends. */
export function arcsOverlap(a: Arc, b: Arc): boolean {
  for (const turn of [-FULL_TURN, 0, FULL_TURN]) {
    if (Math.min(a.to, b.to + turn) > Math.max(a.from, b.from + turn)) return true;
  }
  return false;
}

/** Arcs joined where they touch or overlap, in order round the turn; the whole turn comes as one arc from 0. */
export function mergeArcs(arcs: readonly Arc[]): readonly Arc[] {
  const merged: Arc[] = [];
  for (const arc of [...arcs].sort((a, b) => a.from - b.from)) {
    const last = merged[merged.length - 1];
    if (last !== undefined && arc.from <= last.to + SAME_ANGLE) {
      merged[merged.length - 1] = { from: last.from, to: Math.max(last.to, arc.to) };
    } else merged.push(arc);
  }
  return joinOverTurn(merged);
}

/** The last arcs may pass through 2π into the first ones. */
function joinOverTurn(sorted: readonly Arc[]): readonly Arc[] {
  const rest = [...sorted];
  for (;;) {
    const [first, last] = [rest[0], rest[rest.length - 1]];
    if (first === undefined || last === undefined) return rest;
    if (rest.length === 1) return isWhole(first) ? [WHOLE] : rest;
    if (last.to + SAME_ANGLE < first.from + FULL_TURN) return rest;
    rest.shift();
    rest[rest.length - 1] = { from: last.from, to: Math.max(last.to, first.to + FULL_TURN) };
  }
}

/** What of the turn no arc covers, in order. */
export function gapsBetween(arcs: readonly Arc[]): readonly Arc[] {
  const merged = mergeArcs(arcs);
  const [first] = merged;
  if (first === undefined) return [WHOLE];
  if (isWhole(first)) return [];
  const gaps = merged.map((arc, i): Arc => {
    const next = merged[i + 1];
    const from = wrap(arc.to);
    const size = (next === undefined ? first.from + FULL_TURN : next.from) - arc.to;
    return { from, to: from + size };
  });
  return gaps.sort((a, b) => a.from - b.from);
}
