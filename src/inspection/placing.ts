import type { Frame } from "../model/frame.ts";
import type { Place } from "../model/problem.ts";
import type { Ref } from "../model/ref.ts";
import type { Origins } from "../model/resolve/names.ts";
import type { Document } from "../model/text/document.ts";

/** Places of parts by reference. The first question finds those of all parts in one pass over the text. */
export function placing(document: Document, origins: Origins, frame: Frame): (at: Ref) => Place {
  // A part that was copied is told at the line of the copy.
  const pointerOf = (at: Ref): string => {
    if (at.kind === "frame") return "";
    const { pointer, copyPointer } = origins.originOf(at);
    return copyPointer ?? pointer;
  };
  let found = false;
  return (at) => {
    if (!found) {
      const parts = [
        ...frame.bars,
        ...frame.joints,
        ...frame.fastenings,
        ...frame.panels,
        ...frame.stands,
        ...frame.loads,
      ];
      document.places(parts.map((part) => pointerOf(part.ref)));
      found = true;
    }
    return document.place(pointerOf(at));
  };
}
