import { defineCriterion, type Limit } from "../criteria/criterion.ts";
import { GRAVITY } from "../facts/acting.ts";
import { defineFact } from "../facts/fact.ts";
import { response } from "../facts/response.ts";
import { tiltOf, tipping } from "../facts/tipping.ts";
import { howItStands } from "../facts/tipping-words.ts";
import { frameRef } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { notApplicable, undecided } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

const tilt = defineCriterion({
  name: "tip-tilt",
  of: "frame",
  quantity: "angle",
  standard: "10°",
  within: ["1°", "45°"],
  about:
    "tilt in any direction at which the frame must still stand, laden or empty, its doors in any position, what slides pulled out",
  basis: "IEC 61010-1 7.4, IEC 60601-1 9.4 in transport, IEC 62368-1: stability at 10°",
});
const push = defineCriterion({
  name: "tip-push",
  of: "frame",
  quantity: "force",
  standard: "250 N",
  within: ["10 N", "5 kN"],
  about:
    "sideways push that must not tip the frame; a light frame only has to bear the share of its weight in tip-push-share",
  basis: "IEC 62368-1 ed. 3: 13 % of the weight, at most 250 N",
});
const share = defineCriterion({
  name: "tip-push-share",
  of: "frame",
  quantity: "ratio",
  standard: "0.13",
  within: ["0.01", "1"],
  about: "sideways push that must not tip the frame, as a share of its weight; no more than tip-push",
  basis: "IEC 62368-1 ed. 3: 13 % of the weight, at most 250 N",
});
const reach = defineCriterion({
  name: "tip-push-height",
  of: "frame",
  quantity: "length",
  standard: "1500 mm",
  within: ["100 mm", "2500 mm"],
  about:
    "height over the floor at which the frame is pushed; a lower frame at its top: its highest bar, panel or bolted box",
  basis: "IEC 62368-1 ed. 3",
});

const slope = defineFact<number>({ id: "floor-slope", compute: (_, frame) => frame.floor.slope });

export const rule = defineRule({
  id: "frame.tips",
  title: "The frame does not tip over",
  group: "frame",
  level: "reject",
  basis: ["statics of a rigid body on its feet (docs/method)", "IEC 62368-1 ed. 3, IEC 61010-1 7.4, IEC 60601-1 9.4"],
  needs: { response, tipping, slope },
  criteria: { tilt, push, share, reach },
  messages: {
    tilt: {
      text: "tips over {feet:parts} when tilted by {angle:angle}, {state:word}",
      overlap: "tips over {feet:parts} without a push, {state:word}: its weight hangs {angle:angle} beyond them",
      advice: "set its stands farther apart, put the weight lower, or anchor it to the floor or a wall",
      measures: "angle",
      working: {
        formula:
          "arctan(d/h) − slope of the floor − lean on its uneven spots: centre of mass d inside the line of the feet, h up",
        figures: "arctan({inside:length} / {up:length}) − {slope:angle} − {lean:angle}",
      },
      sense: "at least",
    },
    declared: {
      text: "lifts off its stands under {loads:word}",
      advice: "set its stands farther apart, put weight lower down, or anchor it to the floor or a wall",
    },
    slides: {
      text: "slides on the floor under {loads:word}: pushed sideways with {push:force}, held by a friction of {holds:force}; how it bears these loads is not judged",
      advice: "anchor it, put it against something that holds it, or take the load out if a person would only move it",
      level: "note",
    },
    push: {
      text: "tips over {feet:parts} when pushed with {push:force} at a height of {height:length}, {state:word}",
      advice: "set its stands farther apart, put the weight lower, or anchor it to the floor or a wall",
      measures: "force",
      working: {
        formula: "W d / h: weight W with its centre d inside the line of the feet, push at height h",
        figures: "{weight:force} × {inside:length} / {height:length}",
      },
      sense: "at least",
    },
  },
  *inspect(
    { tipping: found, slope: leans, response: solved },
    { tilt: tilted, push: most, share: part, reach: high },
    say,
  ) {
    if (found.kind === "lacking") {
      yield undecided(frameRef, found.why);
      return;
    }
    if (solved.kind === "solved") {
      for (const words of solved.lifted) yield say.declared(frameRef, { loads: words }, false);
      // What slides first does not tip: those loads are left out by the response.
      for (const { loads, push: sideways, holds } of solved.slid)
        yield say.slides(frameRef, { loads, push: si(sideways, "force"), holds: si(holds, "force") }, false);
    }
    if (found.kind === "cannot tip") {
      yield notApplicable(frameRef, found.why);
      return;
    }
    const worst = found.tilted();
    const angle = si(tiltOf(worst) - leans, "angle");
    yield say.tilt(
      frameRef,
      {
        feet: worst.feet,
        angle,
        state: howItStands(worst),
        inside: si(worst.inside, "length"),
        up: si(worst.height, "length"),
        slope: si(leans, "angle"),
        lean: si(worst.lean, "angle"),
      },
      { measured: angle, limit: tilted },
    );
    const test = { force: most.value, share: part.value, height: Math.min(high.value, found.top) };
    const pushed = found.pushed(test);
    if (!(pushed.inside > 0)) {
      yield notApplicable(frameRef, "it falls without a push");
      return;
    }
    const weight = pushed.mass * GRAVITY;
    const tips = si((weight * pushed.inside) / test.height, "force");
    const light = part.value * weight < most.value;
    const limit: Limit<"force"> = light
      ? { value: si(part.value * weight, "force"), from: part.from, basis: part.basis }
      : most;
    yield say.push(
      frameRef,
      {
        feet: pushed.feet,
        push: tips,
        height: si(test.height, "length"),
        state: howItStands(pushed),
        weight: si(weight, "force"),
        inside: si(pushed.inside, "length"),
      },
      { measured: tips, limit },
    );
  },
});
