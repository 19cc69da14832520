import type { Frame } from "../model/frame.ts";
import { slidesExclude } from "./slides.ts";

/** Whether two cases cannot act together, by their names. */
export type Excludes = (a: string, b: string) => boolean;

/** What the frame file says of its own load cases; it holds both ways. */
export function casesExclude({ cases }: Pick<Frame, "cases">): Excludes {
  const apart = new Map(cases.map(({ id, excludes }) => [id, new Set(excludes)]));
  return (a, b) => (apart.get(a)?.has(b) ?? false) || (apart.get(b)?.has(a) ?? false);
}

/** What the frame file says, and that a thing which slides is in one place. */
export function allExclude(frame: Pick<Frame, "cases" | "masses">): Excludes {
  const [declared, slides] = [casesExclude(frame), slidesExclude(frame)];
  return (a, b) => slides(a, b) || declared(a, b);
}
