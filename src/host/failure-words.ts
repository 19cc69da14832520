/** Why the system refused, in plain words; codes after POSIX errno.h. Never the platform's own text, which holds absolute paths. */
const WORDS: ReadonlyMap<string, string> = new Map([
  ["ENOENT", "it does not exist"],
  ["EACCES", "permission is denied"],
  ["EPERM", "permission is denied"],
  ["EISDIR", "it is a folder"],
  ["ENOTDIR", "a part of its path is not a folder"],
  ["ELOOP", "its links go round in a circle"],
  ["ENAMETOOLONG", "its name is too long"],
  ["EMFILE", "too many files are open"],
  ["ENFILE", "too many files are open"],
  ["ENOSPC", "the disk is full"],
  ["EDQUOT", "the disk quota is used up"],
  ["EROFS", "the disk is read-only"],
  ["EFBIG", "the file would become too large"],
  ["EIO", "the disk failed"],
  ["EPIPE", "the reader went away"],
  ["ENXIO", "it is not a regular file"],
  ["ENODEV", "it is not a regular file"],
]);

export function codeOf(error: unknown): string | undefined {
  if (typeof error !== "object" || error === null || !("code" in error)) return undefined;
  return typeof error.code === "string" ? error.code : undefined;
}

export function failureWords(error: unknown): string {
  const code = codeOf(error);
  if (code === undefined) return error instanceof Error ? error.message : "for an unknown reason";
  return WORDS.get(code) ?? `the system answers ${code}`;
}
