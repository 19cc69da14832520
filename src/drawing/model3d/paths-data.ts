import type { Body } from "../../facts/bodies.ts";
import type { LoadPath } from "../../facts/load-paths.ts";
import type { Vec3 } from "../../geometry/vector.ts";
import type { UnitSystem } from "../../model/units/unit-system.ts";
import { footWords, passedWords, sumWords } from "../passing-words.ts";
import type { PathData } from "./model-data.ts";

const rounded = (value: number, digits: number): number => Number(value.toFixed(digits)) + 0;
const mm = (point: Vec3): readonly number[] => point.map((c) => rounded(c * 1000, 1));
const newtons = (vector: Vec3): readonly number[] => vector.map((c) => rounded(c, 1));

/** The load paths as the viewer takes them, N and mm. */
export function pathsData(paths: readonly LoadPath[], all: readonly Body[], units: UnitSystem): readonly PathData[] {
  const indexOf = new Map(all.map((body, i) => [body.bar.ref.id, i]));
  return paths.map((path) => ({
    name: path.name,
    sum: sumWords(path, units),
    carried: all.map(({ bar }) =>
      path
        .carriedBy(bar.ref.id)
        .flatMap(({ from, to, size, axial }) => [
          rounded(from, 4),
          rounded(to, 4),
          rounded(size, 1),
          rounded(axial, 1),
        ]),
    ),
    passings: path.passings.map((passing) => ({
      giver: indexOf.get(passing.giver) ?? -1,
      taker: indexOf.get(passing.taker) ?? -1,
      at: mm(passing.at),
      seat: newtons(passing.seat),
      held: newtons(passing.held),
      words: passedWords(passing, units),
    })),
    feet: path.feet.map((foot) => ({
      at: mm(foot.at),
      force: newtons(foot.force),
      words: footWords(foot, units),
    })),
  }));
}
