/** Today's date in UTC as "2027-03-31": the one place where a clock is read. */
export function today(): string {
  return new Date().toISOString().slice(0, "2027-03-31".length);
}
