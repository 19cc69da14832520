/** Whether a name fits a pattern in which "*" is any run of characters and "?" is one. Needs no stack, and time in proportion to the product of the lengths. */
function fitsName(name: string, pattern: string): boolean {
  let at = 0;
  let next = 0;
  let star = -1;
  let resume = 0;
  while (at < name.length) {
    if (next < pattern.length && pattern[next] === "*") {
      star = next++;
      resume = at;
    } else if (next < pattern.length && (pattern[next] === "?" || pattern[next] === name[at])) {
      at++;
      next++;
    } else if (star >= 0) {
      next = star + 1;
      at = ++resume;
    } else return false;
  }
  while (pattern[next] === "*") next++;
  return next === pattern.length;
}

/** The same one level up: "**" is any run of folders, also none. */
function fitsFolders(names: readonly string[], patterns: readonly string[]): boolean {
  let at = 0;
  let next = 0;
  let star = -1;
  let resume = 0;
  while (at < names.length) {
    const pattern = patterns[next];
    if (pattern === "**") {
      star = next++;
      resume = at;
    } else if (pattern !== undefined && fitsName(names[at] ?? "", pattern)) {
      at++;
      next++;
    } else if (star >= 0) {
      next = star + 1;
      at = ++resume;
    } else return false;
  }
  while (patterns[next] === "**") next++;
  return next === patterns.length;
}

/** Whether a relative path with forward slashes fits a pattern: "*", "?" within a name, "**" for folders. */
export function fitsPattern(path: string, pattern: string): boolean {
  const clean = pattern.startsWith("./") ? pattern.slice(2) : pattern;
  return fitsFolders(path.split("/"), clean.split("/"));
}

/** Why a pattern can fit no frame, or means something else than it does elsewhere; undefined when it is sound. */
export function faultOfPattern(pattern: string): string | undefined {
  if (pattern.trim() === "") return "it is empty";
  if (/[[\]{}]/.test(pattern)) return "brackets and braces choose nothing here";
  if (pattern.includes("\\")) return "folders are told apart by /";
  if (/^\/|^[A-Za-z]:/.test(pattern)) return "it is no relative path";
  if (pattern.split("/").some((name) => name.includes("**") && name !== "**")) return "** stands alone between /";
  return pattern.endsWith("/") ? "it names a folder and no file: add **" : undefined;
}
