import type { Deadlock } from "./build-order.ts";
import type { Hinders } from "./hindrances.ts";

const WORDS: Readonly<Record<Hinders, (part: string, by: string) => string>> = {
  covered: (part, by) => `screws of ${part} lie behind ${by}`,
  bears: (part, by) => `${part} bears on ${by}`,
  "panel in slot": (part, by) => `${part} is held in a slot with ${by}`,
  "head in slot": (part, by) => `a screw's head holds ${part} in a slot of ${by}`,
  "in the way": (part, by) => `${by} stands in the way of ${part}`,
};

/** Why parts keep each other, link by link: "screws of low lie behind high; screws of high lie behind low". */
export function ringWords(ring: Deadlock["ring"]): string {
  return ring.map(({ part, by, why }) => WORDS[why](part.id, by.id)).join("; ");
}
