import { CommanderError } from "commander";
import type { Engine } from "../host/engine.ts";
import { type Sink, Undelivered } from "../host/sink.ts";
import { streamSink } from "../host/standard-output.ts";
import type { Context } from "./context.ts";
import { EXIT } from "./exit-code.ts";
import { buildProgram } from "./program.ts";
import { promisedForm } from "./report-plan.ts";
import { reporterFor } from "./reporter-for.ts";
import { type Terminal, tellOn } from "./terminal.ts";
import { Unusable } from "./unusable.ts";
import { usageWords } from "./usage-words.ts";

/** What the command is made of. */
export interface Tool {
  readonly engine: () => Promise<Engine>;
  readonly worker: URL;
  readonly version: string;
}

/** A machine document that says why there is nothing in it: who was promised one gets one, whatever went wrong. */
async function faultDocument(argv: readonly string[], version: string, stdout: Sink, fault: string): Promise<void> {
  const as = promisedForm(argv);
  if (as === undefined) return;
  const reporter = await reporterFor(as, { version, width: 0, coloured: false, faults: [fault] });
  for (const chunk of [...reporter.begin([]), ...reporter.end()]) await stdout.write(chunk);
  await stdout.finish();
}

/**
 * Runs one command line and returns its exit code. Never throws and never ends the process: what is still being written gets out.
 * @param argv the words after the program's name
 */
export async function main(argv: readonly string[], tool: Tool, terminal: Terminal): Promise<number> {
  let code: number = EXIT.clean;
  const tell = tellOn(terminal.stderr);
  const stdout = streamSink(terminal.stdout, "standard output");
  const exit = (wanted: number): void => {
    code = Math.max(code, wanted);
  };
  const context: Context = { ...tool, terminal, stdout, tell, exit };
  const program = buildProgram(context);
  const fail = async (wanted: number, words: string): Promise<void> => {
    exit(wanted);
    tell(words);
    await stdout.abandon();
    await faultDocument(argv, tool.version, stdout, words).catch((error: unknown) => {
      exit(EXIT.undelivered);
      tell(error instanceof Error ? error.message : String(error));
    });
  };
  try {
    await program.parseAsync(argv, { from: "user" });
    await stdout.finish();
  } catch (error) {
    if (error instanceof CommanderError) {
      const words = usageWords(error, program);
      if (words !== undefined) await fail(EXIT.unusable, `${words}\nsee trysquare --help`);
      else await stdout.finish().catch((undelivered: Error) => fail(EXIT.undelivered, undelivered.message));
    } else if (error instanceof Unusable) await fail(EXIT.unusable, error.message);
    else if (error instanceof Undelivered) {
      exit(EXIT.undelivered);
      tell(error.message);
    } else {
      const stack = argv.includes("--debug") && error instanceof Error ? `\n${error.stack}` : "";
      const what = error instanceof Error ? error.message : String(error);
      await fail(EXIT.undelivered, `trysquare ${tool.version} itself failed: ${what}${stack}`);
    }
  }
  return code;
}
