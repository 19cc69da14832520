import { Command } from "commander";
import { registerBuild } from "./commands/build.ts";
import { registerCompare } from "./commands/compare.ts";
import { registerCuts } from "./commands/cuts.ts";
import { registerHouse } from "./commands/house.ts";
import { registerInspect } from "./commands/inspect.ts";
import { registerReach } from "./commands/reach.ts";
import { registerRules } from "./commands/rules.ts";
import { registerSection } from "./commands/section.ts";
import { registerSheet } from "./commands/sheet.ts";
import { registerStart } from "./commands/start.ts";
import { registerStatics } from "./commands/statics.ts";
import type { Context } from "./context.ts";

/** The command line: one file per command; words in, exit code out. */
export function buildProgram(context: Context): Command {
  const program = new Command("trysquare")
    .description("Inspects frames of T-slotted aluminium bars while they are still a file.")
    .version(context.version, "--version", "print the version")
    .helpOption("--help", "print this help")
    .helpCommand("help [command]", "print the help of a command")
    .option("--debug", "when trysquare itself fails, say where in its code")
    .showSuggestionAfterError(false)
    .exitOverride()
    .configureOutput({
      writeOut: (text) => void context.stdout.write(text),
      // Refusals come as errors and are worded in one place.
      writeErr: () => {},
      getOutHelpWidth: () => 100,
      getOutHasColors: () => false,
    });
  registerInspect(program, context);
  registerSheet(program, context);
  registerCompare(program, context);
  registerRules(program, context);
  registerHouse(program, context);
  registerCuts(program, context);
  registerBuild(program, context);
  registerSection(program, context);
  registerReach(program, context);
  registerStart(program, context);
  registerStatics(program, context);
  return program;
}
