import type { Vec3 } from "../geometry/vector.ts";
import type { ConnectorChoice, Frame, Joint } from "../model/frame.ts";
import type { Ref } from "../model/ref.ts";
import type { FaceName, Slot } from "../model/stock/stock.ts";
import { type Body, bodies, cutStation, onFace } from "./bodies.ts";
import { chooseBores } from "./bore-choice.ts";
import { type Contact, contacts } from "./contacts.ts";
import { type Doubles, doubles } from "./doubles.ts";
import { type Answer, chooseFace, chooseSlots } from "./face-choice.ts";
import { defineFact } from "./fact.ts";
import { frameMiddle } from "./frame-middle.ts";
import { placeBracket } from "./place-bracket.ts";
import { placeEndFastener } from "./place-end-fastener.ts";
import { placeEndScrew } from "./place-end-screw.ts";
import { placePlate } from "./place-plate.ts";
import type { PlacedConnector } from "./placed.ts";
import type { Question } from "./question.ts";

/** A joint whose end was found to meet a bar. */
export interface MetJoint {
  readonly joint: Joint;
  readonly contact: Contact;
}

export interface Placements {
  readonly connectors: readonly PlacedConnector[];
  readonly met: readonly MetJoint[];
  /** Joints whose end meets no bar near enough to fasten to. */
  readonly unmet: readonly Joint[];
  /** Connectors that cannot sit where they are put, and why. */
  readonly misplaced: readonly { readonly at: Ref<"connector">; readonly joint: Ref<"joint">; readonly why: string }[];
  readonly questions: readonly Question[];
}

class Asked extends Error {
  readonly question: Question;
  constructor(question: Question) {
    super(question.found);
    this.question = question;
  }
}

function settle<T>(answer: Answer<T>, at: Ref): T {
  if ("is" in answer) return answer.is;
  throw new Asked({ at, ...answer });
}

/** The contact an end is fastened across: with the bar named, by the joint or as the one the end is cut at, or the only bar it meets. */
function meeting(joint: Joint, met: readonly Contact[], body: Body, twice: Doubles): Contact | undefined {
  const { cut } = body.bar.ends[joint.end];
  const at = (bar: string | undefined): readonly Contact[] => met.filter((contact) => contact.b.bar === bar);
  const cutAt = cut.kind === "butt" ? at(cut.against) : [];
  const seen = cutAt.length > 0 ? cutAt : twice.singly(met, (contact) => contact.b.bar);
  const named = joint.onto === undefined ? seen : at(joint.onto);
  const bars = new Set(named.map((contact) => contact.b.bar));
  const [first] = named;
  if (!first || bars.size <= 1) return first;
  // Of several bars the end looks at, one that it bears on with most of its area goes before bars it only grazes.
  const most = named.reduce((a, b) => (b.area > a.area ? b : a));
  const rivals = named.filter((contact) => contact.b.bar !== most.b.bar && contact.area > most.area / 2);
  if (rivals.length === 0) return most;
  const names = [...bars].sort();
  throw new Asked({
    at: joint.ref,
    found: `${joint.bar}/${joint.end}, which meets ${names.join(" and ")}`,
    expected: "one bar named that it is fastened to",
    mend: `add "onto": "${names[0] ?? ""}"`,
  });
}

/** Where across the face a bracket's middle lies: on the slot chosen, on the only slot, or mid-face if its holes then meet slots. */
function bracketLines(body: Body, face: FaceName, choice: ConnectorChoice): readonly number[] {
  const { part } = choice;
  const own = body.bar.profile.slots.filter((slot) => slot.face === face);
  if (!choice.slot && part.kind === "bracket" && own.length > 1) {
    const lands = part.legs.a.holes.every((hole) =>
      own.some((slot) => Math.abs(slot.across - hole.at[1]) < 0.001 || Math.abs(slot.across + hole.at[1]) < 0.001),
    );
    if (lands) return [0];
  }
  if (own.length === 0) return [0];
  return settle(chooseSlots(body, face, choice.slot), choice.ref).map((slot) => slot.across);
}

interface Setting {
  readonly frame: Frame;
  readonly bodies: ReadonlyMap<string, Body>;
  readonly middle: Vec3;
  readonly connectors: PlacedConnector[];
  readonly misplaced: { at: Ref<"connector">; joint: Ref<"joint">; why: string }[];
  readonly questions: Question[];
}

/** A connector repeated on every slot or bore of an end gets a number of its own. */
function numbered(choice: ConnectorChoice, index: number, count: number): ConnectorChoice {
  return count === 1 ? choice : { ...choice, ref: { kind: "connector", id: `${choice.ref.id}-${index + 1}` } };
}

