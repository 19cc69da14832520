import { createHash } from "node:crypto";

const HEX_DIGITS = 32;

/**
 * Marks by which a finding is known again in a later run: made from file, rule, message and parts, never from lines or values.
 * The first is the one that ingesters of code scanning read.
 */
export function fingerprints(file: string, print: string): Readonly<Record<string, string>> {
  const hash = createHash("sha256").update(file).update("\0").update(print).digest("hex").slice(0, HEX_DIGITS);
  return { primaryLocationLineHash: `${hash}:1`, "frameElement/v1": hash };
}
