/** Freezes plain data all the way down; what a getter would compute stays uncomputed. Returns what it was given. */
export function frozen<T>(value: T): T {
  if (typeof value !== "object" || value === null || Object.isFrozen(value)) return value;
  Object.freeze(value);
  for (const key of Object.keys(value)) {
    const member: unknown = Object.getOwnPropertyDescriptor(value, key)?.value;
    if (typeof member === "object") frozen(member);
  }
  return value;
}

function refuse(): never {
  throw new TypeError("stock cannot be changed");
}

/** A map that can only be read: stock is shared by all frames of a run, so no rule may change it for the next. */
export function readOnly<T>(map: Map<string, T>): ReadonlyMap<string, T> {
  const locked = { value: refuse };
  return Object.freeze(Object.defineProperties(map, { set: locked, delete: locked, clear: locked }));
}
