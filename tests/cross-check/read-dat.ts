/** Displacements that a CalculiX result file (.dat) lists, three a node. */
export function readDisplacements(dat: string): Map<number, readonly number[]> {
  const found = new Map<number, readonly number[]>();
  let reading = false;
  for (const line of dat.split("\n")) {
    const words = line.trim().split(/\s+/);
    if (/^[a-z]/.test(words[0] ?? "")) reading = words[0] === "displacements";
    else if (reading && words.length >= 4) found.set(Number(words[0]), words.slice(1).map(Number));
  }
  return found;
}

/** Natural frequencies in cycles per second from the first table of a frequency step. */
export function readModes(dat: string): number[] {
  const column = 3;
  const found: number[] = [];
  for (const line of dat.split("\n")) {
    // The first table ends where the next begins; its rows are a mode number and values.
    if (/P A R T I C I P A T I O N/.test(line)) break;
    const words = line.trim().split(/\s+/).map(Number);
    if (words.length > column && words.every(Number.isFinite)) found.push(words[column] ?? Number.NaN);
  }
  return found;
}
