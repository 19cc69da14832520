import type { Frame } from "../model/frame.ts";

const OUT = " pulled out";

/** The load case of a thing that is pulled out, by the id of its mass: no id of a file has a space. */
export const pulledOut = (mass: string): string => `${mass}${OUT}`;

/** Whether something is pulled out where these cases act. */
export const hasPulledOut = (acts: readonly string[]): boolean => acts.some((name) => name.endsWith(OUT));

/** Names of the cases that equipment makes, pushed in and pulled out. */
export function equipmentCases({ masses }: Pick<Frame, "masses">): ReadonlySet<string> {
  return new Set(masses.flatMap(({ ref, slides }) => (slides ? [ref.id, pulledOut(ref.id)] : [ref.id])));
}

/** Whether two cases cannot act together: a thing is in one place, and of what an interlock holds one is out at a time. */
export function slidesExclude({ masses }: Pick<Frame, "masses">): (a: string, b: string) => boolean {
  const sliding = masses.filter(({ slides }) => slides);
  const interlocked = new Set(sliding.flatMap(({ ref, slides }) => (slides?.interlock ? [pulledOut(ref.id)] : [])));
  const twice = new Map(sliding.filter(({ fixed }) => !fixed).map(({ ref }) => [ref.id, pulledOut(ref.id)]));
  return (a, b) => (interlocked.has(a) && interlocked.has(b)) || twice.get(a) === b || twice.get(b) === a;
}
