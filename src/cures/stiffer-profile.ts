import { axesOf, up } from "../facts/axes.ts";
import { sectionOf } from "../facts/sections.ts";
import { dot } from "../geometry/vector.ts";
import type { Profile } from "../model/stock/stock.ts";
import { formatNumber } from "../model/units/format-quantity.ts";
import type { Cure, Edit, Patient, Proposal } from "./cure.ts";

/** A profile is worth a try when it is this share as stiff as a plain scaling asks: other parts of the frame help or hinder. */
const HOPEFUL = 0.7;

const family = (profile: Profile): string => `${profile.slotSize} ${Math.round(profile.pitch * 1e5)}`;
const weight = (profile: Profile): number => sectionOf(profile).A;

/** Lightest first: profiles of the same pitch and slot that are stiff enough to be worth trying. */
function candidates(profile: Profile, patient: Patient, needed: number): readonly Profile[] {
  const now = sectionOf(profile);
  const list: Profile[] = [];
  for (const other of patient.frame.stock.profiles.values()) {
    if (other.name === profile.name || family(other) !== family(profile) || other.slots.some((slot) => slot.closed))
      continue;
    const then = sectionOf(other);
    if (then.Iz >= HOPEFUL * needed * now.Iz && then.A > now.A) list.push(other);
  }
  return list.sort((a, b) => weight(a) - weight(b) || (a.name < b.name ? -1 : 1));
}

/** A length moved by so many metres, written in the file's own unit. */
function moved(written: unknown, by: number, units: string): number | undefined {
  const scale = units === "mm-N-kg" ? 1000 : 1 / 0.0254;
  return typeof written === "number" ? Number(formatNumber(written + by * scale, 4)) : undefined;
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
      const z = (["from", "to"] as const).map((end) => moved(written[end][2], -deeper, patient.file.units));
      if (z[0] !== undefined && z[1] !== undefined) {
        yield {
          words: `profile ${profile.name}, its top left where it is`,
          edits: [change, { pointer: `${pointer}/from/2`, to: z[0] }, { pointer: `${pointer}/to/2`, to: z[1] }],
        };
      }
      yield { words: `profile ${profile.name}`, edits: [change] };
    }
  },
};
