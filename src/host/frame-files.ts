import { stat } from "node:fs/promises";
import { relative, resolve, sep } from "node:path";
import { compareText } from "../model/problem.ts";

/** A frame file to inspect: where it is, and its name in every output: relative, with forward slashes. */
export interface FrameFile {
  readonly path: string;
  readonly name: string;
}

export interface Expanded {
  /** In the order of their names, each once. */
  readonly files: readonly FrameFile[];
  /** Arguments that match no file, in words. */
  readonly unmatched: readonly string[];
}

const GLOB_CHARACTERS = /[*?[\]{}()!]/;
const IN_A_FOLDER = "**/*.frame.json";

/** The name of a file in outputs; depends on the working folder alone. */
export function nameOf(path: string): string {
  return relative(".", path).split(sep).join("/") || ".";
}

async function kindOf(path: string): Promise<"file" | "folder" | "nothing"> {
  try {
    return (await stat(path)).isDirectory() ? "folder" : "file";
  } catch (error) {
    // What exists but may not be looked at is a file that cannot be read, and is reported as one.
    return (error as NodeJS.ErrnoException).code === "ENOENT" ? "nothing" : "file";
  }
}

async function glob(pattern: string, folder: string): Promise<readonly string[]> {
  const { default: fastGlob } = await import("fast-glob");
  const options = { cwd: folder, onlyFiles: true, followSymbolicLinks: false, suppressErrors: true };
  return (await fastGlob(pattern, options)).map((found) => resolve(folder, found));
}

/** The files of an argument, or why there are none. */
async function expand(argument: string): Promise<readonly string[] | string> {
  if (argument.trim() === "") return `no file is called "${argument}"`;
  const kind = await kindOf(argument);
  if (kind === "file") return [resolve(argument)];
  if (kind === "folder") {
    const found = await glob(IN_A_FOLDER, argument);
    return found.length > 0 ? found : `there is no *.frame.json in the folder ${argument}`;
  }
  // Where the separator is a backslash it cannot also escape; elsewhere it may.
  const pattern = sep === "/" ? argument : argument.split(sep).join("/");
  const found = GLOB_CHARACTERS.test(argument) ? await glob(pattern, ".") : [];
  return found.length > 0 ? found : `no file matches ${argument}`;
}

/** Files, folders (all *.frame.json in them) and glob patterns as a list of files; patterns do not follow links. */
export async function frameFiles(args: readonly string[]): Promise<Expanded> {
  const byName = new Map<string, FrameFile>();
  const unmatched: string[] = [];
  for (const argument of args) {
    const paths = await expand(argument);
    if (typeof paths === "string") unmatched.push(paths);
    else for (const path of paths) byName.set(nameOf(path), { path, name: nameOf(path) });
  }
  const files = [...byName.values()].sort((a, b) => compareText(a.name, b.name));
  return { files, unmatched };
}
