import { realpath } from "node:fs/promises";
import { dirname, posix, resolve, win32 } from "node:path";
import { failureWords } from "./failure-words.ts";
import { nameOf } from "./frame-files.ts";
import { isInside } from "./inside.ts";
import { type BytesRead, readBytes } from "./read-bytes.ts";

export interface NamedFile {
  /** With links followed. */
  readonly path: string;
  readonly name: string;
}

const SCHEME = /^[A-Za-z][A-Za-z0-9+.-]*:/;

/**
 * The file that another file names, relative to it. Only relative paths are taken, and with links followed it must lie in one of the
 * roots; without roots (the command line vouches for the naming file) anywhere.
 */
export async function namedFile(
  naming: string,
  written: string,
  roots: readonly string[] | undefined,
): Promise<NamedFile | { readonly refused: string }> {
  if (posix.isAbsolute(written) || win32.isAbsolute(written) || SCHEME.test(written))
    return { refused: "it is not a relative path" };
  if (written.includes("\0")) return { refused: "its name holds a zero character" };
  const path = resolve(dirname(naming), written);
  try {
    const real = await realpath(path);
    if (roots !== undefined) {
      const realRoots = await Promise.all(roots.map((root) => realpath(root)));
      if (!realRoots.some((root) => isInside(root, real)))
        return { refused: "it lies outside the folders of the frame and of the run" };
    }
    return { path: real, name: nameOf(path) };
  } catch (error) {
    return { refused: failureWords(error) };
  }
}

/** The same, with its bytes. */
export async function readNamed(
  naming: string,
  written: string,
  roots: readonly string[] | undefined,
): Promise<(NamedFile & { readonly bytes: Uint8Array }) | { readonly refused: string }> {
  const found = await namedFile(naming, written, roots);
  if ("refused" in found) return found;
  const read: BytesRead = await readBytes(found.path);
  return "refused" in read ? read : { ...found, bytes: read.bytes };
}
