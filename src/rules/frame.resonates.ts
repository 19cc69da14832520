import { defineCriterion } from "../criteria/criterion.ts";
import { frequencies, type Neighbours } from "../facts/frequencies.ts";
import type { Bound } from "../facts/joint-stiffness.ts";
import { response } from "../facts/response.ts";
import { whyNotSolved } from "../facts/why-not-solved.ts";
import { frameRef } from "../model/ref.ts";
import { type Si, si } from "../model/units/quantity.ts";
import { notApplicable, undecided } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

const low = defineCriterion({
  name: "resonance-low",
  of: "frame",
  quantity: "ratio",
  standard: "0.7",
  within: ["0.1", "1"],
  about: "how near from below a natural frequency may come to what equipment shakes with, as a share of it",
  basis: "common practice: undamped, at 0.7 it moves about as far as a steady force of that size would move it",
});

const high = defineCriterion({
  name: "resonance-high",
  of: "frame",
  quantity: "ratio",
  standard: "1.4",
  within: ["1", "5"],
  about: "how near from above a natural frequency may come to what equipment shakes with, as a multiple of it",
  basis: "common practice: undamped, at 1.4 it moves about twice as far as a steady force of that size would move it",
});

/** What the share is with the other joint stiffnesses; where none lies on that side, nothing is said. */
function others(
  next: ReadonlyMap<Bound, Neighbours>,
  shakes: number,
  side: "below" | "above",
): Readonly<Record<string, Si<"ratio">>> {
  const found: Record<string, Si<"ratio">> = {};
  for (const [bound, neighbours] of next) {
    const frequency = neighbours[side];
    if (bound !== "typical" && frequency !== undefined) found[bound] = si(frequency / shakes, "ratio");
  }
  return found;
}

export const rule = defineRule({
  id: "frame.resonates",
  title: "The frame does not swing with what shakes it",
  group: "frame",
  level: "hold",
  basis: ["natural frequencies of the whole frame (docs/method)", "common practice"],
  needs: { response, frequencies },
  criteria: { low, high },
  messages: {
    below: {
      text: "shakes at {shakes:frequency}; the frame swings by itself at {share:ratio} times that",
      advice:
        "stiffen it well beyond that by a brace or sturdier brackets, let it stand softer, or set the equipment on mounts",
      measures: "ratio",
      sense: "at most",
    },
    above: {
      text: "shakes at {shakes:frequency}; the frame swings by itself at {share:ratio} times that",
      advice:
        "stiffen it by a brace, a larger profile under the equipment or sturdier brackets, or set the equipment on mounts",
      measures: "ratio",
      sense: "at least",
    },
  },
  *inspect({ response: found, frequencies: shaking }, given, say) {
    if (shaking.length === 0) {
      yield notApplicable(frameRef, "nothing shakes it");
      return;
    }
    if (found.kind !== "solved") {
      yield undecided(frameRef, whyNotSolved(found));
      return;
    }
    for (const { mass, carried, next } of shaking) {
      const typical = next.get("typical");
      const { shakes } = mass;
      if (!carried || !typical || shakes === undefined) {
        yield undecided(mass.ref, "what carries it: it rests on no bar that stands");
        continue;
      }
      const under = { combination: "all equipment in place", bound: "typical" } as const;
      const otherBelow = others(next, shakes, "below");
      // With typical joints none may lie below where one does with soft joints: then it is none, 0, beside that one.
      if (typical.below !== undefined || Object.keys(otherBelow).length > 0) {
        const share = si((typical.below ?? 0) / shakes, "ratio");
        const limit = given.low.at(mass.ref);
        yield say.below(mass.ref, { shakes, share }, { measured: share, limit, under, otherBounds: otherBelow });
      }
      if (typical.above === undefined) continue;
      const share = si(typical.above / shakes, "ratio");
      const limit = given.high.at(mass.ref);
      const otherBounds = others(next, shakes, "above");
      yield say.above(mass.ref, { shakes, share }, { measured: share, limit, under, otherBounds });
    }
  },
});
