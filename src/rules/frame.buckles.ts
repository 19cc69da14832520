import { defineCriterion } from "../criteria/criterion.ts";
import { safetyFactor } from "../criteria/safety-factor.ts";
import { lineWords } from "../facts/axis-words.ts";
import { dividedBy, loadFactors } from "../facts/load-factors.ts";
import { response } from "../facts/response.ts";
import { stability } from "../facts/stability.ts";
import { structure } from "../facts/structure.ts";
import { whyNotSolved } from "../facts/why-not-solved.ts";
import { frameRef, ref } from "../model/ref.ts";
import { type Si, si } from "../model/units/quantity.ts";
import { notApplicable, undecided } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

const critical = defineCriterion({
  name: "critical-factor",
  of: "frame",
  quantity: "ratio",
  standard: "3",
  within: ["1", "20"],
  about: "by which factor the loads of a strength combination may grow before the whole frame buckles, at least",
  basis: "EN 1993-1-1:2005 and EN 1999-1-1:2007, 5.2.1: below 3 it no longer does to scale up the sway moments",
});

export const rule = defineRule({
  id: "frame.buckles",
  title: "The frame as a whole is far from buckling",
  group: "frame",
  level: "reject",
  basis: [
    "linear buckling of the whole frame (docs/method)",
    "EN 1999-1-1:2007, 5.2.1",
    "EN 1990:2002, 6.4: strength combinations",
  ],
  needs: { response, stability, structure, by: loadFactors },
  criteria: { least: critical, safety: safetyFactor },
  messages: {
    buckles: {
      text: "buckles at {factor:ratio} times its load; {bar:bar} then moves furthest, {way:word}",
      advice: "brace it, hold its posts by a rail half way, or take larger or gusseted brackets",
      measures: "ratio",
      working: { formula: "det(K − α B) = 0: stiffness K, axial forces B" },
      sense: "at least",
    },
  },
  *inspect({ response: found, stability: known, structure: nodes, by }, { least, safety }, say) {
    if (found.kind !== "solved") {
      yield undecided(frameRef, whyNotSolved(found));
      return;
    }
    const { governing } = known;
    if (!governing) {
      yield notApplicable(
        frameRef,
        "nothing is pressed, or so little that it would take more than a thousand times its load",
      );
      return;
    }
    const { view, mode } = governing;
    let furthest = { bar: "", size: 0, way: [0, 0, 1] as readonly [number, number, number] };
    for (const [i, { bar }] of nodes.nodes.entries()) {
      const way = mode.moved(i);
      const size = Math.hypot(...way);
      if (size > furthest.size + 1e-6) furthest = { bar, size, way };
    }
    const { size, way, bar } = furthest;
    const unit = size > 0 ? ([way[0] / size, way[1] / size, way[2] / size] as const) : way;
    const otherBounds: Record<string, Si<"ratio">> = {};
    for (const [bound, factor] of known.others) if (Number.isFinite(factor)) otherBounds[bound] = si(factor, "ratio");
    const factor = si(mode.factor, "ratio");
    const times = dividedBy(by, safety.value);
    const limit = {
      ...least,
      value: si(least.value * times, "ratio"),
      basis: times === 1 ? least.basis : `${least.value} times the safety factor ${times}: ${least.basis}`,
    };
    yield say.buckles(
      frameRef,
      { factor, bar: ref("bar", bar), way: lineWords(unit) },
      { measured: factor, limit, under: { combination: view.combination.name, bound: view.bound }, otherBounds },
    );
  },
});
