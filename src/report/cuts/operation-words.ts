import type { Operation } from "../../facts/cut-list.ts";
import { formatQuantity } from "../../model/units/format-quantity.ts";
import type { UnitSystem } from "../../model/units/unit-system.ts";
import { listed } from "../count.ts";

function kindWords(operation: Operation, times: number, units: UnitSystem): string {
  const many = times > 1 ? `${times} × ` : "";
  if (operation.what === "tap") return `${many}${operation.words} tapped`;
  if (operation.what === "angled cut") return `cut ${formatQuantity(operation.size, "angle", units)} out of square`;
  return `${many}${formatQuantity(operation.size, "length", units)} ${operation.words} from face ${operation.face ?? "A"}`;
}

/** What is done to a bar besides sawing it square: "M8 tapped at from and to; 2 × 7 mm access hole from face C at 20 mm and 60 mm". */
export function operationWords(operations: readonly Operation[], units: UnitSystem): string {
  const kinds = new Map<string, Operation[]>();
  for (const operation of operations) {
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
