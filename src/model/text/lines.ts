import type { Place } from "../problem.ts";

const LINE_FEED = 10;
const CARRIAGE_RETURN = 13;

/** A piece of text by its offsets in UTF-16 units, end exclusive. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

export interface Lines {
  place(pointer: string, span: Span): Place;
}

/** Line starts of a text; LF, CR and CRLF each end a line. */
function lineStarts(text: string): readonly number[] {
  const starts = [0];
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    if (unit === LINE_FEED) starts.push(i + 1);
    else if (unit === CARRIAGE_RETURN && text.charCodeAt(i + 1) !== LINE_FEED) starts.push(i + 1);
  }
  return starts;
}

/** Turns offsets into lines and columns; the table of lines is built when the first place is asked for. */
export function linesOf(file: string, text: string): Lines {
  let starts: readonly number[] | undefined;
  const lineAt = (offset: number): number => {
    starts ??= lineStarts(text);
    let low = 0;
    let high = starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((starts[middle] ?? 0) <= offset) low = middle;
      else high = middle - 1;
    }
    return low;
  };
  return {
    place(pointer, { start, end }) {
      const line = lineAt(start);
      const endLine = lineAt(end);
      return {
        file,
        pointer,
        line: line + 1,
        column: start - (starts?.[line] ?? 0) + 1,
        endLine: endLine + 1,
        endColumn: end - (starts?.[endLine] ?? 0) + 1,
      };
    },
  };
}
