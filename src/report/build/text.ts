import type { PlannedStep } from "../../facts/build-plan.ts";
import { showHidden } from "../../model/text/quote.ts";
import { formatQuantity } from "../../model/units/format-quantity.ts";
import { count, listed } from "../count.ts";
import type { BuildSheet, SheetPiece } from "./build-sheet.ts";
import { nameIn } from "./piece-names.ts";
import { runNumbers, stepRuns } from "./step-runs.ts";
import {
  balanceWords,
  cautions,
  equipmentWords,
  handlingWords,
  type NameOf,
  named,
  pieceName,
  raisedWords,
  sideWords,
  torqueWords,
  wayWords,
} from "./step-words.ts";

/** What is lighter is no lift: ISO 11228-1 is for 3 kg and more. */
const LIFTED = 3;
/** So many places name a rule's findings; the rest are counted. */
const MOST_PLACES = 3;
/** Names of caps and screws are cut off after so many: the rest are in the JSON. */
const MOST_CAPS = 8;

function placeWords(step: PlannedStep, first: boolean, nameOf: NameOf): string {
  const names = step.step.places.map((part) => nameOf(step, part.id));
  const way = step.step.assembly === "" ? wayWords(step.step) : "";
  const how = way === "" ? "" : `, ${way}`;
  const [base = "", ...others] = names;
  const what = !first
    ? `Put in ${listed(names)}${how}`
    : others.length > 0 && step.connectors.length > 0
      ? `Take ${base}; put ${listed(others)} on it${how}`
      : `Set ${listed(names)} in place`;
  const drop = step.dropIn.length > 0 ? `; turn in ${named(step.dropIn)}` : "";
  return `${what}${step.connectors.length > 0 ? `: ${named(step.connectors)}, hand-tight` : ""}${drop}.`;
}

function squareWords({ planned: { squareWithin } }: SheetPiece, { units }: BuildSheet): string {
  if (squareWithin === undefined) return "Lay the bars true to each other along their whole length.";
  return `Square it: both diagonals over the outer corners equal within ${formatQuantity(squareWithin, "length", units)}.`;
}

function feetWords({ step, raised }: PlannedStep, sheet: BuildSheet): string {
  if (step.lying || !raised) return "Screw the feet or casters on while it lies";
  return `Tip it, ${raisedWords(raised, sheet)}, and screw the feet or casters on`;
}

function* stepLines(
  step: PlannedStep,
  piece: SheetPiece,
  first: boolean,
  sheet: BuildSheet,
  nameOf: NameOf,
): Generator<string> {
  const { what, places } = step.step;
  const tighten = step.tightens.length > 0 ? `tighten ${torqueWords(step.tightens, sheet)}` : "";
  switch (what) {
    case "place":
      yield placeWords(step, first, nameOf);
      if (step.feetFirst.length > 0)
        yield `Before ${places.length > 1 ? "they go" : "it goes"} in, screw on ${listed(step.feetFirst.map(({ id }) => showHidden(id)))}.`;
      if (step.fixes.length > 0) yield `Screw on: ${torqueWords(step.fixes, sheet)}.`;
      yield* equipmentWords(step, sheet);
      if (tighten !== "") yield `Before anything covers them, ${tighten}.`;
      break;
    case "stand":
      yield `Stand it up${step.raised ? `, ${raisedWords(step.raised, sheet)}` : ""}.`;
      break;
    case "square":
      yield squareWords(piece, sheet);
      if (tighten !== "") yield `Then ${tighten}: half all round, look again, then full, from the middle outwards.`;
      break;
    case "feet":
      yield `${feetWords(step, sheet)}: ${listed(places.map((part) => showHidden(part.id)))}.`;
      break;
    case "equipment":
      yield* equipmentWords(step, sheet);
      break;
    case "finish":
      yield `Push caps on ${listed(
        places.filter((part) => part.kind === "end").map((part) => showHidden(part.id)),
        MOST_CAPS,
      )}.`;
      break;
  }
  yield* cautions(step, sheet, nameOf);
}

/** "leg-4: 1 × nut in A1 (facing +x), 2 in D1 (facing -y); leg-4.foot will close them". */
function* nutLines(bar: string, piece: SheetPiece): Generator<string> {
  const own = piece.planned.nuts.filter((nuts) => nuts.bar === bar);
  for (const nut of new Set(own.map((one) => one.nut))) {
    const slots = own.filter((one) => one.nut === nut);
    const places = slots.map((one) => {
      const spare = piece.spare(one);
      return `${one.count}${spare > 0 ? ` and ${count(spare, "spare")}` : ""} in ${one.slot}`;
    });
    const closing = [...new Set(slots.flatMap((one) => one.closedBy))];
    const closed = closing.length > 0 ? `; shut by ${listed(closing.map(showHidden))}` : "";
    yield `     ${showHidden(bar)}: ${showHidden(nut)}, ${listed(places)}${closed}\n`;
  }
}

/** Of a piece that only the slots round its sheets keep together. */
function* looseLines({ loose }: SheetPiece["planned"]): Generator<string> {
  if (loose.length === 0) return;
  const names = loose.map((set) => listed(set.map(showHidden), MOST_PLACES));
  const apart = loose.some((set) => set.length > 1) ? names.join(" to ") : `${listed(names)} to each other`;
  yield `   Not rigid in itself: no screw joins ${apart}.\n   Put a strap round it, and lift and turn it flat, one person at each end.\n`;
}

