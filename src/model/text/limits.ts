/** Largest file that is read, bytes. */
export const FILE_BYTES = 128 * 1024 * 1024;
/** Deepest nesting of objects and lists. */
export const NESTING_DEPTH = 64;
/** Longest string or key, UTF-16 units as written between the quotes. */
export const STRING_LENGTH = 64 * 1024;
/** Most problems that are listed for one file; reading then stops, and the last problem says so. */
export const PROBLEM_COUNT = 1000;
