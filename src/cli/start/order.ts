import { toSi, unitOf } from "../../model/units/factors.ts";
import { readQuantity } from "../../model/units/read-quantity.ts";
import { bareUnit, type UnitSystem } from "../../model/units/unit-system.ts";
import { Unusable } from "../unusable.ts";
import type { Kind, Range, Ranges, Wish } from "./drawing.ts";
import { tidy } from "./drawing.ts";
import { profilesFor, seriesOf } from "./series.ts";

/** The words of the command line, as they came. */
export interface Order {
  readonly units: UnitSystem;
  readonly profile?: string;
  readonly length?: string;
  readonly depth?: string;
  readonly height?: string;
}

/** A usual size of each kind, mm or in. */
export type UsualSize = Readonly<Record<UnitSystem, readonly [length: number, depth: number, height: number]>>;

/** A range rounded inwards to what people ask for: whole millimetres, quarters of an inch. */
function told([least, greatest]: Range, units: UnitSystem): Range {
  const step = units === "mm-N-kg" ? 1 : 0.25;
  return [Math.ceil(tidy(least / step)) * step, Math.floor(tidy(greatest / step)) * step];
}

function sized(word: string, side: keyof Ranges, units: UnitSystem): number {
  // On a command line every value is text; one without a unit is in the frame's own.
  const plain = Number(word);
  const read = readQuantity(word.trim() !== "" && Number.isFinite(plain) ? plain : word, "length", units);
  if (!("si" in read))
    throw new Unusable(`--${side}: found ${read.found}; expected ${read.expected}${read.mend ? `; ${read.mend}` : ""}`);
  const unit = unitOf("length", bareUnit("length", units));
  return tidy(read.si / (unit === undefined ? 1 : toSi(1, unit)));
}

/**
 * What was ordered, checked.
 * @throws Unusable with what would do instead.
 */
export function wishOf(kind: Kind, usual: UsualSize, order: Order): Wish {
  const { units } = order;
  const known = profilesFor(units);
  const profile = order.profile ?? known[0] ?? "";
  const series = seriesOf(profile);
  if (series === undefined) {
    throw new Unusable(
      `start draws with single profiles of the built-in stock, not with "${profile}"; for ${units} there are ${known.join(", ")}`,
    );
  }
  if (series.units !== units) {
    throw new Unusable(
      `"${profile}" is made in the other units: add --units ${series.units}, or take one of ${known.join(", ")}`,
    );
  }
  const checked = (side: keyof Ranges, usually: number, range: Range, high = ""): number => {
    const [least, greatest] = told(range, units);
    const word = order[side];
    const size = word === undefined ? Math.min(Math.max(usually, least), greatest) : sized(word, side, units);
    if (size >= least && size <= greatest) return size;
    const unit = bareUnit("length", units);
    throw new Unusable(
      `${kind.article} of ${profile}${high} has a ${side} from ${least} to ${greatest} ${unit}; --${side} ${word} is not between them`,
    );
  };
  const ranges = (height: number): Ranges => {
    const found = kind.ranges(series, height);
    if (found !== undefined) return found;
    const fit = known.filter((name) => {
      const other = seriesOf(name);
      return other !== undefined && kind.ranges(other, height) !== undefined;
    });
    throw new Unusable(`${profile} is too light for ${kind.article}; take one of ${fit.join(", ")}`);
  };
  const [usualLength, usualDepth, usualHeight] = usual[units];
  const height = checked("height", usualHeight, ranges(usualHeight).height);
  // How long and deep it must be to stand may depend on how high it is.
  const high = ` that is ${height} ${bareUnit("length", units)} high`;
  const { length, depth } = ranges(height);
  return {
    series,
    profile,
    length: checked("length", usualLength, length, high),
    depth: checked("depth", usualDepth, depth, high),
    height,
  };
}
