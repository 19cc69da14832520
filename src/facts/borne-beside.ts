import { type Between, between, nearestSupport, pastEnds, type Strip, type Support } from "./supports-beside.ts";

/** A piece of what a thing covers of a panel, or a point of it. */
export interface Patch {
  readonly at: readonly [number, number];
  readonly size: readonly [number, number];
}

/** What a support bears of a thing: parts of its length from 0 to 1, alike for a point, and a share of the whole. */
export interface Borne {
  readonly support: Support;
  readonly from: number;
  readonly to: number;
  readonly share: number;
}

/** How far a strip over its two supports gives under a force on it, but for 3EI: a²b²/L between them, c²(L + c) past them (Gere). */
function gives({ low, high, inside }: Between, at: number): number {
  const span = high.at - low.at;
  const past = Math.max(low.at - at, at - high.at);
  return inside ? ((at - low.at) * (high.at - at)) ** 2 / span : past ** 2 * (span + past);
}

/** Where a strip at a constant u (or v) bears on a support: as much of the support as the strip is wide. */
function stretch({ from, to }: Support, fixed: 0 | 1, value: number, width: number): readonly [number, number] {
  const run = to[fixed] - from[fixed];
  const within = (t: number): number => Math.min(1, Math.max(0, t));
  const [middle, half] = [(value - from[fixed]) / run, width / 2 / Math.abs(run)];
  return [within(middle - half), within(middle + half)];
}

/**
 * Shares a thing that weighs alike on each of its patches among the supports next to it. Each patch lies on two strips that cross;
 * they share it so that they give alike there, and each passes its share by the lever to the two supports that have it between
 * them. Right over a support a strip gives nothing, so that one bears it.
 */
export function borneBeside(supports: readonly Support[], patches: readonly Patch[]): readonly Borne[] {
  const borne = new Map<string, Borne>();
  const add = (support: Support, key: string, [from, to]: readonly [number, number], share: number): void => {
    const id = `${support.body.bar.ref.id} ${key}`;
    borne.set(id, { support, from, to, share: share + (borne.get(id)?.share ?? 0) });
  };
  for (const { at, size } of patches) {
    const part = 1 / patches.length;
    const through = ([1, 0] as const).flatMap((fixed): readonly Strip[] => {
      const [along, value] = [at[1 - fixed] ?? 0, at[fixed]];
      const found = between(supports, fixed, value, along);
      return found ? [{ fixed, value, along, found }] : [];
    });
    // What the place past the ends leaves of its moment goes to all that bear it.
    const strips = through.length > 0 ? through : pastEnds(supports, at);
    const soft = strips.map(({ found, along }) => gives(found, along));
    const all = soft.reduce((a, b) => a + b, 0);
    for (const [i, { fixed, value, along, found }] of strips.entries()) {
      const way = strips.length === 1 ? 1 : all > 0 ? 1 - (soft[i] ?? 0) / all : 0.5;
      const toHigh = (along - found.low.at) / (found.high.at - found.low.at);
      for (const [{ support }, share] of [
        [found.low, 1 - toHigh],
        [found.high, toHigh],
      ] as const)
        add(support, `${fixed} ${value}`, stretch(support, fixed, value, size[fixed]), part * way * share);
    }
    if (strips.length > 0) continue;
    const near = nearestSupport(supports, at);
    if (near) add(near.support, `at ${near.t}`, [near.t, near.t], part);
  }
  return [...borne.values()].filter(({ share }) => share !== 0);
}
