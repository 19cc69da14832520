import { Chalk } from "chalk";

/** Colours of the ticket. They add to the words and never replace them. */
export interface Ink {
  readonly reject: (text: string) => string;
  readonly hold: (text: string) => string;
  readonly note: (text: string) => string;
  readonly sound: (text: string) => string;
  readonly part: (text: string) => string;
  readonly why: (text: string) => string;
}

/** Ink for a terminal that shows colours, or none at all. */
export function inkFor(coloured: boolean): Ink {
  const chalk = new Chalk({ level: coloured ? 1 : 0 });
  return {
    reject: chalk.bold.red,
    hold: chalk.bold.yellow,
    note: chalk.cyan,
    sound: chalk.green,
    part: chalk.bold,
    why: chalk.dim,
  };
}
