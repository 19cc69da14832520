import { showHidden } from "../../model/text/quote.ts";
import type { Ink } from "./ink.ts";
import { wrap } from "./wrap.ts";

/** What lines are set on: how wide, in which ink. */
export interface Page {
  readonly width: number;
  readonly ink: Ink;
}

type Colour = (text: string) => string;
const plain: Colour = (text) => text;

/**
 * One paragraph, wrapped, ending with a line feed. Everything hidden or moving in the words is escaped here and nowhere else,
 * before any colour is added.
 */
export function paragraph(page: Page, words: string, indent = 0, colour: Colour = plain): string {
  const lines = wrap(showHidden(words), page.width, { front: " ".repeat(indent), indent });
  return `${lines.map((line) => colour(line)).join("\n")}\n`;
}

/** A paragraph behind a coloured word: "  HOLD  sags 8.1 mm", going on under `indent`. */
export function headed(page: Page, head: string, colour: Colour, words: string, indent: number): string {
  const front = `  ${head}  `;
  const [first = "", ...rest] = wrap(showHidden(words), page.width, { front, indent });
  const coloured = `  ${colour(head)}  ${first.slice(front.length)}`;
  return `${[coloured, ...rest].join("\n")}\n`;
}
