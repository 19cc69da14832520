import { safeJson } from "../json/safe-json.ts";
import { LEFT_OUT } from "../left-out.ts";
import type { BuildSheet, SheetPiece } from "./build-sheet.ts";
import { nameIn } from "./piece-names.ts";
import { cautions, type NameOf } from "./step-words.ts";

function pieceRecord(piece: SheetPiece, sheet: BuildSheet, nameOf: NameOf): object {
  const { planned, handling } = piece;
  return {
    id: planned.id,
    from: planned.from,
    parts: planned.parts,
    bars: planned.bars,
    rawEnds: planned.rawEnds,
    ...(planned.built ? { built: true, trapped: planned.trapped } : {}),
    nuts: planned.nuts.map((nuts) => ({ ...nuts, spare: piece.spare(nuts) })),
    ...(planned.slotless.length > 0 ? { slotless: planned.slotless } : {}),
    ...(planned.loose.length > 0 ? { loose: planned.loose } : {}),
    ...(planned.balance ? { balance: planned.balance } : {}),
    ...(planned.lyingOn ? { lyingOn: planned.lyingOn } : {}),
    squareWithin: planned.squareWithin ?? null,
    ...(handling ? { mass: handling.mass, centre: handling.centre, people: handling.people ?? null } : {}),
    steps: planned.steps.map((step) => ({
      number: step.step.number,
      what: step.step.what,
      places: step.step.places,
      way: step.step.path?.legs.at(-1) ?? null,
      legs: step.step.path?.legs ?? [],
      past: step.step.path?.past ?? [],
      lying: step.step.lying,
      connectors: step.connectors,
      dropIn: step.dropIn,
      tightens: step.tightens,
      fixes: step.fixes,
      ...(step.raised ? { raised: { ...step.raised, people: sheet.peopleFor(step.raised.lifted) ?? null } } : {}),
      lifts: step.lifts.map((one) => ({
        what: one.what,
        piece: one.assembly ?? null,
        mass: one.mass,
        people: sheet.handlingOf(one).people ?? null,
      })),
      equipment: step.equipment.map((one) => ({
        what: one.what,
        mass: one.mass,
        people: sheet.handlingOf(one).people ?? null,
      })),
      ...(step.feetFirst.length > 0 ? { feetFirst: step.feetFirst } : {}),
      ...(step.anchors.length > 0 ? { anchors: step.anchors } : {}),
      ...(step.blockedUp > 0 ? { blockedUp: step.blockedUp } : {}),
      cautions: cautions(step, sheet, nameOf),
    })),
  };
}

/** The order of building as one JSON document; lengths in m, masses in kg, torques in N·m. */
export function* buildJson(sheet: BuildSheet): Generator<string> {
  const { nameOf } = nameIn(sheet);
  yield safeJson({
    formatVersion: "1.0",
    file: sheet.file,
    title: sheet.title,
    massesWithout: LEFT_OUT,
    mendFirst: sheet.rejects.map(({ rule, at, text }) => ({ rule, at, text })),
    settleFirst: sheet.holds.map(({ rule, at, text }) => ({ rule, at, text })),
    deadlock: sheet.deadlock ?? null,
    undone: sheet.undone.map(({ id }) => id),
    scattered: sheet.scattered,
    pieces: sheet.pieces.map((piece) => pieceRecord(piece, sheet, nameOf)),
  });
  yield "\n";
}
