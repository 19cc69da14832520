// Time and error band of section properties: `npx tsx tests/bench/section.bench.ts`. The first run of a section includes start-up
// of the code itself; the best of the later ones is what a run over many sections sees.
import { sectionProperties } from "../../src/section/section-properties.ts";
import {
  box,
  ellipse,
  lightSquare,
  lightSquareOneClosed,
  rectangle,
  s40,
  solid,
  stackedS40,
} from "../section/shapes.ts";

const LATER_RUNS = 5;

const sections = {
  "rectangle 6 x 40": solid(rectangle(6, 40)),
  "box 40 x 40 x 2": box(40, 40, 2),
  "box 80 x 40 x 0.5": box(80, 40, 0.5),
  "tube of 64 sides": { outer: ellipse(20, 20, 64), holes: [ellipse(18, 18, 64)] },
  S40: s40,
  "two S40 joined": stackedS40,
  "light square": lightSquare,
  "light square, one slot closed": lightSquareOneClosed,
};

const row = (...cells: readonly string[]) =>
  cells.map((cell, i) => (i === 0 ? cell.padEnd(30) : cell.padStart(11))).join("");

console.log(row("section", "triangles", "J [mm4]", "band +- %", "first ms", "later ms"));
for (const [name, region] of Object.entries(sections)) {
  const times: number[] = [];
  let p = sectionProperties(solid(rectangle(1, 1)));
  for (let run = 0; run <= LATER_RUNS; run++) {
    const start = performance.now();
    p = sectionProperties(region);
    times.push(performance.now() - start);
  }
  const [first = 0, ...later] = times;
  const band = (50 * (p.torsionBand.high - p.torsionBand.low)) / p.J;
  const best = later.reduce((a, b) => Math.min(a, b), Infinity);
  console.log(
    row(name, String(p.triangles), (p.J * 1e12).toPrecision(6), band.toFixed(4), first.toFixed(0), best.toFixed(0)),
  );
}
