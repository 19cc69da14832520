import { describe, expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/frame.resonates.ts";
import { referenceCheck } from "../references/load-reference.ts";
import { testedBracket } from "./portal.ts";
import { shakenPortal, swaysByHand } from "./shaken-portal.ts";

const STIFFNESS = 8e3;
const stock = [testedBracket("tested", STIFFNESS)].map((value, i) => ({
  file: `${i}.stock.json`,
  bytes: new TextEncoder().encode(JSON.stringify(value)),
}));

describe("a frame that swings with what shakes it", () => {
  // The three ways to sway and turn lie within a few hundredths of each other, the next far above.
  const { x, y, turn } = swaysByHand(STIFFNESS);
  const [least, most] = [Math.min(x, y, turn), Math.max(x, y, turn)];

  it("loads.dyn.avoid: the standard limits are those of common practice", () => {
    const { low, high } = referenceCheck("loads", "loads.dyn.avoid").expected.value as { low: number; high: number };
    expect([rule.criteria.low?.standard, rule.criteria.high?.standard]).toEqual([`${low}`, `${high}`]);
  });

  it("proves the rule", () => {
    const shaking =
      (shakes: number, criteria?: FrameFile["criteria"]) =>
      (file: FrameFile): void => {
        file.masses = shakenPortal(shakes).masses ?? [];
        if (criteria) file.criteria = criteria;
      };
    const within = 0.05;
    expect(
      proveRule(
        rule,
        shakenPortal(),
        [
          {
            title: "sway 1.3 times as fast as the shaking",
            edit: shaking(least / 1.3),
            finds: [{ at: "machine", key: "above", measured: 1.3, within }],
          },
          { title: "sway 1.48 times as fast as the shaking", edit: shaking(least / 1.48), finds: [] },
          {
            title: "that where the house asks for twice",
            edit: shaking(least / 1.48, { "resonance-high": 2 }),
            finds: [{ at: "machine", key: "above", measured: 1.48, within }],
          },
          {
            title: "the frame turns at 0.75 of the shaking",
            edit: shaking(most / 0.75),
            finds: [{ at: "machine", key: "below", measured: 0.75, within }],
          },
          { title: "the frame turns at 0.65 of the shaking", edit: shaking(most / 0.65), finds: [] },
          {
            title: "that where the house asks for half",
            edit: shaking(most / 0.65, { "resonance-low": 0.5 }),
            finds: [{ at: "machine", key: "below", measured: 0.65, within }],
          },
          {
            title: "vibration of the site alone has no frequency",
            edit: (file) => {
              file.site = { vibration: "strong" };
            },
            finds: [],
          },
        ],
        stock,
      ),
    ).toEqual([]);
  });
});
