import { access, constants, realpath } from "node:fs/promises";
import { dirname, join, resolve, sep } from "node:path";
import type { House, HouseSource } from "../house/house.ts";
import { readConcessions, readHouse } from "../house/read-house.ts";
import type { Problem } from "../model/problem.ts";
import { nameOf } from "./frame-files.ts";
import { isInside } from "./inside.ts";
import { namedFile, readNamed } from "./named-file.ts";
import { readBytes } from "./read-bytes.ts";

const HOUSE_FILE = "trysquare.house.json";

/** House files based on one another, and all that belong to one house. */
const MOST_DEEP = 16;
const MOST_FILES = 1000;

/** A house that cannot be used, and everything that is wrong with it. */
export class HouseUnusable extends Error {
  override readonly name = "HouseUnusable";
  readonly problems: readonly Problem[];
  constructor(file: string, problems: readonly Problem[]) {
    super(`the house file ${file} cannot be used`);
    this.problems = problems;
  }
}

export interface LoadedHouse extends House {
  readonly name: string;
  /** Absolute paths of the team's rule modules, in order; each once. */
  readonly modules: readonly string[];
  /** The stock files of the team, in order. */
  readonly stock: readonly { readonly file: string; readonly bytes: Uint8Array }[];
}

/** The nearest house file upward from a folder, as far as the working folder; for a folder outside it, only in the folder itself. */
export async function findHouse(folder: string): Promise<string | undefined> {
  const top = resolve(".");
  for (let here = resolve(folder); ; here = dirname(here)) {
    const path = join(here, HOUSE_FILE);
    if (
      await access(path, constants.F_OK).then(
        () => true,
        () => false,
      )
    )
      return path;
    if (here === top || !isInside(top, here)) return undefined;
  }
}

function slashed(path: string): string {
  return path.split(sep).join("/");
}

function refuse(source: Pick<HouseSource, "name" | "place">, pointer: string, why: string): never {
  const place = source.place(pointer);
  const problem: Problem = {
    code: "file-unusable",
    weight: "error",
    place,
    found: `a file that cannot be used: ${why}`,
    expected: "a file that can be read",
  };
  throw new HouseUnusable(source.name, [problem]);
}

interface Opened {
  readonly path: string;
  readonly depth: number;
  readonly source: HouseSource;
}

async function openHouse(
  path: string,
  name: string,
  bytes: Uint8Array,
  roots: readonly string[] | undefined,
): Promise<HouseSource> {
  const read = readHouse(name, bytes);
  if ("problems" in read) throw new HouseUnusable(name, read.problems);
  const source = { path: slashed(path), name, ...read };
  const written = read.file.concessions;
  if (written === undefined) return source;
  const found = await readNamed(path, written, roots);
  if ("refused" in found) return refuse(source, "/concessions", found.refused);
  const conceded = readConcessions(found.name, found.bytes);
  if ("problems" in conceded) throw new HouseUnusable(found.name, conceded.problems);
  return { ...source, conceded: { path: slashed(found.path), ...conceded } };
}

/** A house file and all it is based on, each once, what is relied on before what relies on it; without recursion. */
async function openChain(path: string, roots: readonly string[] | undefined): Promise<readonly HouseSource[]> {
  const read = await readBytes(path);
  const name = nameOf(path);
  if ("refused" in read) {
    const place = { file: name, pointer: "", line: 1, column: 1, endLine: 1, endColumn: 1 };
    throw new HouseUnusable(name, [
      {
        code: "file-unreadable",
        weight: "error",
        place,
        found: `a file that cannot be read: ${read.refused}`,
        expected: "a house file",
      },
    ]);
  }
  const first: Opened = { path, depth: 1, source: await openHouse(path, name, read.bytes, roots) };
  const open: Opened[] = [first];
  const entered = new Set<string>([path]);
  const done = new Map<string, HouseSource>();
  for (let top = open.at(-1); top !== undefined; top = open.at(-1)) {
    const { source, depth } = top;
    let waits = false;
    for (const [i, written] of (source.file.basedOn ?? []).entries()) {
      const pointer = `/basedOn/${i}`;
      const found = await readNamed(top.path, written, roots);
      if ("refused" in found) return refuse(source, pointer, found.refused);
      if (done.has(found.path)) continue;
      if (entered.has(found.path)) return refuse(source, pointer, "it is based on this very file");
      if (depth >= MOST_DEEP)
        return refuse(source, pointer, `house files are based on one another more than ${MOST_DEEP} deep`);
      if (entered.size >= MOST_FILES) return refuse(source, pointer, `the house has more than ${MOST_FILES} files`);
      entered.add(found.path);
      open.push({
        path: found.path,
        depth: depth + 1,
        source: await openHouse(found.path, found.name, found.bytes, roots),
      });
      waits = true;
      break;
    }
    if (waits) continue;
    done.set(top.path, source);
    open.pop();
  }
  return [...done.values()];
}

/**
 * Loads a house file with everything it names. Rule modules are only located, never run.
 * @param trusted whether the command line names the file: what it names may then lie anywhere, else only under the working folder
 * @throws HouseUnusable
 */
export async function loadHouse(path: string, trusted: boolean): Promise<LoadedHouse> {
  const roots = trusted ? undefined : [dirname(path), "."];
  // With links followed, like all paths below, so that a circle is seen and patterns of frames are relative to one kind of path.
  const sources = await openChain(await realpath(path).catch(() => resolve(path)), roots);
  const modules = new Set<string>();
  const stock: LoadedHouse["stock"][number][] = [];
  for (const source of sources) {
    for (const [i, written] of (source.file.rules ?? []).entries()) {
      const found = await namedFile(source.path, written, roots);
      if ("refused" in found) return refuse(source, `/rules/${i}`, found.refused);
      modules.add(found.path);
    }
    for (const [i, written] of (source.file.stock ?? []).entries()) {
      const found = await readNamed(source.path, written, roots);
      if ("refused" in found) return refuse(source, `/stock/${i}`, found.refused);
      stock.push({ file: found.name, bytes: found.bytes });
    }
  }
  return { name: nameOf(path), sources, modules: [...modules], stock };
}