function placeOnEnd(
  setting: Setting,
  joint: Joint,
  contact: Contact,
  body: Body,
  onto: Body,
  choice: ConnectorChoice,
): void {
  const { part } = choice;
  const { frame, middle, connectors } = setting;
  const ontoFace = contact.b.side;
  const lacks = (why: string): void => {
    setting.misplaced.push({ at: choice.ref, joint: joint.ref, why });
  };
  if (ontoFace === "from" || ontoFace === "to") {
    lacks(`${joint.bar} meets the cut end of ${onto.bar.ref.id}, not one of its faces`);
    return;
  }
  const faceOf = (): FaceName => {
    if (choice.on) return settle(chooseFace(body, choice.on, middle), choice.ref);
    throw new Asked({
      at: choice.ref,
      found: `${part.name} without a face`,
      expected: "the face of the bar it sits on",
      mend: 'add "on": "below", or another face',
    });
  };
  switch (part.kind) {
    case "bracket": {
      const face = faceOf();
      const lines = bracketLines(body, face, choice);
      for (const [i, across] of lines.entries()) {
        const on = onFace(body, face, cutStation(body, joint.end), across);
        const placed = placeBracket(
          part,
          numbered(choice, i, lines.length),
          joint.ref,
          { a: { body, face }, b: { body: onto, face: ontoFace }, on },
          frame.stock,
        );
        if (placed) connectors.push(placed);
        else lacks(`the faces it should join make no inside corner`);
      }
      return;
    }
    case "end-fastener": {
      const face = faceOf();
      const slots: readonly Slot[] = settle(chooseSlots(body, face, choice.slot), choice.ref);
      for (const [i, slot] of slots.entries()) {
        connectors.push(
          placeEndFastener(
            part,
            numbered(choice, i, slots.length),
            joint.ref,
            { body, end: joint.end, face, slot, onto, ontoFace },
            frame.stock,
          ),
        );
      }
      return;
    }
    case "end-screw": {
      const bores = settle(chooseBores(body, choice.bore), choice.ref);
      if (bores.length === 0) lacks(`${body.bar.profile.name} has no core bore to take it`);
      for (const [i, bore] of bores.entries()) {
        connectors.push(
          placeEndScrew(part, numbered(choice, i, bores.length), joint.ref, {
            body,
            end: joint.end,
            bore,
            onto,
            ontoFace,
          }),
        );
      }
      return;
    }
    case "plate":
    case "side-tie":
    case "pivot":
    case "hinge":
      lacks(`${part.name} is not made for a bar's end; place it under fastenings, ties or pivots`);
  }
}

function placeFastening(setting: Setting, frame: Frame): void {
  for (const fastening of frame.fastenings) {
    const held = fastening.holds.map((id) => setting.bodies.get(id)).filter((body) => body !== undefined);
    const [first, second] = held;
    if (!first) continue;
    const { part } = fastening.connector;
    guarded(setting, () => {
      const face = settle(chooseFace(first, fastening.on, setting.middle), fastening.ref);
      if (part.kind === "plate") setting.connectors.push(placePlate(part, fastening, face, held, frame.stock));
      else if (part.kind === "bracket" && second) {
        if (!fastening.against) {
          throw new Asked({
            at: fastening.ref,
            found: `bracket ${part.name} with one face`,
            expected: "the face of the second bar that carries its other leg",
            mend: 'add "against": "+x", or another face',
          });
        }
        const other = settle(chooseFace(second, fastening.against, setting.middle), fastening.ref);
        const placed = placeBracket(
          part,
          fastening.connector,
          fastening.ref,
          { a: { body: first, face }, b: { body: second, face: other }, on: fastening.at },
          frame.stock,
        );
        if (placed) setting.connectors.push(placed);
        else
          setting.misplaced.push({
            at: fastening.connector.ref,
            joint: fastening.ref,
            why: "the faces it should join make no inside corner",
          });
      } else
        setting.misplaced.push({
          at: fastening.connector.ref,
          joint: fastening.ref,
          why: `${part.name} cannot be placed by a point and a face`,
        });
    });
  }
}

function guarded(setting: Setting, place: () => void): void {
  try {
    place();
  } catch (cause) {
    if (!(cause instanceof Asked)) throw cause;
    setting.questions.push(cause.question);
  }
}

/** Where every connector, screw and nut of the frame comes to lie. */
export const placements = defineFact<
  Placements,
  { bodies: typeof bodies; contacts: typeof contacts; middle: typeof frameMiddle; doubles: typeof doubles }
>({
  id: "placements",
  needs: { bodies, contacts, middle: frameMiddle, doubles },
  compute({ bodies: all, contacts: touching, middle, doubles: twice }, frame) {
    const setting: Setting = { frame, bodies: all, middle, connectors: [], misplaced: [], questions: [] };
    const met: MetJoint[] = [];
    const unmet: Joint[] = [];
    for (const joint of frame.joints) {
      const body = all.get(joint.bar);
      if (!body) continue;
      guarded(setting, () => {
        const contact = meeting(joint, touching.ofEnd(joint.bar, joint.end), body, twice);
        const onto = contact && all.get(contact.b.bar);
        if (!contact || !onto) {
          unmet.push(joint);
          return;
        }
        met.push({ joint, contact });
        for (const choice of joint.connectors)
          guarded(setting, () => placeOnEnd(setting, joint, contact, body, onto, choice));
      });
    }
    placeFastening(setting, frame);
    return { connectors: setting.connectors, met, unmet, misplaced: setting.misplaced, questions: setting.questions };
  },
});
