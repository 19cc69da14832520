/** A number or text as it stands in the file, as part of a name: without blanks. */
export function showNumber(written: number | string): string {
  return String(written).trim().replace(/\s+/g, "-");
}
