import { constants, type FileHandle, open } from "node:fs/promises";
import { FILE_BYTES } from "../model/text/limits.ts";
import { failureWords } from "./failure-words.ts";

export type BytesRead = { readonly bytes: Uint8Array } | { readonly refused: string };

const CHUNK_BYTES = 1 << 20;

/** Up to `most` bytes; one more than that says the file is larger. */
async function readUpTo(handle: FileHandle, expected: number, most: number): Promise<Uint8Array | undefined> {
  let buffer = new Uint8Array(expected + 1);
  let filled = 0;
  for (;;) {
    if (filled === buffer.length) {
      const larger = new Uint8Array(buffer.length + CHUNK_BYTES);
      larger.set(buffer);
      buffer = larger;
    }
    const { bytesRead } = await handle.read(buffer, filled, buffer.length - filled);
    if (bytesRead === 0) return buffer.subarray(0, filled);
    filled += bytesRead;
    if (filled > most) return undefined;
  }
}

/**
 * The bytes of a regular file of at most 128 MiB, or in words why not. Looks at the opened file, not at the name, so that a pipe or
 * device put in its place cannot block or flood the reader; never throws.
 */
export async function readBytes(path: string, most: number = FILE_BYTES): Promise<BytesRead> {
  let handle: FileHandle | undefined;
  try {
    // Without O_NONBLOCK the opening of a pipe that nobody writes would wait for ever.
    handle = await open(path, constants.O_RDONLY | constants.O_NONBLOCK);
    const stat = await handle.stat();
    if (stat.isDirectory()) return { refused: "it is a folder" };
    if (!stat.isFile()) return { refused: "it is not a regular file" };
    const tooLarge = { refused: `it is larger than ${most} bytes` };
    if (stat.size > most) return tooLarge;
    const bytes = await readUpTo(handle, stat.size, most);
    return bytes === undefined ? tooLarge : { bytes };
  } catch (error) {
    return { refused: failureWords(error) };
  } finally {
    await handle?.close().catch(() => {});
  }
}
