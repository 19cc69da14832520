function finite(key: string, value: unknown): unknown {
  if (typeof value === "number" && !Number.isFinite(value))
    throw new RangeError(`${key || "a value"} is ${value}, which JSON cannot hold`);
  return value;
}

/**
 * JSON on one line, where JSON.stringify would write null for a number that is not finite.
 * @throws RangeError on such a number.
 */
export function safeJson(value: unknown): string {
  return JSON.stringify(value, finite);
}
