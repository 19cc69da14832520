import type { PlannedPiece, PlannedStep, Tightening } from "../../facts/build-plan.ts";
import { showHidden } from "../../model/text/quote.ts";
import { formatQuantity } from "../../model/units/format-quantity.ts";
import { count, listed } from "../count.ts";
import type { BuildSheet, Handling } from "./build-sheet.ts";

type Counted = { readonly name: string; readonly count: number };

export const named = (lines: readonly Counted[]): string =>
  listed(lines.map(({ name, count: many }) => `${many} × ${showHidden(name)}`));

/** A way goes this way too where so much of it does: 20° off the others. */
const GOES = Math.sin((20 * Math.PI) / 180);

/** "from above", "moving along +x", and of a slanting way "moving along +x and down". */
export function wayWords(way: PlannedStep["step"]["way"]): string {
  if (!way) return "";
  const [x, y, z] = way;
  const level = [
    { size: x, words: x > 0 ? "+x" : "-x" },
    { size: y, words: y > 0 ? "+y" : "-y" },
  ].filter(({ size }) => Math.abs(size) > GOES);
  if (level.length === 0) return z < 0 ? "from above" : "from below";
  const slope = Math.abs(z) > GOES ? [z < 0 ? "down" : "up"] : [];
  return `moving along ${listed([...level.map(({ words }) => words), ...slope])}`;
}

/** What a piece is called: the author's name, or that of its first bar. */
export function pieceName(piece: Pick<PlannedPiece, "id" | "from" | "bars">): string {
  if (piece.from === "group" || piece.from === "door") return `"${showHidden(piece.id)}"`;
  return `the piece with ${showHidden(piece.bars[0] ?? piece.id)}`;
}

export function torqueWords(lines: readonly Tightening[], sheet: BuildSheet): string {
  const torqueOf = ({ torque }: Tightening): string =>
    torque === undefined ? "until the sheet lies tight" : `to ${formatQuantity(torque, "moment", sheet.units)}`;
  const lock = { none: "", "thread-lock": ", with thread lock", washer: ", with lock washers" };
  return listed(lines.map((line) => `${line.count} × ${showHidden(line.screw)} ${torqueOf(line)}${lock[line.lock]}`));
}

export function handlingWords(handling: Handling, sheet: BuildSheet): string {
  const mass = formatQuantity(handling.mass, "mass", sheet.units);
  if (handling.people === undefined) return `${mass}: use a hoist`;
  return `${mass}: ${count(handling.people, "person", "people")}`;
}

/** "Bolt on motor, 30 kg, more than one person lifts: 2 people." Empty where a step puts no equipment on. */
export function equipmentWords({ equipment, step }: PlannedStep, sheet: BuildSheet): readonly string[] {
  const when = step.what === "place" ? "Before it goes in, " : step.assembly === "" ? "Once it stands, " : "";
  const sentence = (things: PlannedStep["equipment"], verb: string): string[] => {
    const words = things.map((thing) => {
      const handling = sheet.handlingOf(thing);
      const alone = handling.people === 1;
      const mass = alone
        ? formatQuantity(handling.mass, "mass", sheet.units)
        : handlingWords(handling, sheet).replace(":", ", more than one person lifts:");
      return `${showHidden(thing.what)}, ${mass}`;
    });
    const line = `${when}${verb} ${words.join("; ")}.`;
    return things.length > 0 ? [`${line.charAt(0).toUpperCase()}${line.slice(1)}`] : [];
  };
  return [
    ...sentence(
      equipment.filter(({ slides }) => !slides),
      "bolt on",
    ),
    ...sentence(
      equipment.filter(({ slides }) => slides),
      "push in",
    ),
  ];
}

/** Cautions that belong to a step. */
export function cautions(step: PlannedStep, first: boolean, sheet: BuildSheet): readonly string[] {
  const lines: string[] = [];
  if (step.step.what !== "place") return lines;
  const pieces = step.lifts.filter((one) => one.assembly !== undefined);
  if (first && pieces.length > 0 && step.connectors.length === 0)
    lines.push("Hold or clamp both upright until something joins them.");
  for (const one of pieces) {
    const handling = sheet.handlingOf(one);
    if (handling.people !== 1) lines.push(`${showHidden(one.what)}: ${handlingWords(handling, sheet)}.`);
  }
  if (step.step.assembly === "" && (step.lowestScrew ?? 0) > sheet.overhead)
    lines.push("Support it before you screw it; nobody stands under it.");
  if (step.closesIn.length > 0)
    lines.push(`Ease ${listed(step.closesIn.map(showHidden))} into the slot; hands out of the closing corner.`);
  return lines;
}
