import type { EndReach, Meeting } from "./end-reach.ts";
import type { EndState } from "./ends.ts";

const WORDS: Readonly<Record<Meeting, string>> = {
  eyes: "sticking out at the height of eyes",
  legs: "sticking out at the height of legs",
  hands: "in reach of hands",
};

/** How people come to the worst of some ends: "in reach of hands", "some sticking out at the height of eyes". */
export function meetingWords(ends: readonly EndState[], reach: EndReach): string {
  const met = ends.map((end) => reach.meets(end));
  const worst = (["eyes", "legs"] as const).find((meeting) => met.includes(meeting)) ?? "hands";
  return `${met.every((one) => one === worst) ? "" : "some "}${WORDS[worst]}`;
}
