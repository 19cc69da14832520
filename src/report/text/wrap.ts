/** A line with the pieces that wrap under it: what stands in front, the words, and the indent of lines that follow. */
export interface Hanging {
  readonly front: string;
  readonly indent: number;
}

function columnsOf(text: string): number {
  let columns = 0;
  for (const _ of text) columns++;
  return columns;
}

/** Breaks words into lines of at most `width` columns where a blank allows it; a word longer than a line stays whole. */
export function wrap(words: string, width: number, { front, indent }: Hanging): readonly string[] {
  const lines: string[] = [];
  const margin = " ".repeat(indent);
  let line = front;
  let used = columnsOf(front);
  let empty = true;
  for (const word of words.split(" ")) {
    if (word === "") continue;
    const columns = columnsOf(word);
    const blank = empty ? 0 : 1;
    if (!empty && used + blank + columns > width) {
      lines.push(line);
      line = margin + word;
      used = indent + columns;
    } else {
      line += (blank ? " " : "") + word;
      used += blank + columns;
    }
    empty = false;
  }
  lines.push(line);
  return lines;
}
