import { length, perpendicularPair } from "../../geometry/vector.ts";
import type { FrameParts } from "../assembly/frame.ts";
import type { Link } from "../assembly/link.ts";
import { slideLink } from "../assembly/link.ts";
import { MechanicsInputError } from "../errors.ts";
import type { Contact } from "../model.ts";
import { GROUND } from "../model.ts";
import { UNIT_TOLERANCE } from "../triad.ts";

/** One scalar freedom of a contact, with the base stiffness that keeps the frame whole while contacts are decided. */
export interface ContactLink {
  readonly contact: number;
  readonly link: Link;
  /** N/m; taken out again in the condensed equations, so results do not hang on it. */
  readonly base: number;
}

/** The links of all contacts in one list: of contact c the normal at `normal[c]`, and with friction two sideways ones after it. */
export interface ContactLinks {
  readonly links: readonly ContactLink[];
  readonly normal: readonly number[];
}

/** As stiff as the frame itself is along the link, so that the condensed equations stay well scaled. */
function baseStiffness({ diagonal }: FrameParts, link: Link): number {
  let [stiffness, weight] = [0, 0];
  for (let i = 0; i < link.freedoms.length; i++) {
    const w = (link.weights[i] as number) ** 2;
    stiffness += w * (diagonal[link.freedoms[i] as number] as number);
    weight += w;
  }
  if (stiffness > 0) return stiffness / weight;
  const own = diagonal.filter((value) => value > 0);
  return own.length > 0 ? own.reduce((sum, value) => sum + value, 0) / own.length : 1;
}

/** Checks the contacts of a model and turns them into links. Throws MechanicsInputError. */
export function contactLinks(parts: FrameParts): ContactLinks {
  const { model } = parts;
  const links: ContactLink[] = [];
  const normal: number[] = [];
  const put = (contact: number, link: Link, base = baseStiffness(parts, link)): number =>
    links.push({ contact, link, base });
  (model.contacts ?? []).forEach((contact: Contact, c) => {
    const { from, to, at, stiffness = Infinity, friction = 0, hold = Infinity, gap } = contact;
    if (!model.nodes[from] || (to !== GROUND && !model.nodes[to])) {
      throw new MechanicsInputError(`contact ${c} names a node that does not exist`);
    }
    if (
      !(
        Math.abs(length(contact.normal) - 1) <= UNIT_TOLERANCE &&
        stiffness > 0 &&
        hold > 0 &&
        friction >= 0 &&
        Number.isFinite(gap)
      )
    ) {
      throw new MechanicsInputError(
        `contact ${c} needs a unit normal, a finite gap, a positive stiffness, no negative friction`,
      );
    }
    normal.push(put(c, slideLink(model, from, to, at, contact.normal)) - 1);
    if (friction > 0) {
      // Held by what it holds with anyway, a contact that does not slip needs no equation.
      for (const side of perpendicularPair(contact.normal)) put(c, slideLink(model, from, to, at, side), contact.hold);
    }
  });
  return { links, normal };
}
