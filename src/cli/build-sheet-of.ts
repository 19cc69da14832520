import { lifters, liftMass } from "../criteria/lift-mass.ts";
import { spareNuts } from "../criteria/spare-nuts.ts";
import { workHeight } from "../criteria/work-height.ts";
import { stepPictures } from "../drawing/step-picture.ts";
import { buildOrder } from "../facts/build-order.ts";
import { buildPlan } from "../facts/build-plan.ts";
import { factOf } from "../facts/fact.ts";
import { type Lifted, lifted } from "../facts/lifted.ts";
import { peopleFor } from "../facts/lifting.ts";
import { ringWords } from "../facts/ring-words.ts";
import type { HouseSettings } from "../house/house-in-force.ts";
import { Limits } from "../inspection/limits.ts";
import type { Finding } from "../inspection/report.ts";
import type { Frame } from "../model/frame.ts";
import { ref } from "../model/ref.ts";
import type { BuildSheet, Handling } from "../report/build/build-sheet.ts";

/** What is not rigid in itself is carried by one person at each end (common practice). */
const HANDS_OF_LOOSE = 2;

/** The order of building of a frame, with spare nuts and people by the limits that house and frame set, and what was found in it. */
export function buildSheetOf(
  file: string,
  frame: Frame,
  house: HouseSettings,
  findings: readonly Finding[] = [],
): BuildSheet {
  const limits = new Limits(frame, { ...house, rules: [] });
  const [spare, mass, people] = [limits.given(spareNuts), limits.given(liftMass), limits.given(lifters)];
  const peopleToLift = (kg: number): number | undefined => peopleFor(kg, mass.value, people.value);
  const plan = factOf(buildPlan, frame);
  const loose = new Set(plan.filter((piece) => piece.loose.length > 0).map(({ id }) => id));
  const handlingOf = (one: Lifted): Handling => {
    const fewest = peopleToLift(one.mass);
    const least = one.assembly !== undefined && loose.has(one.assembly) ? HANDS_OF_LOOSE : 1;
    return { ...one, people: fewest && Math.max(fewest, least) };
  };
  const ofLevel = (wanted: Finding["level"]) => findings.filter(({ level, conceded }) => level === wanted && !conceded);
  const all = factOf(lifted, frame);
  const { deadlock, undone, scattered } = factOf(buildOrder, frame);
  return {
    file,
    title: frame.title,
    units: frame.units,
    rejects: ofLevel("reject"),
    holds: ofLevel("hold"),
    pieces: plan.map((planned) => {
      const whole = all.find((one) => one.assembly === planned.id);
      return {
        planned,
        spare: ({ bar }) => spare.at(ref("bar", bar)).value,
        handling: whole && handlingOf(whole),
      };
    }),
    handlingOf,
    isLoose: (assembly) => loose.has(assembly),
    oneLifts: mass.value,
    peopleFor: peopleToLift,
    pictures: (size) => stepPictures(frame, size),
    overhead: limits.given(workHeight).value,
    deadlock: deadlock && ringWords(deadlock.ring),
    undone: undone.map(({ group, built }) => ({ id: group.id, built })),
    scattered: scattered.map(({ group, apart }) => ({ id: group.id, apart: apart.map(({ id }) => id) })),
  };
}
