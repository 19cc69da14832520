import type { Command, CommanderError } from "commander";
import { nearest } from "../model/text/nearest.ts";
import { count } from "../report/count.ts";

function quotedIn(message: string): string {
  const [, quoted = ""] = /'([^']*)'/.exec(message) ?? [];
  return quoted.split(/[ =,]/)[0] ?? "";
}

function meant(word: string, known: readonly string[]): string {
  const near = nearest(word, known);
  return near === undefined ? "" : `; did you mean ${near}?`;
}

/** "start needs 1 word after it: <kind>". */
function missing(word: string, program: Command): string {
  const command = program.commands.find((one) => one.name() === program.args[0]);
  const needed = command?.registeredArguments.filter((argument) => argument.required) ?? [];
  if (command === undefined || needed.length === 0) return `a word is missing: <${word}>`;
  const least = needed.some((argument) => argument.variadic) ? "at least " : "";
  const names = needed.map((argument) => `<${argument.name()}>`).join(" ");
  return `${command.name()} needs ${least}${count(needed.length, "word")} after it: ${names}`;
}

function tooMany(message: string): string {
  const [, command = "this command", most = "", got = ""] =
    /for '([^']*)'\. Expected (\d+) arguments? but got (\d+)/.exec(message) ?? [];
  return most === "" ? "too many words" : `too many words: ${command} takes ${most}, not ${got}`;
}

/** What an option was given, and what it takes instead. */
function notTaken(word: string, message: string): string {
  const [, given = ""] = /argument '([^']*)'/.exec(message) ?? [];
  const why = message.split(". ").slice(1).join(". ").replace(/\.$/, "");
  return `${word} does not take "${given}": ${why.charAt(0).toLowerCase()}${why.slice(1)}`;
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
      return missing(word, program);
    case "commander.excessArguments":
      return tooMany(error.message);
    case "commander.invalidArgument":
      return notTaken(word, error.message);
    default:
      return error.message;
  }
}
