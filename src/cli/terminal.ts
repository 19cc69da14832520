import { showHidden } from "../model/text/quote.ts";
import { inkFor } from "../report/text/ink.ts";
import type { Page } from "../report/text/page.ts";

export const COLOURS = ["auto", "always", "never"] as const;
export type ColourWish = (typeof COLOURS)[number];

export const MOST_COLUMNS = 100;
const FEWEST_COLUMNS = 40;

/** What the outside of the process offers; tests give their own. */
export interface Terminal {
  readonly stdout: NodeJS.WriteStream;
  readonly stderr: NodeJS.WriteStream;
  readonly env: Readonly<Record<string, string | undefined>>;
}

/** Columns of a ticket: those of a terminal up to 100; exactly 100 into a file or pipe. */
export function widthOf({ stdout }: Terminal): number {
  if (!stdout.isTTY) return MOST_COLUMNS;
  return Math.min(MOST_COLUMNS, Math.max(FEWEST_COLUMNS, stdout.columns));
}

/** Whether to colour standard output: as asked; else NO_COLOR, FORCE_COLOR, then whether a terminal is there. */
export function wantsColour(wish: ColourWish, { stdout, env }: Terminal): boolean {
  if (wish !== "auto") return wish === "always";
  if (env.NO_COLOR !== undefined && env.NO_COLOR !== "") return false;
  if (env.FORCE_COLOR !== undefined) return env.FORCE_COLOR !== "0" && env.FORCE_COLOR !== "false";
  return stdout.isTTY === true && env.TERM !== "dumb";
}

/** The page on which a command other than inspect writes. */
export function pageFor(terminal: Terminal): Page {
  return { width: widthOf(terminal), ink: inkFor(wantsColour("auto", terminal)) };
}

/** One line to standard error, nothing hidden in it. */
export function tellOn(stream: NodeJS.WriteStream): (words: string) => void {
  // Nobody is left to tell when this stream breaks; the exit code still says it.
  stream.on("error", () => {});
  return (words) => {
    for (const line of words.split("\n")) stream.write(`trysquare: ${showHidden(line)}\n`);
  };
}
