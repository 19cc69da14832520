import { isAbsolute, relative, sep } from "node:path";

/** Whether an absolute path is a folder itself or lies in it; both with links followed. */
export function isInside(folder: string, path: string): boolean {
  const way = relative(folder, path);
  return way === "" || (!isAbsolute(way) && way !== ".." && !way.startsWith(`..${sep}`));
}
