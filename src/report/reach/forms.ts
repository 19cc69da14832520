import { WIDEST } from "../../facts/hands.ts";
import type { Trial } from "../../facts/tool-trial.ts";
import { showHidden } from "../../model/text/quote.ts";
import { formatQuantity } from "../../model/units/format-quantity.ts";
import { safeJson } from "../json/safe-json.ts";
import type { ReachLine, ReachScrew, ReachSheet } from "./reach-sheet.ts";

/** A way in words: "hex-key-6 by its short arm". */
export const wayWords = ({ way }: Pick<Trial, "way">): string => `${showHidden(way.tool.name)} by its ${way.by}`;

/** A width across a handle in words; room is not looked for any further than hands may ask. */
export function handWords(width: number, units: ReachSheet["units"]): string {
  return `${formatQuantity(width, "length", units)}${width < WIDEST ? "" : " or more"} across`;
}

/** What a way finds, in words with the frame's units. */
export function reachWords({ trial, serves, inTheWay, hand }: ReachLine, units: ReachSheet["units"]): string {
  const part = inTheWay === undefined ? "" : showHidden(inTheWay);
  if (trial.straight < trial.asks) {
    const [room, asks] = [trial.straight, trial.asks].map((length) => formatQuantity(length, "length", units));
    return `does not go in: ${room} free before ${part}, ${asks} needed`;
  }
  const arc = formatQuantity(trial.swing, "angle", units);
  const swing = formatQuantity(trial.way.tool.swing, "angle", units);
  const stop = part === "" ? "" : `, ${part} most in the way`;
  const held = hand === undefined ? "" : `; the hand has ${handWords(hand, units)}`;
  return `${serves ? "turns" : "does not turn:"} ${arc}${serves ? "" : " free"}, ${swing} needed${stop}${held}`;
}

/** The least move that helps, in words: "move doubler by 12 mm towards front/to". */
function moveWords(move: ReachScrew["move"], units: ReachSheet["units"]): string {
  if (move === undefined) return "";
  if (move === "none") return "no move along its slot was found that frees it";
  const by = formatQuantity(move.by, "length", units);
  return `free once ${showHidden(move.moves)} is moved ${by} towards ${showHidden(move.towards)}`;
}

function* screwText({ room, lines, atEnd, move }: ReachScrew, sheet: ReachSheet): Generator<string> {
  const { screw, socket } = room;
  if (sheet.one) {
    const depth = formatQuantity(socket.depth, "length", sheet.units);
    yield `${showHidden(screw.ref.id)}, ${showHidden(screw.screw.name)}: the tip of a tool goes ${depth} deep\n`;
    if (lines.length === 0) yield "  no tool in stock fits: none has its size, its torque and the length\n";
    const widest = Math.max(0, ...lines.map(({ trial }) => wayWords(trial).length));
    for (const line of lines) yield `  ${wayWords(line.trial).padEnd(widest)}  ${reachWords(line, sheet.units)}\n`;
    const moved = moveWords(move, sheet.units);
    if (moved !== "") yield `${moved.charAt(0).toUpperCase()}${moved.slice(1)}.\n`;
    yield atEnd
      ? "With everything in place a tool still gets there.\n"
      : "With everything in place no tool gets there any more.\n";
    return;
  }
  const [line] = lines;
  yield line
    ? `  ${showHidden(screw.ref.id)}: ${wayWords(line.trial)} ${reachWords(line, sheet.units)}${atEnd ? "" : "; covered in the end"}${move === undefined ? "" : `; ${moveWords(move, sheet.units)}`}\n`
    : `  ${showHidden(screw.ref.id)}: no tool in stock fits\n`;
}

/** One line a screw, or one a way to hold a tool. */
export function* reachText(sheet: ReachSheet): Generator<string> {
  if (!sheet.one) yield `${showHidden(sheet.file)}, ${sheet.list.length} screws\n`;
  for (const screw of sheet.list) yield* screwText(screw, sheet);
}

/** The same as one JSON document in SI: m, rad. */
export function* reachJson(sheet: ReachSheet): Generator<string> {
  yield safeJson({
    formatVersion: "1.0",
    file: sheet.file,
    screws: sheet.list.map(({ room, lines, atEnd, move }) => ({
      screw: room.screw.ref.id,
      mouth: room.socket.mouth,
      out: room.socket.out,
      depth: room.socket.depth,
      reachedInTheEnd: atEnd,
      ...(move === undefined ? {} : { leastMove: move === "none" ? null : move }),
      ways: lines.map(({ trial, serves, inTheWay, hand }) => ({
        tool: trial.way.tool.name,
        by: trial.way.by,
        serves,
        freeLength: Number.isFinite(trial.straight) ? trial.straight : null,
        lengthNeeded: trial.asks,
        freeArc: trial.swing,
        arcNeeded: trial.way.tool.swing,
        freeArcs: trial.free,
        inTheWay: inTheWay ?? null,
        handWidth: hand ?? null,
      })),
    })),
  });
  yield "\n";
}