/** A line of one step as that of a run of like steps. */
function eachWords(line: string, isFirst: boolean): string {
  if (isFirst) return line.replace("Put in ", "Put in one after the other ").replace(": ", ", each with ");
  return /^(Screw on|Before anything)/.test(line) ? `Each: ${line.charAt(0).toLowerCase()}${line.slice(1)}` : line;
}

function* pieceLines(piece: SheetPiece, letter: string, sheet: BuildSheet, nameOf: NameOf): Generator<string> {
  const { planned, handling } = piece;
  const weight = handling ? `, ${handlingWords(handling, sheet)}` : "";
  const balance =
    handling && planned.balance && handling.mass > LIFTED ? `; ${balanceWords(planned.balance, sheet)}` : "";
  const where = planned.built ? "arrives built" : "flat on a table";
  const title = planned.from === "frame" ? "The frame" : `${pieceName(planned)}, ${where}${weight}${balance}`;
  yield `\n${letter}  ${title.charAt(0).toUpperCase()}${title.slice(1)}\n`;
  if (planned.bars.length > 0 && !planned.built) yield `   Lay out ${listed(planned.bars.map(showHidden))}.\n`;
  if (planned.rawEnds.length > 0)
    yield `   Deburr ${listed(planned.rawEnds.map(showHidden))}: gloves and eye protection on.\n`;
  if (planned.nuts.length > 0) yield "   Lay into the slots, and count them:\n";
  for (const bar of planned.bars) yield* nutLines(bar, piece);
  yield* looseLines(planned);
  const { slotless } = planned;
  if (slotless.length > 0)
    yield `   No slot, or no nut that fits it, for ${count(slotless.length, "screw")}: ${listed(slotless.map(showHidden), MOST_CAPS)}.\n`;
  if (planned.steps[0]?.step.lying && planned.from === "frame") {
    yield `   Begin it lying on ${sideWords(planned)}: some of it goes in from underneath, where the floor would be in the way.\n`;
  }
  if (planned.trapped.length > 0)
    yield `   No way in any more for ${listed(planned.trapped.map(showHidden))}: take drop-in nuts.\n`;
  if (planned.built && planned.nuts.length === 0 && planned.steps.length === 0) yield "   Nothing to do to it.\n";
  let first = true;
  for (const run of stepRuns(planned.steps)) {
    const [step, ...others] = run;
    if (!step) continue;
    const numbers = runNumbers(run);
    const told: PlannedStep =
      others.length > 0
        ? {
            ...step,
            step: { ...step.step, places: run.flatMap((one) => one.step.places) },
            lifts: run.flatMap((one) => one.lifts),
          }
        : step;
    const lines = [...stepLines(told, piece, first, sheet, nameOf)];
    first = false;
    for (const [i, line] of lines.entries()) {
      const each = others.length > 0 ? eachWords(line, i === 0) : line;
      yield `   ${i === 0 ? numbers.padStart(5) : "     "}  ${each}\n`;
    }
  }
}

/** "bar.clash at rail; bar.sags at beam" */
function findingWords(findings: BuildSheet["rejects"]): string {
  const places = new Map<string, string[]>();
  for (const { rule, at } of findings) places.set(rule, [...(places.get(rule) ?? []), showHidden(at.id)]);
  return [...places].map(([rule, at]) => `${rule} at ${listed([...new Set(at)], MOST_PLACES)}`).join("; ");
}

/** What is said of the frame before anything of how to build it. */
function* verdictLines({ rejects, holds }: BuildSheet): Generator<string> {
  const verb = (findings: BuildSheet["rejects"], one: string): string =>
    `${count(findings.length, "finding")} ${findings.length === 1 ? `${one}s` : one} it`;
  if (rejects.length > 0)
    yield `\nDo not build it yet: ${verb(rejects, "reject")} and must be mended first: ${findingWords(rejects)} (trysquare inspect tells all).\n`;
  if (holds.length > 0)
    yield `\n${verb(holds, "hold")} until an engineer has settled ${holds.length === 1 ? "it" : "them"}: ${findingWords(holds)}${rejects.length === 0 ? " (trysquare inspect tells all)" : ""}.\n`;
}

/** The order of building as it is read out at the bench. */
export function* buildText(sheet: BuildSheet): Generator<string> {
  const steps = sheet.pieces.flatMap((piece) => piece.planned.steps);
  yield `${showHidden(sheet.file)} · ${showHidden(sheet.title)} · ${count(steps.length, "step")}\n`;
  yield* verdictLines(sheet);
  if (sheet.deadlock !== undefined)
    yield `\nNo order of building exists: ${showHidden(sheet.deadlock)}. The steps below put these parts in as if they could be.\n`;
  for (const { id, built } of sheet.undone) {
    const why = built ? "comes built but cannot be put in whole" : "cannot be built as one";
    const how = built
      ? "take it apart, keep its screws and nuts, and put its parts in one by one with them"
      : "its parts go in one by one";
    yield `\n"${showHidden(id)}" ${why}: ${how}.\n`;
  }
  for (const { id, apart } of sheet.scattered)
    yield `\n"${showHidden(id)}" is no piece: nothing in it joins ${listed(apart.map(showHidden), MOST_PLACES)} to the rest of it. It is taken as one all the same: name what joins them in the group, or drop the group.\n`;
  yield "\nEye protection and gloves while cutting and deburring, no gloves near turning tools. Deburr every cut:\nburrs jam nuts and stand joints off. Safety shoes while lifting.\n";
  const { letterOf, nameOf } = nameIn(sheet);
  for (const piece of sheet.pieces) yield* pieceLines(piece, letterOf(piece.planned.id), sheet, nameOf);
  yield "\nCheck the torques again after a day and after moving it. A screening aid: local codes and a competent person decide.\n";
}
