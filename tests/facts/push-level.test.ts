import { expect, it } from "vitest";
import { pushLevel } from "../../src/facts/push-level.ts";
import { structure } from "../../src/facts/structure.ts";
import { hungRails } from "../rules/hung-rails.ts";
import { known } from "./known.ts";

const pushed = (top: number): { height: number; bars: readonly string[] } => {
  const file = hungRails(100, top);
  const { nodes, height } = known(pushLevel, file);
  return { height, bars: nodes.map((node) => known(structure, file).nodes[node]?.bar ?? "") };
};

it("people push at 1.1 m, however low the joints of posts that stand taller are (EN 1991-1-1, 6.4)", () => {
  // Posts of 1.5 m, their highest joints at 0.8 m.
  expect(pushed(1500)).toEqual({ height: 1.1, bars: ["leg-1", "leg-2", "leg-3", "leg-4"] });
});

it("people push a lower frame at its highest joints", () => {
  expect(pushed(1000).height).toBeCloseTo(0.8, 9);
});
