import type { Arrival } from "../../facts/arrivals.ts";
import type { Operation } from "../../facts/bar-work.ts";
import type { CutLine, CutPair } from "../../facts/cut-list.ts";
import { formatQuantity } from "../../model/units/format-quantity.ts";
import type { UnitSystem } from "../../model/units/unit-system.ts";
import { listed } from "../count.ts";

function kindWords(operation: Operation, times: number, units: UnitSystem): string {
  const many = times > 1 ? `${times} × ` : "";
  if (operation.what === "tap") return `${many}${operation.words} tapped`;
  return `${many}${formatQuantity(operation.size, "length", units)} ${operation.words} from face ${operation.face ?? "A"}`;
}

const PAIRS: Readonly<Record<CutPair, string>> = {
  parallel: "parallel (parallelogram)",
  mirrored: "mirrored (trapezium)",
  askew: "askew to each other: see the drawing",
};

/**
 * What the length counts to where an end is cut at an angle, the angles, and how two cuts lie to each other: "over the long points, both
 * ends 45° out of square, mirrored (trapezium)". Nothing for square cuts.
 */
export function cutWords({ operations, pair }: CutLine, units: UnitSystem): string {
  const cuts = operations.filter(({ what }) => what === "angled cut");
  const angles = cuts.map(({ size }) => formatQuantity(size, "angle", units));
  const [first, second] = cuts;
  if (!first) return "";
  if (!second) return `over the long point, ${angles[0]} out of square at ${first.at}`;
  const both =
    angles[0] === angles[1]
      ? `both ends ${angles[0]} out of square`
      : `${angles[0]} out of square at ${first.at}, ${angles[1]} at ${second.at}`;
  return `over the long points, ${both}${pair ? `, ${PAIRS[pair]}` : ""}`;
}

/** What is done to a bar besides sawing it: "M8 tapped at from and to; 2 × 7 mm access hole from face C at 20 mm and 60 mm". */
export function operationWords(operations: readonly Operation[], units: UnitSystem): string {
  const kinds = new Map<string, Operation[]>();
  for (const operation of operations) {
    if (operation.what === "angled cut") continue;
    const key = JSON.stringify([operation.what, operation.size, operation.words, operation.face ?? ""]);
    const known = kinds.get(key);
    if (known) known.push(operation);
    else kinds.set(key, [operation]);
  }
  const words: string[] = [];
  for (const alike of kinds.values()) {
    const [first] = alike;
    if (!first) continue;
    const places = alike.map(({ at }) => (typeof at === "string" ? at : formatQuantity(at, "length", units)));
    words.push(`${kindWords(first, alike.length, units)} at ${listed([...new Set(places)])}`);
  }
  return words.join("; ");
}

/** What is left to do to the bars of a piece that comes built: "post-1: 7 mm access hole from face C at 20 mm". */
export function workWords(work: Arrival["work"], units: UnitSystem): string {
  return work.map(({ bar, operations }) => `${bar}: ${operationWords(operations, units)}`).join("; ");
}
