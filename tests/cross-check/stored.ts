import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Answers } from "./answers.ts";

export const DECKS = fileURLToPath(new URL("decks/", import.meta.url));
export const RESULTS = fileURLToPath(new URL("results.json", import.meta.url));

/** What CalculiX said when the results were stored. */
export interface StoredResults {
  readonly solver: string;
  readonly version: string;
  readonly frames: Readonly<Record<string, { readonly closed: readonly boolean[]; readonly answers: Answers }>>;
}

export const readResults = (): StoredResults => JSON.parse(readFileSync(RESULTS, "utf8")) as StoredResults;
