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

/** Column `column` of the rows of numbers that follow `heading` up to `end`. */
function readColumn(dat: string, heading: string, end: string | undefined, column: number): number[] {
  const start = dat.indexOf(heading);
  if (start < 0) throw new Error(`no table "${heading}"`);
  const stop = end === undefined ? -1 : dat.indexOf(end, start);
  const found: number[] = [];
  for (const line of dat.slice(start, stop < 0 ? undefined : stop).split("\n")) {
    const words = line.trim().split(/\s+/).map(Number);
    if (words.length > column && words.every(Number.isFinite)) found.push(words[column] ?? Number.NaN);
  }
  return found;
}

/** Natural frequencies in cycles per second, from the first table of a frequency step. */
export const readModes = (dat: string): number[] =>
  readColumn(dat, "E I G E N V A L U E   O U T P U T", "P A R T I C I P A T I O N", 3);

export const readFactors = (dat: string): number[] =>
  readColumn(dat, "B U C K L I N G   F A C T O R   O U T P U T", undefined, 1);
