import { quote } from "../text/quote.ts";
import type { Placement } from "./placement.ts";
import { refuse, type Work } from "./work.ts";

/** One copy that an entry of `copies` makes. */
export interface Instance {
  /** Of the entry. */
  readonly pointer: string;
  readonly suffix: string;
  readonly placement: Placement;
  /** The originals: what is not among them keeps its id. */
  readonly ids: ReadonlySet<string>;
}

/** What one entry makes. */
export interface CopyStep {
  readonly ids: ReadonlySet<string>;
  readonly instances: readonly Instance[];
}

/** Most parts of one kind in a frame; more bars are refused also when drawn. */
export const MOST_PARTS = 500_000;

export function renamed({ ids, suffix }: Instance, id: string): string {
  return ids.has(id) ? id + suffix : id;
}

interface Copying<Part> {
  /** The parts that must all be copied for this one to be. */
  needs(part: Part): readonly string[];
  /** The copy, or undefined with a complaint. */
  copy(part: Part, instance: Instance): Part | undefined;
}

/** The parts and all their copies: the drawn ones first, then entry by entry. */
export function withCopies<Part>(
  work: Work,
  steps: readonly CopyStep[],
  drawn: Part[],
  { needs, copy }: Copying<Part>,
): readonly Part[] {
  const parts = drawn;
  const byFirst = new Map<string, Part[]>();
  const index = (part: Part): void => {
    const [first] = needs(part);
    if (first === undefined) return;
    const list = byFirst.get(first);
    if (list === undefined) byFirst.set(first, [part]);
    else list.push(part);
  };
  if (steps.length > 0) for (const part of parts) index(part);
  for (const { ids, instances } of steps) {
    const chosen: Part[] = [];
    for (const id of ids) {
      for (const part of byFirst.get(id) ?? []) if (needs(part).every((one) => ids.has(one))) chosen.push(part);
    }
    if (parts.length + chosen.length * instances.length > MOST_PARTS) {
      const found = `${chosen.length} parts ${instances.length} times`;
      const expected = `at most ${MOST_PARTS} parts of a kind`;
      refuse(work, "too-many-parts", instances[0]?.pointer ?? "/copies", { found, expected });
      return Object.freeze(parts);
    }
    for (const instance of instances) {
      for (const part of chosen) {
        const made = copy(part, instance);
        if (made === undefined) continue;
        parts.push(made);
        index(made);
      }
    }
  }
  return Object.freeze(parts);
}

/** The id of a copy of a part that named itself or was named by its author. */
export function copyId(id: string, { suffix }: Instance): string {
  // Ids made up here hold a dot, which no author's id does: a dot more keeps them apart from all others.
  return id.includes(".") ? `${id}.${suffix}` : id + suffix;
}

/** Says that a part has no mirror image. */
export function refuseImage(work: Work, part: string, what: string, { pointer }: Instance): undefined {
  const found = `"${quote(part)}", whose ${what} has no mirror image`;
  refuse(work, "no-mirror-image", `${pointer}/mirror`, {
    found,
    expected: "parts that are their own mirror image",
    mend: "draw this part",
  });
  return undefined;
}
