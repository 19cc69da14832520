import { factOf } from "../facts/fact.ts";
import { fastenedSheets } from "../facts/fastened-sheets.ts";
import { bounds } from "../facts/joint-stiffness.ts";
import { response } from "../facts/response.ts";
import type { Frame } from "../model/frame.ts";

const named = (ids: readonly string[]): string =>
  ids.length > 1 ? `${ids.slice(0, -1).join(", ")} and ${ids[ids.length - 1]}` : (ids[0] ?? "");

/** Said of sheets that brace with joints of this stiffness: with all, some or none. */
function roleOf(ids: readonly string[], held: string): string {
  const many = ids.length > 1;
  const [sheets, brace, their, they] = many
    ? [`sheets ${named(ids)}`, "brace", "their", "they"]
    : [`sheet ${named(ids)}`, "braces", "its", "it"];
  if (held === bounds.join(" and ")) return `the screwed ${sheets} ${brace} the frame as far as ${their} screws hold`;
  if (held === "") return `the screwed ${sheets} would give at ${their} screws and ${brace} nothing`;
  return `the screwed ${sheets} ${brace} the frame with ${held} joints alone, else ${they} would give at ${their} screws`;
}

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
      const key = held.join(" and ");
      alike.set(key, [...(alike.get(key) ?? []), ref.id]);
    }
    for (const [held, ids] of alike) words.push(roleOf(ids, held));
  }
  if (fastened.length < frame.panels.length)
    words.push("panels in slots, laid or with few screws are weight only and brace nothing");
  return words;
}
