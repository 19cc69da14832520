/** Relative size of what floating-point arithmetic leaves over in a long calculation: forgiven, and nothing more. */
const ROUNDING = 1e-9;

/** Whether a measured value keeps its limit. The one place where the tool compares. */
export function keeps(measured: number, limit: number, sense: "at most" | "at least"): boolean {
  const slack = ROUNDING * Math.max(Math.abs(measured), Math.abs(limit));
  return sense === "at most" ? measured <= limit + slack : measured >= limit - slack;
}

/** Demand over capacity, whichever of the two is measured; undefined where the capacity is zero. */
export function utilisation(measured: number, limit: number, sense: "at most" | "at least"): number | undefined {
  const [demand, capacity] = sense === "at most" ? [measured, limit] : [limit, measured];
  if (!(capacity > 0) || !(demand >= 0)) return undefined;
  const share = demand / capacity;
  return Number.isFinite(share) ? share : undefined;
}
