import type { BarForces } from "../../facts/bar-forces.ts";
import { showHidden } from "../../model/text/quote.ts";
import { formatQuantity } from "../../model/units/format-quantity.ts";
import type { Quantity } from "../../model/units/quantity.ts";
import { count } from "../count.ts";
import { safeJson } from "../json/safe-json.ts";
import type { StaticsLine, StaticsSheet, Triple } from "./statics-sheet.ts";

type Print = (value: number, quantity: Quantity) => string;

const triple = (print: Print, values: Triple, quantity: Quantity): string =>
  values.map((value) => print(value, quantity)).join(", ");

function barWords(print: Print, { N, Vy, Vz, T, My, Mz, sag }: BarForces): string {
  const bends = sag === undefined ? "" : `, sags ${print(sag, "length")}`;
  return `N ${print(N[0], "force")} to ${print(N[1], "force")}, V ${print(Vy, "force")} along its y, ${print(Vz, "force")} along its z, T ${print(T, "moment")}, M ${print(My, "moment")} about its y, ${print(Mz, "moment")} about its z${bends}`;
}

function* lineText(line: StaticsLine, print: Print): Generator<string> {
  yield `\n${showHidden(line.combination)}; joints ${line.joints}\n`;
  yield `  applied    ${triple(print, line.applied.force, "force")}; about the origin ${triple(print, line.applied.moment, "moment")}\n`;
  for (const { foot, force, moment } of line.feet) {
    const turning = moment.some((m) => m !== 0) ? `; moment ${triple(print, moment, "moment")}` : "";
    yield `  ${showHidden(foot)}    ${triple(print, force, "force")}${turning}\n`;
  }
  yield `  left over  ${line.residual.toExponential(1)} of all that meets\n`;
  if (line.bar) yield `  bar ${showHidden(line.bar.bar)}  ${barWords(print, line.bar)}\n`;
}

/** The free-body sums in words: forces and moments along x, y, z. */
export function* staticsText(sheet: StaticsSheet): Generator<string> {
  const print: Print = (value, quantity) => formatQuantity(value, quantity, sheet.units);
  yield `${showHidden(sheet.file)} · ${showHidden(sheet.title)}\nForces and moments along x, y, z\n`;
  let worst = 0;
  for (const line of sheet.lines) {
    worst = Math.max(worst, line.residual);
    yield* lineText(line, print);
  }
  yield `\n${count(sheet.lines.length, "free body", "free bodies")}; at most ${worst.toExponential(1)} left over.\n`;
}

/** The free-body sums as one JSON document in SI: m, N, N·m. */
export function* staticsJson({ file, title, lines }: StaticsSheet): Generator<string> {
  yield safeJson({ formatVersion: "1.0", file, title, bodies: lines });
  yield "\n";
}
