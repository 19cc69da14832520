import { escaped } from "../../drawing/svg.ts";

/** A piece of HTML whose texts are already escaped. */
export interface Markup {
  readonly markup: string;
}

export type Piece = Markup | string | number | undefined | readonly Piece[];

function written(piece: Piece): string {
  if (piece === undefined) return "";
  if (typeof piece === "string" || typeof piece === "number") return escaped(String(piece));
  if ("markup" in piece) return piece.markup;
  return piece.map(written).join("");
}

/** HTML from a template: every text put into it is escaped, so that no name of a frame can become markup. */
export function html(parts: TemplateStringsArray, ...pieces: readonly Piece[]): Markup {
  let markup = parts[0] ?? "";
  for (const [i, piece] of pieces.entries()) markup += written(piece) + (parts[i + 1] ?? "");
  return { markup };
}

/** Markup made elsewhere, whose maker escapes: a drawing. */
export const drawn = (markup: string): Markup => ({ markup });
