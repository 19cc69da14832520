import { defineCriterion } from "../criteria/criterion.ts";
import { defineFact } from "../facts/fact.ts";
import { footing } from "../facts/footing.ts";
import { frameRef } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { notApplicable } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

const brakes = defineCriterion({
  name: "braked-casters",
  of: "frame",
  quantity: "count",
  standard: "2",
  within: ["1", "8"],
  about: "casters with a brake in use that a rolling frame needs where something moves it",
  basis: "common practice: about a single brake it still turns",
});

/** A load counts as sideways from this sine on: about 6°. */
const SIDEWAYS = 0.1;

/** What sets a frame on wheels in motion, in words. */
const moving = defineFact<string | undefined>({
  id: "what-moves-it",
  compute(_, frame) {
    const load = frame.loads.find(({ direction }) => Math.hypot(direction[0], direction[1]) > SIDEWAYS);
    if (load) return `the load of "${load.case}"`;
    if (frame.floor.slope > 0) return "the slope of the floor";
    const shaking = frame.masses.find((mass) => mass.shakes !== undefined);
    return shaking?.ref.id;
  },
});

function brakeWords(braked: number): string {
  if (braked < 2) return `${braked === 0 ? "none" : "one"} of its casters has its brake set`;
  return `${braked} of its casters have their brakes set`;
}

export const rule = defineRule({
  id: "caster.unbraked",
  title: "A frame on wheels stays where it is put",
  group: "stands",
  level: "hold",
  basis: ["common practice"],
  needs: { footing, moving },
  criteria: { brakes },
  messages: {
    rolls: {
      text: "stands on casters and {mover:word} can roll it away; {braked:word}",
      advice: 'take at least two casters with brakes and give them "brake": true',
      measures: "count",
      sense: "at least",
    },
  },
  *inspect({ footing: feet, moving: mover }, { brakes: least }, say) {
    const rolling = feet.filter((foot) => foot.hold === "rolling");
    if (rolling.length === 0) yield notApplicable(frameRef, "it has no casters");
    else if (rolling.length < feet.length) yield notApplicable(frameRef, "some of its feet do not roll");
    else if (mover === undefined) yield notApplicable(frameRef, "nothing moves it");
    else {
      const braked = si(rolling.filter((foot) => foot.brake).length, "count");
      yield say.rolls(frameRef, { mover, braked: brakeWords(braked) }, { measured: braked, limit: least });
    }
  },
});
