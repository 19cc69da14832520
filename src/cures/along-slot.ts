import { fingerRoom, fistRoom } from "../criteria/hand-widths.ts";
import { factOf } from "../facts/fact.ts";
import { towards } from "../facts/slot-slides.ts";
import { toolRoom } from "../facts/tool-room.ts";
import { toolShifts } from "../facts/tool-shifts.ts";
import { add, scale, type Vec3 } from "../geometry/vector.ts";
import { formatQuantity } from "../model/units/format-quantity.ts";
import { readQuantity } from "../model/units/read-quantity.ts";
import type { Cure, Edit, Patient, Proposal } from "./cure.ts";
import { pointInFile, writtenBar } from "./written.ts";

function usual({ standard }: typeof fingerRoom): number {
  const read = readQuantity(standard, "length", "mm-N-kg");
  if (!("si" in read)) throw new Error(`${standard} is no length`);
  return read.si;
}

/** What a cure asks for the hand: it does not know what house or frame ask. */
const ASKED = { fingers: usual(fingerRoom), fist: usual(fistRoom) };

function edits(moves: { readonly kind: string; readonly id: string }, by: Vec3, patient: Patient): readonly Edit[] {
  const { frame, file } = patient;
  const moved = (point: Vec3): Vec3 => add(point, by);
  if (moves.kind === "bar") {
    const bar = frame.bars.find(({ ref }) => ref.id === moves.id);
    const written = writtenBar(file, moves.id);
    if (!bar || !written) return [];
    return (["from", "to"] as const).map((end) => ({
      pointer: `/bars/${written.index}/${end}`,
      to: pointInFile(moved(bar[end]), file),
    }));
  }
  const fastening = frame.fastenings.find(({ ref }) => ref.id === moves.id);
  if (!fastening) return [];
  return [{ pointer: `${patient.pointerOf(fastening.ref)}/at`, to: pointInFile(moved(fastening.at), file) }];
}

/** A connector moved along its slot, with its bar where it holds the end of one, until tools and hands get to its screws. */
export const alongSlot: Cure = {
  id: "along-slot",
  turn: 1,
  mends: ["screw.no-room"],
  *propose(ailment, patient): Iterable<Proposal> {
    const { frame } = patient;
    const room = factOf(toolRoom, frame).find(({ screw }) => screw.ref.id === ailment.at.id);
    const found = room && factOf(toolShifts, frame).shiftOf(room.connector, ASKED);
    if (!found) return;
    const { slide, move } = found;
    const far = formatQuantity(Math.abs(move), "length", frame.units);
    const changes = edits(slide.moves, scale(slide.way, move), patient);
    if (changes.length > 0)
      yield { words: `${slide.moves.id} ${far} further towards ${towards(slide, move).id}`, edits: changes };
  },
};
