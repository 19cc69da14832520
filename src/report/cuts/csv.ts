import type { CutSheet } from "./cut-sheet.ts";
import { cutWords, operationWords, workWords } from "./operation-words.ts";

/** Decimals of a length in a table: 0.01 mm or 0.0001 in. */
const places = {
  "mm-N-kg": { scale: 1000, decimals: 2, unit: "mm", perKg: 1, mass: "kg" },
  "in-lbf-lb": { scale: 1 / 0.0254, decimals: 4, unit: "in", perKg: 1 / 0.45359237, mass: "lb" },
} as const;

/** One field of a table (RFC 4180); what a spreadsheet would run as a formula is kept as text. */
function field(value: string | number): string {
  const text = String(value);
  const safe = typeof value === "string" && /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

const row = (...fields: readonly (string | number)[]): string => `${fields.map(field).join(",")}\r\n`;

/** The cut list as a table: a line for each kind of bar, then one for each kind of part, then what arrives built. */
export function* cutCsv(sheet: CutSheet): Generator<string> {
  const { scale, decimals, unit, perKg, mass } = places[sheet.units];
  const weighs = (kg: number | undefined): string => (kg === undefined ? "" : (kg * perKg).toFixed(3));
  yield row("kind", "name", "count", `length ${unit}`, `width ${unit}`, "work", "bars", `${mass} each`);
  for (const line of sheet.lines) {
    yield row(
      "bar",
      line.profile.name,
      line.bars.length,
      (line.length * scale).toFixed(decimals),
      "",
      [cutWords(line, sheet.units), operationWords(line.operations, sheet.units)].filter(Boolean).join("; "),
      line.bars.join(" "),
      weighs(line.mass),
    );
  }
  for (const part of sheet.counts) {
    const size = (part.size ?? (part.length === undefined ? [] : [part.length])).map((side) =>
      (side * scale).toFixed(decimals),
    );
    const notches = part.notches?.map((side) => `${(side * scale).toFixed(decimals)} ${unit}`).join(" x ");
    const corners = part.corners?.map((at) => at.map((side) => (side * scale).toFixed(decimals)).join("/")).join(" ");
    const work = [
      ...(corners === undefined ? [] : [`cut to corners ${corners} ${unit}`]),
      ...(notches === undefined ? [] : [`corners notched ${notches}`]),
    ].join("; ");
    yield row(part.kind, part.name, part.count, size[0] ?? "", size[1] ?? "", work, "", weighs(part.mass));
  }
  for (const { ref, parts, work, mass: kg } of sheet.arrivals)
    yield row("arrives built", ref.id, 1, "", "", workWords(work, sheet.units), parts.join(" "), weighs(kg));
}
