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
    const holding = fastened.filter((panel) =>
      bounds.every((bound) => found.braces(bound).some(({ sheet }) => sheet.panel === panel)),
    );
    const giving = fastened.filter((panel) => !holding.includes(panel));
    const ids = (panels: typeof fastened): string => named(panels.map(({ ref }) => ref.id));
    if (holding.length > 0) words.push(`${ids(holding)} brace${holding.length > 1 ? "" : "s"} the frame by the screws`);
    if (giving.length > 0)
      words.push(`${ids(giving)} would give at the screws, and brace${giving.length > 1 ? "" : "s"} nothing`);
  }
  if (fastened.length < frame.panels.length)
    words.push("panels in slots, laid or with few screws are weight only and brace nothing");
  return words;
}
