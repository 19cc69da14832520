import { access, constants, type FileHandle, lstat, open, realpath, rename, stat, unlink } from "node:fs/promises";
import { basename, dirname, join, relative, resolve } from "node:path";
import { codeOf, failureWords } from "./failure-words.ts";
import { isInside } from "./inside.ts";
import { type Sink, Undelivered } from "./sink.ts";
import { markFinished, markUnfinished } from "./unfinished-files.ts";

/** A report shorter than this is kept in memory until it is whole, so that most runs have a temporary file for a moment only. */
const KEPT_UNITS = 1 << 20;
const NEW_FILE_MODE = 0o666;
const MODE_BITS = 0o777;

interface Target {
  /** Where the report ends up, links followed. */
  readonly path: string;
  readonly mode?: number;
}

/** @throws Undelivered when the name is taken by something that must not be replaced. */
async function targetOf(path: string, name: string): Promise<Target> {
  const refuse = (why: string): Undelivered => new Undelivered(name, why);
  let found: Awaited<ReturnType<typeof lstat>>;
  try {
    found = await lstat(path);
  } catch (error) {
    if (codeOf(error) === "ENOENT") return { path };
    throw refuse(failureWords(error));
  }
  let real = path;
  if (found.isSymbolicLink()) {
    real = await realpath(path).catch((error) => {
      throw refuse(failureWords(error));
    });
    const homes = [await realpath(dirname(path)), await realpath(".")];
    if (!homes.some((home) => isInside(home, real))) throw refuse("it is a link that leads outside its folder");
    found = await stat(real);
  }
  if (found.isDirectory()) throw refuse("it is a folder");
  if (!found.isFile()) throw refuse("it is not a regular file");
  await access(real, constants.W_OK).catch((error) => {
    throw refuse(failureWords(error));
  });
  return { path: real, mode: found.mode & MODE_BITS };
}

let made = 0;

/**
 * A file that appears whole or not at all: written beside its target, then put in its place. Keeps the mode of the file it replaces
 * and never writes through a link that leads outside.
 */
export function atomicFile(path: string): Sink {
  const absolute = resolve(path);
  const name = relative(".", absolute) || path;
  let waiting: string[] = [];
  let units = 0;
  let draft: { readonly handle: FileHandle; readonly path: string; readonly target: Target } | undefined;

  const opened = async (): Promise<NonNullable<typeof draft>> => {
    if (draft !== undefined) return draft;
    const target = await targetOf(absolute, name);
    const beside = join(dirname(target.path), `.${basename(target.path)}.${process.pid}-${made++}.tmp`);
    markUnfinished(beside);
    try {
      draft = { handle: await open(beside, "wx", target.mode ?? NEW_FILE_MODE), path: beside, target };
    } catch (error) {
      markFinished(beside);
      const folder = dirname(target.path);
      if (codeOf(error) === "ENOENT")
        throw new Undelivered(name, `the folder ${relative(".", folder) || folder} does not exist`);
      throw error;
    }
    return draft;
  };
  const flush = async (): Promise<void> => {
    const { handle } = await opened();
    const text = waiting.join("");
    waiting = [];
    units = 0;
    await handle.writeFile(text);
  };
  const abandon = async (): Promise<void> => {
    waiting = [];
    units = 0;
    if (draft === undefined) return;
    await draft.handle.close().catch(() => {});
    await unlink(draft.path).catch(() => {});
    markFinished(draft.path);
    draft = undefined;
  };
  const guarded = async (work: () => Promise<void>): Promise<void> => {
    try {
      await work();
    } catch (error) {
      await abandon();
      throw error instanceof Undelivered ? error : new Undelivered(name, failureWords(error));
    }
  };
  return {
    name,
    write: (chunk) =>
      guarded(async () => {
        waiting.push(chunk);
        units += chunk.length;
        if (units >= KEPT_UNITS) await flush();
      }),
    finish: () =>
      guarded(async () => {
        await flush();
        const { handle, path: beside, target } = await opened();
        // The mode given to open is cut by the umask; a file that is replaced keeps its own.
        if (target.mode !== undefined) await handle.chmod(target.mode);
        await handle.sync();
        await handle.close();
        await rename(beside, target.path);
        markFinished(beside);
        draft = undefined;
      }),
    abandon,
  };
}
