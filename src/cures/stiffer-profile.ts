import { axesOf, up } from "../facts/axes.ts";
import { sectionOf } from "../facts/sections.ts";
import { dot } from "../geometry/vector.ts";
import type { Profile } from "../model/stock/stock.ts";
import type { Cure, Edit, Patient, Proposal } from "./cure.ts";
import { inFile } from "./written.ts";

/** A profile is worth a try when it is this share as stiff as a plain scaling asks: other parts of the frame help or hinder. */
const HOPEFUL = 0.7;

const family = (profile: Profile): string => `${profile.slotSize} ${Math.round(profile.pitch * 1e5)}`;
const weight = (profile: Profile): number => sectionOf(profile).A;

/** Lightest first: profiles of the same pitch and slot that are stiff enough to be worth trying. */
function candidates(profile: Profile, patient: Patient, needed: number): readonly Profile[] {
  const now = sectionOf(profile);
  const list: Profile[] = [];
  for (const other of patient.frame.stock.profiles.values()) {
    // Weaker lips would not bear the torque that the joints are tightened to.
    const weaker = other.lipRating < profile.lipRating;
    const closed = other.slots.some((slot) => slot.closed);
    if (other.name === profile.name || family(other) !== family(profile) || closed || weaker) continue;
    const then = sectionOf(other);
    if (then.Iz >= HOPEFUL * needed * now.Iz && then.A > now.A) list.push(other);
  }
  return list.sort((a, b) => weight(a) - weight(b) || (a.name < b.name ? -1 : 1));
}

/** The lightest profile of the same family that does; on a level bar also with its upper face left where it is. */
export const stifferProfile: Cure = {
  id: "stiffer-profile",
  turn: 2,
  mends: ["bar.sags", "bar.overstressed", "bar.buckles", "bar.twists"],
  *propose(ailment, patient): Iterable<Proposal> {
    const bar = patient.frame.bars.find((b) => b.ref.id === ailment.at.id);
    const pointer = patient.pointerOf(ailment.at);
    const index = /^\/bars\/(\d+)$/.exec(pointer)?.[1];
    const written = index === undefined ? undefined : patient.file.bars[Number(index)];
    if (!bar || !written) return;
    const level = Math.abs(dot(axesOf(bar).x, up)) < 0.02 && bar.stance.by === "roll" && bar.stance.angle === 0;
    for (const profile of candidates(bar.profile, patient, ailment.utilisation ?? 1)) {
      const change: Edit = { pointer: `${pointer}/profile`, to: profile.name };
      const deeper = (profile.height - bar.profile.height) / 2;
      if (!level || deeper <= 0) {
        yield { words: `profile ${profile.name}`, edits: [change] };
        continue;
      }
      // A deeper bar that keeps its top keeps what lies on it.
      if (written.id === bar.ref.id) {
        const lowered = (["from", "to"] as const).map((end) => ({
          pointer: `${pointer}/${end}/2`,
          to: inFile(bar[end][2] - deeper, patient.file),
        }));
        yield { words: `profile ${profile.name}, its top left where it is`, edits: [change, ...lowered] };
      }
      yield { words: `profile ${profile.name}`, edits: [change] };
    }
  },
};
