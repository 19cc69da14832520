import { showHidden } from "../../model/text/quote.ts";
import { formatQuantity } from "../../model/units/format-quantity.ts";
import { count, listed } from "../count.ts";
import { type CutSheet, massesOf, type ProfilePlan } from "./cut-sheet.ts";
import { cutWords, operationWords, workWords } from "./operation-words.ts";

const headings: Readonly<Record<string, string>> = {
  cap: "Caps",
  connector: "Connectors",
  gasket: "Strips between slot and panel",
  nut: "Nuts",
  screw: "Screws",
  sheet: "Panels",
  stand: "Feet and casters",
};

function* planLines(plan: ProfilePlan, sheet: CutSheet): Generator<string> {
  const { nesting } = plan;
  const mm = (value: number): string => formatQuantity(value, "length", sheet.units);
  const best = nesting.bars.length > nesting.atLeast ? `; no plan can do with fewer than ${nesting.atLeast}` : "";
  yield `\n${plan.profile}: ${count(nesting.bars.length, "stock bar")} of ${mm(plan.stock)}, saw cut ${mm(sheet.kerf)}, ${formatQuantity(plan.mass, "mass", sheet.units)} of bars${best}\n`;
  for (const [i, bar] of nesting.bars.entries()) {
    yield `  ${i + 1}: ${bar.pieces.map((piece) => `${showHidden(piece.id)} ${mm(piece.length)}`).join(" | ")} | rest ${mm(bar.rest)}\n`;
  }
  for (const piece of nesting.tooLong)
    yield `  ${showHidden(piece.id)} is ${mm(piece.length)} long: longer than a stock bar\n`;
}

/** "44.4 kg of bars, 35 kg of panels, 1.2 kg of connectors, 0.8 kg of feet and casters: 81.4 kg in all". */
function massWords(sheet: CutSheet): string {
  const { bar, sheet: panels, connector, stand } = massesOf(sheet);
  const kg = (mass: number): string => formatQuantity(mass, "mass", sheet.units);
  const kinds = [
    [bar, "bars"],
    [panels, "panels"],
    [connector, "connectors"],
    [stand, "feet and casters"],
  ] as const;
  const known = kinds.filter(([mass]) => mass > 0).map(([mass, what]) => `${kg(mass)} of ${what}`);
  return `${listed(known)}: ${kg(bar + panels + connector + stand)}, without screws, nuts, caps and strips.`;
}

/** The cut list as the saw and the store want it. */
export function* cutText(sheet: CutSheet): Generator<string> {
  yield `${showHidden(sheet.file)} · ${showHidden(sheet.title)}\n`;
  if (sheet.lines.length > 0) yield "\nBars\n";
  for (const line of sheet.lines) {
    const cuts = cutWords(line, sheet.units);
    const length = `${formatQuantity(line.length, "length", sheet.units)}${cuts === "" ? "" : ` ${cuts}`}`;
    const work = operationWords(line.operations, sheet.units);
    yield `  ${line.bars.length} × ${line.profile.name}, ${length}${work === "" ? "" : `; ${work}`}\n`;
    yield `      ${line.bars.map(showHidden).join(", ")}\n`;
  }
  for (const plan of sheet.plans) yield* planLines(plan, sheet);
  let heading = "";
  for (const part of sheet.counts) {
    const own = headings[part.kind] ?? part.kind;
    if (own !== heading) yield `\n${own}\n`;
    heading = own;
    const sides = (pair: readonly number[]): string =>
      pair.map((side) => formatQuantity(side, "length", sheet.units)).join(" × ");
    const size = part.size ? `, ${part.corners ? "cut from " : ""}${sides(part.size)}` : "";
    const place = (at: readonly number[]): string =>
      `(${at.map((side) => formatQuantity(side, "length", sheet.units)).join(", ")})`;
    const corners = part.corners ? ` with corners at ${listed(part.corners.map(place))}` : "";
    const length = part.length === undefined ? "" : `, ${formatQuantity(part.length, "length", sheet.units)}`;
    const notches = part.notches ? `, corners notched ${sides(part.notches)}` : "";
    const each =
      part.kind === "sheet" && part.mass !== undefined ? `, ${formatQuantity(part.mass, "mass", sheet.units)}` : "";
    const apiece = each !== "" && part.count > 1 ? `${each} each` : each;
    yield `  ${part.count} × ${part.name}${size}${corners}${length}${notches}${apiece}\n`;
  }
  yield `\n${massWords(sheet)}\n`;
  if (sheet.arrivals.length > 0) yield "\nArrives built\n";
  for (const { ref, mass, parts, work } of sheet.arrivals) {
    yield `  ${showHidden(ref.id)}, ${formatQuantity(mass, "mass", sheet.units)}\n      ${parts.map(showHidden).join(", ")}\n`;
    if (work.length > 0) yield `      still to do: ${workWords(work, sheet.units)}\n`;
  }
  yield "\nWear eye protection and hearing protection at the saw, gloves for sawn bars but not near turning tools;\ndeburr every cut before assembly. Check lengths against the drawing before the first cut.\n";
}
