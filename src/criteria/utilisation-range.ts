import type { Within } from "./range.ts";

/** What a utilisation may be set to: half as much again as is trusted, at the most, and never so little that nothing could be built. */
export const UTILISATION: Within = ["0.05", "1.5"];
