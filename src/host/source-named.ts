import { realpath } from "node:fs/promises";
import { basename } from "node:path";

const SOURCE = /\.(frame|house|stock)\.json$/i;

/** What a file of this name, or the one it leads to, is the source of; undefined for any other name. */
export async function sourceNamed(path: string): Promise<string | undefined> {
  const real = await realpath(path).catch(() => path);
  return (SOURCE.exec(basename(path)) ?? SOURCE.exec(basename(real)))?.[1]?.toLowerCase();
}
