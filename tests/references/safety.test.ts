import { describe, expect, it } from "vitest";
import { rule as tips } from "../../src/rules/frame.tips.ts";
import { registerFamily } from "./family-register.ts";
import { referenceCheck } from "./load-reference.ts";

const HELD: Readonly<Record<string, readonly string[]>> = {
  "facts/reach-distances.test.ts": [
    "safety.iso13857.t4.",
    "safety.iso13857.lookup.",
    "safety.iso13857.upward",
    "safety.iso13857.around",
    "safety.iso13857.body",
    "safety.iso13857.leg-slot",
    "safety.iso13857.t1-low.",
    "safety.iso13857.t2-high.",
    "safety.iso13857.over.",
  ],
  "rules/frame.tips.test.ts": ["safety.tip.angle", "safety.tip.push", "safety.tip.swivel"],
  "facts/lifting.test.ts": [
    "safety.iso11228.mref",
    "safety.niosh.const",
    "safety.niosh.ex1o",
    "safety.niosh.ex1d",
    "safety.niosh.ex2o",
    "safety.niosh.ex3o",
    "safety.niosh.metric.",
    "safety.team.two",
  ],
  "references/safety.test.ts": ["safety.tip.iec62368", "safety.tip.iec61010", "safety.tip.iec60601"],
};

const NOT_HELD: Readonly<Record<string, readonly string[]>> = {
  "doors turn by hand; no part of a frame file moves by power and crushes": ["safety.iso13854."],
  "no panel is struck on purpose: energies of impact are for the test house": ["safety.iso14120.softbody"],
  "the distances of ISO 13857 are used throughout; these are another country's for the same purpose": [
    "safety.osha.finger",
    "safety.osha.o10.",
  ],
  "railings for people on platforms fall under building rules, not under guards": ["safety.osha.rail"],
  "how often and how well something is gripped is set as the factor itself": ["safety.niosh.FM.", "safety.niosh.CM"],
  "no speed is declared from which a frame on wheels is stopped": ["safety.tip.brake"],
  "edges are broken in the workshop and drawn in no frame file; end.raw asks for it": ["safety.edge.break"],
  "whether rails invite to climbing depends on who is about": ["safety.climb.rung-gap"],
};

registerFamily("safety", HELD, NOT_HELD);

describe("usual limits of frame.tips are those of the standards", () => {
  const { tilt, push, share, reach } = tips.criteria;

  it("safety.tip.iec62368: 10°, 13 % of the weight, at most 250 N, at up to 1.5 m", () => {
    const asked = referenceCheck("safety", "safety.tip.iec62368").expected.value as Record<string, number>;
    expect(tilt?.standard).toBe(`${asked.tilt_deg}°`);
    expect(share?.standard).toBe(`${(asked.push_pct ?? 0) / 100}`);
    expect(push?.standard).toBe(`${asked.push_max} N`);
    expect(reach?.standard).toBe(`${asked.height_max_mm} mm`);
  });

  it.each([
    ["safety.tip.iec61010", "tilt_deg"],
    ["safety.tip.iec60601", "transport"],
  ])("%s: 10°", (id, name) => {
    const asked = referenceCheck("safety", id).expected.value as Record<string, number>;
    expect(tilt?.standard).toBe(`${asked[name]}°`);
  });
});
