import { factOf } from "../facts/fact.ts";
import { fastenedSheets } from "../facts/fastened-sheets.ts";
import { bounds } from "../facts/joint-stiffness.ts";
import { response } from "../facts/response.ts";
import type { Frame } from "../model/frame.ts";

const named = (ids: readonly string[]): string =>
  ids.length > 1 ? `${ids.slice(0, -1).join(", ")} and ${ids[ids.length - 1]}` : (ids[0] ?? "");

/**
 * In words, which panels were taken to brace the frame and which are weight only. Nothing is said of a frame without panels,
 * nor of screwed sheets where the frame could not be solved.
 */
export function sheetRoles(frame: Frame): readonly string[] {
  if (frame.panels.length === 0) return [];
  const words: string[] = [];
  const fastened = factOf(fastenedSheets, frame).map(({ panel }) => panel);
  const found = fastened.length > 0 ? factOf(response, frame) : undefined;
  if (found?.kind === "solved") {
    // Sheets that brace with the same stiffnesses of joints are named together.
    const alike = new Map<string, string[]>();
    for (const { ref } of fastened) {
      const held = bounds.filter((bound) => found.braces(bound).some(({ sheet }) => sheet.panel.ref.id === ref.id));
      const how =
        held.length === bounds.length
          ? "brace the frame as far as their screws hold"
          : held.length === 0
            ? "would give at their screws and brace nothing"
            : `brace the frame with ${named(held)} joints alone, else they would give at their screws`;
      alike.set(how, [...(alike.get(how) ?? []), ref.id]);
    }
    for (const [how, ids] of alike) words.push(`the screwed sheets ${named(ids)} ${how}`);
  }
  if (fastened.length < frame.panels.length)
    words.push("panels in slots, laid or with few screws are weight only and brace nothing");
  return words;
}
