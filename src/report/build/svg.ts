import { escaped, tidy } from "../../drawing/svg.ts";
import type { PlannedPiece, PlannedStep } from "../../facts/build-plan.ts";
import { listed } from "../count.ts";
import type { BuildSheet } from "./build-sheet.ts";
import { runNumbers, stepRuns } from "./step-runs.ts";
import { pieceName, torqueWords } from "./step-words.ts";

/** One picture with its number and words, in picture units. */
const CELL = { wide: 420, high: 360, words: 54 } as const;
const COLUMNS = 3;
const MARGIN = 20;
/** More names than this do not fit under a picture. */
const MOST_NAMES = 5;

const letterOf = (index: number): string => String.fromCharCode(65 + (index % 26));

function caption(run: readonly PlannedStep[], piece: PlannedPiece, sheet: BuildSheet): readonly string[] {
  const names = listed(
    run.flatMap(({ step, lifts }) =>
      step.places.map(({ id }) => {
        const inner = lifts.find((one) => one.ref.id === id && one.assembly !== undefined)?.assembly;
        return inner === undefined ? id : letterOf(sheet.pieces.findIndex(({ planned }) => planned.id === inner));
      }),
    ),
    MOST_NAMES,
  );
  const [first] = run;
  switch (first?.step.what) {
    case "square":
      return [
        piece.squareWithin === undefined ? "lay them true, then tighten" : "square it, then tighten",
        torqueWords(first.tightens, sheet),
      ];
    case "feet":
      return ["feet or casters", names];
    case "finish":
      return ["caps", names];
    case "equipment":
      return [first.step.assembly === "" ? "equipment, once it stands" : "equipment", names];
    default:
      return [names];
  }
}

/** The order of building as pictures, one for each step or run of like steps: what goes on is brought out. */
export function* buildSvg(sheet: BuildSheet): Generator<string> {
  const draw = sheet.pictures([CELL.wide, CELL.high]);
  const cells = sheet.pieces.flatMap((piece, i) =>
    stepRuns(piece.planned.steps).map((run) => ({
      run,
      piece: piece.planned,
      letter: letterOf(i),
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
    const [head = "", ...more] = caption(run, piece, sheet);
    const steps = { first: run[0]?.step.number ?? 1, last: run.at(-1)?.step.number ?? 1 };
    const picture = draw(steps, `step ${runNumbers(run)}`);
    yield `<g transform="translate(${tidy(x)} ${tidy(y)})">\n`;
    yield `<rect width="${CELL.wide}" height="${CELL.high + CELL.words}" fill="none" stroke="#c9ced2"/>\n`;
    yield picture.replace("<svg ", `<svg width="${CELL.wide}" height="${CELL.high}" `);
    yield `<text x="10" y="24" font-size="22" font-weight="bold">${runNumbers(run)}</text>\n`;
    yield `<text x="${CELL.wide - 10}" y="24" text-anchor="end" fill="#5b656d">${letter}: ${escaped(name)}</text>\n`;
    yield `<text x="10" y="${CELL.high + 20}">${escaped(head)}</text>\n`;
    for (const line of more)
      yield `<text x="10" y="${CELL.high + 40}" font-size="12" fill="#5b656d">${escaped(line)}</text>\n`;
    yield "</g>\n";
  }
  yield "</svg>\n";
}
