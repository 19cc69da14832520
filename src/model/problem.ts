/** Where in a file something stands. Lines and columns start at 1, columns count UTF-16 units, the end is exclusive. */
export interface Place {
  readonly file: string;
  /** RFC 6901 pointer to the value, "" for the whole file. */
  readonly pointer: string;
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
}

/** Why a file could not be read as its author meant it. An error refuses the file, a warning lets it through. */
export interface Problem {
  /** In kebab case and for ever, like "duplicate-key". */
  readonly code: string;
  readonly weight: "error" | "warning";
  readonly place: Place;
  readonly found: string;
  readonly expected: string;
  readonly mend?: string;
}

/** Whether what was read may not be what its author meant: a value no frame of this kind has, most often a slip in a unit. */
export function isDoubtful({ code }: Problem): boolean {
  return code === "doubtful-value";
}

/** Negative, zero or positive by UTF-16 code units: the same in every locale. */
export function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

export function comparePlaces(a: Place, b: Place): number {
  return (
    compareText(a.file, b.file) ||
    a.line - b.line ||
    a.column - b.column ||
    a.endLine - b.endLine ||
    a.endColumn - b.endColumn ||
    compareText(a.pointer, b.pointer)
  );
}

/** A total order: by place, then errors before warnings, then by the texts; zero only for problems that read the same. */
export function compareProblems(a: Problem, b: Problem): number {
  return (
    comparePlaces(a.place, b.place) ||
    compareText(a.weight, b.weight) ||
    compareText(a.code, b.code) ||
    compareText(a.found, b.found) ||
    compareText(a.expected, b.expected) ||
    compareText(a.mend ?? "", b.mend ?? "")
  );
}
