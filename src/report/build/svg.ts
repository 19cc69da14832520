import { escaped, tidy } from "../../drawing/svg.ts";
import type { PlannedPiece, PlannedStep } from "../../facts/build-plan.ts";
import { listed } from "../count.ts";
import { wrap } from "../text/wrap.ts";
import type { BuildSheet } from "./build-sheet.ts";
import { nameIn } from "./piece-names.ts";
import { runNumbers, stepRuns } from "./step-runs.ts";
import { type NameOf, named, pieceName, raisedWords, sideWords, torqueWords, wayWords } from "./step-words.ts";

/** One picture with its number and words, in picture units. */
const CELL = { wide: 420, high: 360, words: 72 } as const;
const COLUMNS = 3;
const MARGIN = 20;
/** More names than this do not fit under a picture. */
const MOST_NAMES = 5;
/** Lines of small words under a picture, one under the other, and letters that surely fit on one: of large words and of small ones. */
const LINES = { most: 2, apart: 16 } as const;
const FITS = { head: 50, small: 60 } as const;

/** Words on as many lines as there is room for; what is cut off ends in an ellipsis. */
function fitted(words: string, width: number, most: number): readonly string[] {
  const lines = wrap(words, width, { front: "", indent: 0 });
  const cut = (line: string): string => (line.length > width ? `${line.slice(0, width - 1)}…` : line);
  return lines.slice(0, most).map((line, i) => cut(i === most - 1 && lines.length > most ? `${line} …` : line));
}

/** Pictures show the frame as it will stand: words say how it lies. */
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

/** The order of building as pictures, one for each step or run of like steps: what goes on is brought out. */
export function* buildSvg(sheet: BuildSheet): Generator<string> {
  const draw = sheet.pictures([CELL.wide, CELL.high]);
  const { letterOf, nameOf } = nameIn(sheet);
  const cells = sheet.pieces.flatMap((piece) =>
    stepRuns(piece.planned.steps).map((run) => ({
      run,
      piece: piece.planned,
      letter: letterOf(piece.planned.id),
    })),
  );
  const rows = Math.ceil(cells.length / COLUMNS);
  const [wide, high] = [COLUMNS * (CELL.wide + MARGIN) + MARGIN, rows * (CELL.high + CELL.words + MARGIN) + MARGIN];
  yield `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${wide} ${high}" width="${wide}" height="${high}" font-family="sans-serif" font-size="14">\n`;
  yield `<title>${escaped(`${sheet.title}: order of building`)}</title>\n<rect width="100%" height="100%" fill="#ffffff"/>\n`;
  for (const [i, { run, piece, letter }] of cells.entries()) {
    const [x, y] = [
      MARGIN + (i % COLUMNS) * (CELL.wide + MARGIN),
      MARGIN + Math.floor(i / COLUMNS) * (CELL.high + CELL.words + MARGIN),
    ];
    const name = piece.from === "frame" ? "the frame" : pieceName(piece);
    const [head, more] = caption(run, piece, sheet, nameOf);
    const steps = { first: run[0]?.step.number ?? 1, last: run.at(-1)?.step.number ?? 1 };
    const picture = draw(steps, `step ${runNumbers(run)}`);
    yield `<g transform="translate(${tidy(x)} ${tidy(y)})">\n`;
    yield `<rect width="${CELL.wide}" height="${CELL.high + CELL.words}" fill="none" stroke="#c9ced2"/>\n`;
    yield picture.replace("<svg ", `<svg width="${CELL.wide}" height="${CELL.high}" `);
    yield `<text x="10" y="24" font-size="22" font-weight="bold">${runNumbers(run)}</text>\n`;
    yield `<text x="${CELL.wide - 10}" y="24" text-anchor="end" fill="#5b656d">${letter}: ${escaped(name)}</text>\n`;
    yield `<text x="10" y="${CELL.high + 20}">${escaped(fitted(head, FITS.head, 1)[0] ?? "")}</text>\n`;
    for (const [n, line] of fitted(more, FITS.small, LINES.most).entries())
      yield `<text x="10" y="${CELL.high + 40 + n * LINES.apart}" font-size="12" fill="#5b656d">${escaped(line)}</text>\n`;
    yield "</g>\n";
  }
  yield "</svg>\n";
}
