// Generated from the files of this folder by `npm run generate`; do not edit.
import { rule as barAdrift } from "./bar.adrift.ts";
import { rule as barBuckles } from "./bar.buckles.ts";
import { rule as barClash } from "./bar.clash.ts";
import { rule as barOverstressed } from "./bar.overstressed.ts";
import { rule as barSags } from "./bar.sags.ts";
import { rule as barSkewed } from "./bar.skewed.ts";
import { rule as barTwists } from "./bar.twists.ts";
import { rule as barWeakHole } from "./bar.weak-hole.ts";
import { rule as boreClash } from "./bore.clash.ts";
import { rule as buildAtHeight } from "./build.at-height.ts";
import { rule as buildDeadlock } from "./build.deadlock.ts";
import { rule as buildTooHeavy } from "./build.too-heavy.ts";
import { rule as casterUnbraked } from "./caster.unbraked.ts";
import { rule as doorCollides } from "./door.collides.ts";
import { rule as doorSags } from "./door.sags.ts";
import { rule as endBare } from "./end.bare.ts";
import { rule as endRaw } from "./end.raw.ts";
import { rule as footOutOfRange } from "./foot.out-of-range.ts";
import { rule as footOverloaded } from "./foot.overloaded.ts";
import { rule as frameBuckles } from "./frame.buckles.ts";
import { rule as frameLoose } from "./frame.loose.ts";
import { rule as frameResonates } from "./frame.resonates.ts";
import { rule as frameSways } from "./frame.sways.ts";
import { rule as frameTips } from "./frame.tips.ts";
import { rule as frameUnbraced } from "./frame.unbraced.ts";
import { rule as guardWithinReach } from "./guard.within-reach.ts";
import { rule as holeNearEdge } from "./hole.near-edge.ts";
import { rule as jointGap } from "./joint.gap.ts";
import { rule as jointHung } from "./joint.hung.ts";
import { rule as jointLoosens } from "./joint.loosens.ts";
import { rule as jointSlips } from "./joint.slips.ts";
import { rule as jointTurns } from "./joint.turns.ts";
import { rule as jointUnclamped } from "./joint.unclamped.ts";
import { rule as loadNone } from "./load.none.ts";
import { rule as nutClash } from "./nut.clash.ts";
import { rule as nutPullsOut } from "./nut.pulls-out.ts";
import { rule as nutTrapped } from "./nut.trapped.ts";
import { rule as panelFlexes } from "./panel.flexes.ts";
import { rule as panelMisfit } from "./panel.misfit.ts";
import { rule as panelRattles } from "./panel.rattles.ts";
import { rule as panelUncut } from "./panel.uncut.ts";
import { rule as panelUnsupported } from "./panel.unsupported.ts";
import { rule as screwBuried } from "./screw.buried.ts";
import { rule as screwCrowded } from "./screw.crowded.ts";
import { rule as screwMisfit } from "./screw.misfit.ts";
import { rule as screwNoRoom } from "./screw.no-room.ts";
import { rule as screwOvertight } from "./screw.overtight.ts";
import { rule as slotMismatched } from "./slot.mismatched.ts";
import { rule as standMisfit } from "./stand.misfit.ts";
import { rule as stockMixed } from "./stock.mixed.ts";
import { rule as tieSlips } from "./tie.slips.ts";
import type { AnyRule } from "./shape/rule.ts";

/** Every built-in rule, by group, then by id. */
export const builtInRules: readonly AnyRule[] = [
  barBuckles,
  barOverstressed,
  barSags,
  barTwists,
  barWeakHole,
  frameBuckles,
  frameLoose,
  frameResonates,
  frameSways,
  frameTips,
  frameUnbraced,
  casterUnbraked,
  footOutOfRange,
  footOverloaded,
  standMisfit,
  boreClash,
  holeNearEdge,
  jointGap,
  jointHung,
  jointLoosens,
  jointSlips,
  jointTurns,
  jointUnclamped,
  nutPullsOut,
  screwMisfit,
  screwOvertight,
  slotMismatched,
  tieSlips,
  buildAtHeight,
  buildDeadlock,
  buildTooHeavy,
  nutClash,
  nutTrapped,
  screwBuried,
  screwCrowded,
  screwNoRoom,
  stockMixed,
  doorCollides,
  endBare,
  endRaw,
  guardWithinReach,
  doorSags,
  panelFlexes,
  panelMisfit,
  panelRattles,
  panelUncut,
  panelUnsupported,
  barAdrift,
  barClash,
  barSkewed,
  loadNone,
];
