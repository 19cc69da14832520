import type { Edit } from "../cures/cure.ts";

const plainKey = (key: string): string => key.replaceAll("~1", "/").replaceAll("~0", "~");

/** A copy of a file's value with edits made in order; undefined where an edit names a place that is not there. */
export function applyEdits(value: unknown, edits: readonly Edit[]): unknown {
  const copy: unknown = structuredClone(value);
  for (const { pointer, to } of edits) {
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
