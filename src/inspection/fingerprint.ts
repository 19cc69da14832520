import { createHash } from "node:crypto";
import type { Ref } from "../model/ref.ts";

/** Hex digits kept: 128 bits tell the findings of any run apart. */
const LENGTH = 32;

/** A name for a finding that outlives reformatting, reordering and another measured value: rule, message and parts only. */
export function fingerprint(rule: string, key: string, parts: readonly Ref[]): string {
  const hash = createHash("sha256");
  // Each piece by its length, so that no two lists of parts read alike.
  for (const piece of [rule, key, ...parts.flatMap((part) => [part.kind, part.id])])
    hash.update(`${piece.length}:${piece};`);
  return hash.digest("hex").slice(0, LENGTH);
}
