import { defineCriterion } from "../criteria/criterion.ts";
import { jointFriction } from "../criteria/joint-friction.ts";
import { safetyFactor } from "../criteria/safety-factor.ts";
import { UTILISATION } from "../criteria/utilisation-range.ts";
import { directionWords, runsAlong } from "../facts/axis-words.ts";
import type { Clamp } from "../facts/clamping.ts";
import { governing } from "../facts/governing.ts";
import { dividedBy, dividedWords, loadFactors } from "../facts/load-factors.ts";
import { loaded } from "../facts/loaded.ts";
import { loneTurns } from "../facts/lone-turns.ts";
import { secondOrder } from "../facts/second-order.ts";
import { tubes } from "../facts/tubes.ts";
import { turning } from "../facts/turning.ts";
import { whyNotSolved } from "../facts/why-not-solved.ts";
import { frameRef, ref } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { undecided } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

const turnUtilisation = defineCriterion({
  name: "turn-utilisation",
  of: "bars",
  quantity: "ratio",
  standard: "0.8",
  within: UTILISATION,
  about: "largest share of the friction under a lone screw's head that a turn may use",
  basis: "common practice",
});
const knock = defineCriterion({
  name: "knock",
  of: "bars",
  quantity: "force",
  standard: "50 N",
  within: ["5 N", "1 kN"],
  about: "accidental push on the face of a bar, at its middle or at its free end",
  basis: "common practice: an elbow or a tray in passing",
});

/** Turn that friction under one screw holds in 95 of 100 joints, N·m. */
const frictionTorque = (clamp: Clamp, friction: number): number => clamp.unitSlip * friction * clamp.radius;

export const rule = defineRule({
  id: "joint.turns",
  title: "No part turns about a lone screw",
  group: "joints",
  level: "hold",
  basis: ["common practice", "rigid-body mechanics: null space of the joint constraints"],
  needs: { turning, loaded, tubes, response: secondOrder, lone: loneTurns, by: loadFactors },
  criteria: { allowed: turnUtilisation, knock, friction: jointFriction, safety: safetyFactor },
  messages: {
    turns: {
      text: "can turn about {axis:word}: at {joints:parts} only the friction of one screw holds {bars:parts}",
      advice: "add a second fastener out of line with the first, or a bracket with two screws on each leg",
    },
    loaded: {
      text: "can turn about {axis:word} under its load: at {joints:parts} only the friction of one screw holds {bars:parts}",
      advice: "add a second fastener out of line with the first, or a bracket with two screws on each leg",
      level: "reject",
    },
    torsion: {
      text: "its lone screw is turned with {torsion:moment}, which only friction holds",
      advice: "add a second fastener out of line with the first, or a bracket with lugs or two screws on each leg",
      measures: "moment",
    },
    knocked: {
      text: "a knock on {bar:bar} turns its lone screw with {torsion:moment}, which only friction holds",
      advice: "add a second fastener out of line with the first, or a bracket with lugs or two screws on each leg",
      measures: "moment",
      working: { formula: "F a", figures: "{push:force} × {lever:length}" },
    },
  },
  *inspect(
    { turning: found, loaded: loads, tubes: bars, response: solved, lone, by },
    { allowed, knock: push, friction, safety },
    say,
  ) {
    const turns = new Set(found.parts.flatMap((part) => part.bars));
    for (const { bars: moving, kind, direction, point, joints } of found.parts) {
      const [first] = moving;
      const lead = first === undefined ? undefined : bars.get(first);
      if (!lead) continue;
      const own = kind === "turn" && moving.length === 1 && runsAlong(lead, direction, point);
      const axis = own ? "its own length" : `an axis along ${directionWords(direction)}`;
      const values = { bars: moving.map((id) => ref("bar", id)), axis, joints: joints.map((id) => ref("joint", id)) };
      if (moving.some((bar) => loads.has(bar))) yield say.loaded(lead.bar.ref, values, false);
      else yield say.turns(lead.bar.ref, values, false);
    }
    for (const { bar } of bars.values()) {
      if (!turns.has(bar.ref.id)) yield say.turns(bar.ref, { bars: [bar.ref], axis: "", joints: [] }, true);
    }
    if (solved.kind !== "solved") {
      if (lone.length > 0) yield undecided(frameRef, whyNotSolved(solved));
      return;
    }
    for (const { joint, clamp, bar, lever } of lone) {
      if (turns.has(bar)) continue; // told already: nothing else holds it
      const at = joint.link.joint;
      const share = allowed.at(at);
      const limit = {
        value: si(share.value * frictionTorque(clamp, friction.at(at).value), "moment"),
        from: share.from,
        basis: `${share.value} of the friction under one ${clamp.placed.screw.thread} screw`,
      };
      const force = push.at(ref("bar", bar)).value;
      const torsion = si(force * lever, "moment");
      const values = { bar: ref("bar", bar), torsion, push: force, lever: si(lever, "length") };
      yield say.knocked(at, values, { measured: torsion, limit });
      const governed = governing(solved.views, ["strength"], "moment", (view) => {
        let most = 0;
        for (const turn of joint.borne(view).turns) most = Math.max(most, turn.torsion);
        return most;
      });
      const divided = dividedBy(by, safety.at(at).value);
      const lasting = {
        ...limit,
        value: si(limit.value / divided, "moment"),
        basis: `${limit.basis}${dividedWords(divided)}`,
      };
      if (governed) yield say.torsion(at, { torsion: governed.measured }, { ...governed, limit: lasting });
    }
  },
});
