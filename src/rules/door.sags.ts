import { defineCriterion, type Limit } from "../criteria/criterion.ts";
import type { Bound } from "../facts/joint-stiffness.ts";
import { type Below, leafDrops, type Opening } from "../facts/leaf-drops.ts";
import { frameRef } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { notApplicable, undecided } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

const doorDrop = defineCriterion({
  name: "door-drop",
  of: "frame",
  quantity: "length",
  standard: "span / 200, at least 1 mm",
  within: ["0.1 mm", "50 mm"],
  about:
    "how far the free side of a door may come down when its latch is open; the span is how far it reaches from its hinges",
  basis: "common practice: most of the gap of 3 to 5 mm that is usual round a door 800 mm wide",
});

/** One way for a door to hang too low: its free corner, or a part of it over something that stands. */
interface Low {
  readonly opening: Opening;
  readonly drops: Readonly<Record<Bound, number>>;
  readonly limit: Limit<"length">;
  readonly below?: Below;
}

/** The nearest to its limit: with joints as they usually are where that is beyond it, else with soft ones. */
function worstOf(ways: readonly Low[]): Low | undefined {
  const share = ({ drops, limit }: Low, bound: Bound): number => drops[bound] / Math.max(limit.value, 1e-12);
  const most = (bound: Bound): Low | undefined =>
    ways.reduce<Low | undefined>((a, b) => (a && share(a, bound) >= share(b, bound) ? a : b), undefined);
  const usual = most("typical");
  return usual && share(usual, "typical") > 1 ? usual : most("soft");
}

export const rule = defineRule({
  id: "door.sags",
  title: "Doors hang clear of what lies below and meet their latch",
  group: "panels",
  level: "hold",
  basis: ["linear elastic frame analysis of the door on its hinges alone (docs/method)", "common practice"],
  needs: { leafDrops },
  criteria: { allowed: doorDrop },
  messages: {
    sags: {
      text: "comes down {drop:length} at its free corner, {reach:length} from the hinges it hangs on",
      advice:
        "set the hinges farther apart, brace the leaf or screw a sheet to its face, join its corners more stiffly, or stiffen the post",
      measures: "length",
    },
    drags: {
      text: "its {by:part} comes down {drop:length} over {on:part} as it hangs on its hinges",
      advice: "widen the gap, set the hinges farther apart, brace the leaf, or join its corners more stiffly",
      measures: "length",
    },
    floor: {
      text: "its {by:part} comes down {drop:length} over the floor as it hangs on its hinges",
      advice: "hang it higher, set the hinges farther apart, brace the leaf, or join its corners more stiffly",
      measures: "length",
    },
  },
  *inspect({ leafDrops: found }, { allowed }, say) {
    if (found.kind === "lacking") {
      yield undecided(frameRef, found.why);
      return;
    }
    for (const hung of found.all) {
      if (hung.kind === "held otherwise") {
        yield notApplicable(hung.door.ref, hung.why);
        continue;
      }
      const at = hung.door.ref;
      const share = allowed.at(at, hung.reach);
      const worst = worstOf(
        hung.states.flatMap(({ opening, drops, below }): Low[] => [
          { opening, drops, limit: share },
          ...below.map((one): Low => {
            const limit: Limit<"length"> = {
              value: si(one.gap, "length"),
              from: "computed",
              basis: "the gap below it",
            };
            return { opening, drops: one.drops, limit, below: one };
          }),
        ]),
      );
      if (!worst) continue;
      const { opening, drops, limit, below } = worst;
      const drop = si(drops.typical, "length");
      const m = {
        measured: drop,
        limit,
        under: { combination: `its own weight, ${opening}`, bound: "typical" },
        otherBounds: { soft: si(drops.soft, "length"), stiff: si(drops.stiff, "length") },
      } as const;
      if (!below) yield say.sags(at, { drop, reach: si(hung.reach, "length") }, m);
      else if (below.on) yield say.drags(at, { by: below.by, on: below.on, drop }, m);
      else yield say.floor(at, { by: below.by, drop }, m);
    }
  },
});
