import { stat } from "node:fs/promises";

/** The one of the files that a path leads to, under whatever name; undefined when it leads to none of them. */
export async function sameFile<F extends { readonly path: string }>(
  path: string,
  files: readonly F[],
): Promise<F | undefined> {
  const target = await stat(path, { bigint: true }).catch(() => undefined);
  if (target === undefined) return undefined;
  for (const file of files) {
    const other = await stat(file.path, { bigint: true }).catch(() => undefined);
    if (other !== undefined && other.dev === target.dev && other.ino === target.ino) return file;
  }
  return undefined;
}
