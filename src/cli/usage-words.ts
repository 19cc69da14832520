import type { Command, CommanderError } from "commander";
import { nearest } from "../model/text/nearest.ts";

function quotedIn(message: string): string {
  const [, quoted = ""] = /'([^']*)'/.exec(message) ?? [];
  return quoted.split(/[ =,]/)[0] ?? "";
}

function meant(word: string, known: readonly string[]): string {
  const near = nearest(word, known);
  return near === undefined ? "" : `; did you mean ${near}?`;
}

/** What the parser of arguments refuses, in our words; undefined when nothing is wrong (help and version were shown). */
export function usageWords(error: CommanderError, program: Command): string | undefined {
  if (error.exitCode === 0) return undefined;
  const word = quotedIn(error.message);
  const commands = program.commands;
  switch (error.code) {
    case "commander.help":
      return "say what to do: a command is missing";
    case "commander.unknownCommand":
      return `there is no command "${word}"${meant(
        word,
        commands.map((command) => command.name()),
      )}`;
    case "commander.unknownOption": {
      const known = [program, ...commands].flatMap((command) => command.options.map((option) => option.long ?? ""));
      return `there is no option ${word}${meant(word, known)}`;
    }
    case "commander.optionMissingArgument":
      return `${word} needs a word after it`;
    case "commander.missingArgument":
      return `something is missing: ${word}`;
    case "commander.excessArguments":
      return "too many words: this command takes fewer";
    case "commander.invalidArgument":
      return `${word} does not take that: ${error.message.split(". ").slice(1).join(". ")}`;
    default:
      return error.message;
  }
}
