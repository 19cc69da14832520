import { defineCriterion } from "../criteria/criterion.ts";
import { lifters, liftMass } from "../criteria/lift-mass.ts";
import { lifted } from "../facts/lifted.ts";
import { peopleFor, recommendedMass, teamMultiple } from "../facts/lifting.ts";
import { si } from "../model/units/quantity.ts";
import { notApplicable } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

const NIOSH = "revised lifting equation, NIOSH 94-110";

const index = defineCriterion({
  name: "lifting-index",
  of: "frame",
  quantity: "ratio",
  standard: "2",
  within: ["0.5", "3"],
  about: "share of one person over the mass recommended for this way of lifting",
  basis: `${NIOSH}: 1 is the aim, 3 too much for most people; between them for a lift done once`,
});
const reach = defineCriterion({
  name: "lift-reach",
  of: "frame",
  quantity: "length",
  standard: "400 mm",
  within: ["250 mm", "630 mm"],
  about: "how far before the ankles the hands hold",
  basis: NIOSH,
});
const height = defineCriterion({
  name: "lift-height",
  of: "frame",
  quantity: "length",
  standard: "750 mm",
  within: ["0 mm", "1750 mm"],
  about: "height of the hands where the lift begins: that of a table",
  basis: NIOSH,
});
const travel = defineCriterion({
  name: "lift-travel",
  of: "frame",
  quantity: "length",
  standard: "500 mm",
  within: ["0 mm", "1750 mm"],
  about: "how far it is lifted or lowered",
  basis: NIOSH,
});
const turn = defineCriterion({
  name: "lift-turn",
  of: "frame",
  quantity: "angle",
  standard: "0°",
  within: ["0°", "135°"],
  about: "how far the body is turned while lifting",
  basis: NIOSH,
});
const frequency = defineCriterion({
  name: "lift-frequency-factor",
  of: "frame",
  quantity: "ratio",
  standard: "1",
  within: ["0.1", "1"],
  about: "factor for how often it is lifted: 1 for less than once in five minutes within an hour",
  basis: `${NIOSH}, table 5`,
});
const grip = defineCriterion({
  name: "lift-grip-factor",
  of: "frame",
  quantity: "ratio",
  standard: "1",
  within: ["0.1", "1"],
  about: "factor for how well the hands hold: 1 for bars gripped at table height, 0.9 for bare sheets",
  basis: `${NIOSH}, table 7`,
});

export const rule = defineRule({
  id: "build.too-heavy",
  title: "What is lifted by hand can be lifted by hand",
  group: "access and build",
  level: "hold",
  basis: [
    "ISO 11228-1:2021, reference masses",
    "common practice: lifting in teams (HSE guidance L23, from memory)",
    "NIOSH 94-110, revised lifting equation",
  ],
  needs: { lifted },
  criteria: { liftMass, lifters, index, reach, height, travel, turn, frequency, grip },
  messages: {
    heavy: {
      text: "{what:word} weighs {mass:mass}",
      advice: "lift it with a hoist, or build it from smaller groups",
      measures: "mass",
      sense: "at most",
    },
    strained: {
      text: "lifting {what:word} gives each person {share:mass}, {index:ratio} times what is recommended for this way of lifting",
      advice: "take more people or a hoist, hold it nearer, or lift it less far",
      measures: "ratio",
      working: {
        formula: "m / RWL, RWL = 23 kg × HM × VM × DM × AM × FM × CM",
        figures: "{share:mass} / {recommended:mass}",
      },
      sense: "at most",
    },
  },
  *inspect({ lifted: all }, { liftMass: one, lifters: people, index: most, ...way }, say) {
    const recommended = recommendedMass({
      reach: way.reach.value,
      height: way.height.value,
      travel: way.travel.value,
      turn: way.turn.value,
      frequency: way.frequency.value,
      grip: way.grip.value,
    });
    for (const { ref, what, mass: kg } of all) {
      if (people.value < 1) {
        yield notApplicable(ref, "a hoist lifts it");
        continue;
      }
      const mass = si(kg, "mass");
      const limit = {
        value: si(one.value * teamMultiple(people.value), "mass"),
        from: people.from === "default" ? one.from : people.from,
        basis: `${people.value} lifting together, ${one.basis}`,
      };
      yield say.heavy(ref, { what, mass }, { measured: mass, limit });
      const share = si(kg / (peopleFor(kg, one.value, people.value) ?? people.value), "mass");
      const times = si(recommended > 0 ? share / recommended : Number.MAX_VALUE, "ratio");
      yield say.strained(
        ref,
        { what, share, index: times, recommended: si(recommended, "mass") },
        { measured: times, limit: most },
      );
    }
  },
});
