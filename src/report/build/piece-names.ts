import type { PlannedPiece } from "../../facts/build-plan.ts";
import { showHidden } from "../../model/text/quote.ts";
import { listed } from "../count.ts";
import type { BuildSheet } from "./build-sheet.ts";
import type { NameOf } from "./step-words.ts";

/** So many of its bars name a piece that has no name; the rest are counted. */
const MOST_BARS = 3;
const LETTERS = 26;

/** "A" to "Z", then "A2". */
function letter(index: number): string {
  const round = Math.floor(index / LETTERS);
  return `${String.fromCharCode(65 + (index % LETTERS))}${round > 0 ? round + 1 : ""}`;
}

/** The author's name, or the bars of a piece that was found. */
function within({ id, from, parts }: PlannedPiece): string {
  return from === "group" || from === "door" ? showHidden(id) : listed(parts.map(showHidden), MOST_BARS);
}

/** Letters of the pieces, and what is put in called by them: "D (handle-1, handle and handle-2)". */
export function nameIn({ pieces }: Pick<BuildSheet, "pieces">): {
  readonly letterOf: (piece: string) => string;
  readonly nameOf: NameOf;
} {
  const known = new Map(pieces.map(({ planned }, i) => [planned.id, { planned, letter: letter(i) }]));
  return {
    letterOf: (piece) => known.get(piece)?.letter ?? "",
    nameOf: (step, id) => {
      const inner = step.lifts.find((one) => one.ref.id === id && one.assembly !== undefined);
      const piece = inner && known.get(inner.assembly ?? "");
      return piece ? `${piece.letter} (${within(piece.planned)})` : showHidden(id);
    },
  };
}
