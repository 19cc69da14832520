import type { Engine } from "../host/engine.ts";
import type { Sink } from "../host/sink.ts";
import type { Terminal } from "./terminal.ts";

/** What a command gets besides its words. */
export interface Context {
  /** Loads what inspects; help and refusals do without. */
  readonly engine: () => Promise<Engine>;
  /** Module that serves inspections with rules of a team in a thread of its own. */
  readonly worker: URL;
  readonly version: string;
  readonly terminal: Terminal;
  readonly stdout: Sink;
  /** One line to standard error. */
  readonly tell: (words: string) => void;
  /** Raises the exit code; the gravest of all calls counts. */
  readonly exit: (code: number) => void;
}
