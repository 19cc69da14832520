import { escaped, tidy } from "../../drawing/svg.ts";
import type { PlannedPiece, PlannedStep } from "../../facts/build-plan.ts";
import { listed } from "../count.ts";
import { wrap } from "../text/wrap.ts";
import type { BuildSheet } from "./build-sheet.ts";
import { nameIn } from "./piece-names.ts";
import { runNumbers, stepRuns } from "./step-runs.ts";
import { type NameOf, named, pieceName, raisedWords, sideWords, torqueWords, wayWords } from "./step-words.ts";

/** One picture with its number, in picture units; its words stand below. */
const CELL = { wide: 420, high: 360 } as const;
const COLUMNS = 3;
const MARGIN = 20;
/** More names than this make a picture harder to read than the text. */
const MOST_NAMES = 5;
/** Lines under a picture, large and small: their size, how far one lies under the last, and letters that surely fit on one. */
const HEAD = { size: 14, apart: 20, fits: 50 } as const;
const SMALL = { size: 12, apart: 16, fits: 60 } as const;
/** Room under the last line. */
const BELOW = 14;

interface Line {
  readonly words: string;
  readonly size: number;
  /** Under the picture. */
  readonly down: number;
}

/** Words under a picture, on as many lines as they need; a word longer than a line goes on on the next. */
function linesOf(head: string, more: string): readonly Line[] {
  let down = 0;
  return [
    { words: head, style: HEAD },
    { words: more, style: SMALL },
  ].flatMap(({ words, style }) =>
    wrap(words, style.fits, { front: "", indent: 0 })
      .flatMap((line) => line.match(new RegExp(`.{1,${style.fits}}`, "gu")) ?? [])
      .map((line) => {
        down += style.apart;
        return { words: line, size: style.size, down };
      }),
  );
}

/** On which side the frame lies in the picture. */
const lyingWords = (step: PlannedStep, piece: PlannedPiece): string =>
  step === piece.steps[0] ? `begin it lying on ${sideWords(piece)}` : "it still lies";

function placeWords(run: readonly PlannedStep[], piece: PlannedPiece): string {
  const [first] = run;
  if (!first) return "";
  const side = first.step.lying && piece.from === "frame" ? lyingWords(first, piece) : "";
  const way = piece.from === "frame" ? wayWords(first.step) : "";
  const each = run.length > 1 && first.connectors.length > 0 ? "each with " : "";
  const fixes = first.connectors.length > 0 ? `${each}${named(first.connectors)}` : "";
  return [side, way, fixes].filter((words) => words !== "").join("; ");
}

function caption(
  run: readonly PlannedStep[],
  piece: PlannedPiece,
  sheet: BuildSheet,
  nameOf: NameOf,
): readonly [string, string] {
  const names = listed(
    run.flatMap((step) => step.step.places.map(({ id }) => nameOf(step, id))),
    MOST_NAMES,
  );
  const [first] = run;
  switch (first?.step.what) {
    case "square":
      return [
        piece.squareWithin === undefined ? "lay them true, then tighten" : "square it, then tighten",
        torqueWords(first.tightens, sheet),
      ];
    case "stand":
      return ["stand it up", first.raised ? raisedWords(first.raised, sheet) : ""];
    case "feet":
      return [first.step.lying ? "feet or casters, while it lies" : "tip it; feet or casters", names];
    case "finish":
      return ["caps", names];
    case "equipment":
      return [first.step.assembly === "" ? "equipment, once it stands" : "equipment", names];
    default:
      return [names, placeWords(run, piece)];
  }
}

/** Rows of cells, each as high as the longest words in it need. */
function rowsOf(
  cells: readonly { readonly lines: readonly Line[] }[],
): readonly { readonly top: number; readonly high: number }[] {
  const rows: { readonly top: number; readonly high: number }[] = [];
  let top: number = MARGIN;
  for (let i = 0; i < cells.length; i += COLUMNS) {
    const words = cells.slice(i, i + COLUMNS).map(({ lines }) => lines.at(-1)?.down ?? 0);
    const high = CELL.high + Math.max(...words) + BELOW;
    rows.push({ top, high });
    top += high + MARGIN;
  }
  return rows;
}

/** The order of building as pictures, one for each step or run of like steps: what goes on is brought out. */
export function* buildSvg(sheet: BuildSheet): Generator<string> {
  const draw = sheet.pictures([CELL.wide, CELL.high]);
  const { letterOf, nameOf } = nameIn(sheet);
  const cells = sheet.pieces.flatMap(({ planned: piece }) =>
    stepRuns(piece.steps).map((run) => ({
      run,
      piece,
      letter: letterOf(piece.id),
      lines: linesOf(...caption(run, piece, sheet, nameOf)),
    })),
  );
  const rows = rowsOf(cells);
  const last = rows.at(-1);
  const wide = COLUMNS * (CELL.wide + MARGIN) + MARGIN;
  const high = last ? last.top + last.high + MARGIN : MARGIN;
  yield `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${wide} ${high}" width="${wide}" height="${high}" font-family="sans-serif" font-size="14">\n`;
  yield `<title>${escaped(`${sheet.title}: order of building`)}</title>\n<rect width="100%" height="100%" fill="#ffffff"/>\n`;
  for (const [i, { run, piece, letter, lines }] of cells.entries()) {
    const x = MARGIN + (i % COLUMNS) * (CELL.wide + MARGIN);
    const row = rows[Math.floor(i / COLUMNS)] ?? { top: MARGIN, high: CELL.high };
    const name = piece.from === "frame" ? "the frame" : pieceName(piece);
    const steps = { first: run[0]?.step.number ?? 1, last: run.at(-1)?.step.number ?? 1 };
    const picture = draw(steps, `step ${runNumbers(run)}`);
    yield `<g transform="translate(${tidy(x)} ${tidy(row.top)})">\n`;
    yield `<rect width="${CELL.wide}" height="${row.high}" fill="none" stroke="#c9ced2"/>\n`;
    yield picture.replace("<svg ", `<svg width="${CELL.wide}" height="${CELL.high}" `);
    yield `<text x="10" y="24" font-size="22" font-weight="bold">${runNumbers(run)}</text>\n`;
    yield `<text x="${CELL.wide - 10}" y="24" text-anchor="end" fill="#5b656d">${letter}: ${escaped(name)}</text>\n`;
    for (const { words, size, down } of lines) {
      const style = size === HEAD.size ? "" : ` font-size="${size}" fill="#5b656d"`;
      yield `<text x="10" y="${CELL.high + down}"${style}>${escaped(words)}</text>\n`;
    }
    yield "</g>\n";
  }
  yield "</svg>\n";
}
