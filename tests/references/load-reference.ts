import { readFileSync } from "node:fs";

/** One published check value; units and provenance travel with it. */
export interface ReferenceCheck {
  readonly id: string;
  readonly quantity: string;
  readonly inputs: Readonly<Record<string, { readonly value: unknown; readonly unit: string }>>;
  readonly expected: { readonly value: unknown; readonly unit: string };
  readonly tolerance: { readonly kind: "rel" | "abs" | "exact"; readonly value: number };
  readonly source: string;
  readonly provenance: "published" | "published-from-memory" | "derived" | "common-practice";
  readonly rederived?: boolean;
  readonly note?: string;
}

export interface ReferenceFamily {
  readonly family: string;
  readonly models?: Readonly<Record<string, unknown>>;
  readonly checks: readonly ReferenceCheck[];
}

/** Reads one family of check values, for example `loadReference("beams")`. */
export function loadReference(family: string): ReferenceFamily {
  return JSON.parse(readFileSync(new URL(`./${family}.json`, import.meta.url), "utf8")) as ReferenceFamily;
}

/** The check with this id; throws when the family has none, so that a test can never check nothing. */
export function referenceCheck(family: string, id: string): ReferenceCheck {
  const found = loadReference(family).checks.find((check) => check.id === id);
  if (!found) throw new Error(`no reference check ${id} in ${family}`);
  return found;
}
