import type { Frame, Group } from "../model/frame.ts";
import type { Ref } from "../model/ref.ts";
import { defineFact } from "./fact.ts";
import type { ScrewedPart } from "./placed.ts";

/** A group that arrives put together: nobody saws its bars or tightens its joints here. */
export interface BuiltPiece {
  readonly ref: Ref;
  /** Bars and panels, those of its doors with them. */
  readonly parts: readonly string[];
}

export interface ComesBuilt {
  readonly all: readonly BuiltPiece[];
  /** The piece that a bar, panel, foot, caster or piece of equipment comes in. */
  pieceOf(id: string): BuiltPiece | undefined;
  /** The piece that all of these come in: what holds nothing else comes with it. */
  holding(ids: readonly string[]): BuiltPiece | undefined;
  /** The piece that something screwed comes in, tightened already. */
  around(part: Pick<ScrewedPart, "holds" | "sheet">): BuiltPiece | undefined;
}

/** Bars and panels of a group, with those of the doors it names. */
export function groupParts(frame: Frame, group: Group): readonly string[] {
  const doors = new Map(frame.doors.map((door) => [door.ref.id, door]));
  const built = new Set([...frame.bars, ...frame.panels].map((part) => part.ref.id));
  return group.parts.flatMap((part) => {
    const door = doors.get(part);
    return door ? [...door.bars, ...door.panels] : built.has(part) ? [part] : [];
  });
}

/** What of the frame comes put together, and in which piece. */
export const comesBuilt = defineFact<ComesBuilt>({
  id: "comes-built",
  compute(_, frame) {
    const pieces = new Map<string, BuiltPiece>();
    const all = frame.groups
      .filter((group) => group.built)
      .map((group) => {
        const piece = { ref: group.ref, parts: groupParts(frame, group) };
        for (const id of [...group.parts, ...piece.parts]) pieces.set(id, piece);
        return piece;
      });
    const holding: ComesBuilt["holding"] = ([first = "", ...others]) => {
      const piece = pieces.get(first);
      return piece && others.every((id) => pieces.get(id) === piece) ? piece : undefined;
    };
    return {
      all,
      pieceOf: (id) => pieces.get(id),
      holding,
      around: ({ holds, sheet }) => holding([...holds.map((hold) => hold.bar), ...(sheet ? [sheet.id] : [])]),
    };
  },
});
