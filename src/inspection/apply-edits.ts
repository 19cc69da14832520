import type { Edit } from "../cures/cure.ts";

const plainKey = (key: string): string => key.replaceAll("~1", "/").replaceAll("~0", "~");

/** A copy of a file's value with edits made in order; undefined where an edit names a place that is not there. */
export function applyEdits(file: unknown, edits: readonly Edit[]): unknown {
  const copy: unknown = structuredClone(file);
  for (const { pointer, to: value } of edits) {
    // A copy too: a later edit may add to it, and the edits must make the same change the next time.
    const to: unknown = structuredClone(value);
    const keys = pointer.split("/").slice(1).map(plainKey);
    const last = keys.pop();
    if (last === undefined) return undefined;
    let at: unknown = copy;
    for (const key of keys) {
      if (typeof at !== "object" || at === null || !Object.hasOwn(at, key)) return undefined;
      at = (at as Record<string, unknown>)[key];
    }
    if (Array.isArray(at)) {
      if (last === "-") at.push(to);
      else if (to === undefined) at.splice(Number(last), 1);
      else at[Number(last)] = to;
    } else if (typeof at === "object" && at !== null) {
      if (to === undefined) delete (at as Record<string, unknown>)[last];
      // Any name is an ordinary key here, "__proto__" included.
      else Object.defineProperty(at, last, { value: to, enumerable: true, configurable: true, writable: true });
    } else return undefined;
  }
  return copy;
}
