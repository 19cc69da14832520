import type { Bar, BarEnd, Choice, ConnectorChoice, Cut, FaceChoice, Triple } from "../frame.ts";
import { type EndName, endRef, ref } from "../ref.ts";
import { type Instance, refuseImage, renamed } from "./copies.ts";
import { mirroredBracketHoles } from "./mirror-image.ts";
import { mirroredBore, mirroredFace, mirroredSlot, mirroredTall, reflectionOf } from "./mirror-section.ts";
import { moveAxis, movePoint, moveVector } from "./placement.ts";
import { faceMeant, sectionAxes } from "./section-axes.ts";
import { directionChoice, triple } from "./values.ts";
import type { Work } from "./work.ts";

/** A face of the copy of a bar. */
export function moveFace(choice: FaceChoice, bar: Bar | undefined, { placement }: Instance): FaceChoice {
  if (placement.shifts) return choice;
  if (choice.by === "direction") return directionChoice(moveVector(placement, choice.direction));
  if (choice.by === "word") {
    if (choice.word === "inner" || choice.word === "outer") return choice;
    const up = moveVector(placement, triple(0, 0, 1));
    if (up[2] === 1) return choice;
    if (up[2] === -1) return Object.freeze({ by: "word", word: choice.word === "above" ? "below" : "above" });
  }
  const name = bar === undefined ? undefined : faceMeant(bar, choice);
  if (bar === undefined || name === undefined) return choice;
  return Object.freeze({ by: "name", name: placement.mirrors ? mirroredFace(bar.profile, name) : name });
}

/** A choice of the copy: by direction it is moved, by number it is counted the other way in a mirror. */
function moveChoice(choice: Choice, { placement }: Instance, mirroredNumber: (number: number) => number): Choice {
  if (placement.shifts || choice.by === "all") return choice;
  if (choice.by === "direction") return directionChoice(moveVector(placement, choice.direction));
  return placement.mirrors ? Object.freeze({ by: "number", number: mirroredNumber(choice.number) }) : choice;
}

/** The slot of a face of a bar's copy. */
export function moveSlot(slot: Choice, on: FaceChoice | undefined, bar: Bar | undefined, instance: Instance): Choice {
  return moveChoice(slot, instance, (number) => (bar === undefined ? number : mirroredSlot(bar, on, number)));
}

function moveCut(cut: Cut, instance: Instance): Cut {
  const { placement } = instance;
  switch (cut.kind) {
    case "as-drawn":
      return cut;
    case "butt":
      return cut.against === undefined ? cut : Object.freeze({ ...cut, against: renamed(instance, cut.against) });
    case "mitre":
      return Object.freeze({ kind: "mitre", with: renamed(instance, cut.with) });
    case "angle":
      return Object.freeze({ ...cut, about: moveAxis(placement, cut.about) });
    case "plane":
      return Object.freeze({ kind: "plane", normal: moveVector(placement, cut.normal) });
  }
}

function copyEnd(original: BarEnd, bar: string, end: EndName, instance: Instance): BarEnd {
  return Object.freeze({
    ...original,
    ref: Object.freeze(endRef(bar, end)),
    bar,
    cut: moveCut(original.cut, instance),
  });
}

/** Where the copy's face A looks, before it is moved; undefined where it looks the same way as the original's by the rule for roll. */
function tallOf(bar: Bar, { placement }: Instance): Triple | undefined {
  if (placement.mirrors) return mirroredTall(bar);
  if (bar.stance.by === "tall") return bar.stance.direction;
  return placement.shifts ? undefined : sectionAxes(bar).y;
}

/** A bar's copy: from and to keep their places on it, and its section stands so that the whole is an image of the original. */
export function copyBar(work: Work, bar: Bar, instance: Instance): Bar | undefined {
  const { placement } = instance;
  if (placement.mirrors && reflectionOf(bar.profile) === undefined) {
    return refuseImage(work, bar.ref.id, `section ${bar.profile.name}`, instance);
  }
  const id = bar.ref.id + instance.suffix;
  const tall = tallOf(bar, instance);
  const holes = bar.holes.map((hole) => Object.freeze({ ...hole, on: moveFace(hole.on, bar, instance) }));
  return Object.freeze({
    ...bar,
    ref: Object.freeze(ref("bar", id)),
    from: movePoint(placement, bar.from),
    to: movePoint(placement, bar.to),
    stance: tall === undefined ? bar.stance : Object.freeze({ by: "tall", direction: moveVector(placement, tall) }),
    ends: Object.freeze({
      from: copyEnd(bar.ends.from, id, "from", instance),
      to: copyEnd(bar.ends.to, id, "to", instance),
    }),
    holes: bar.holes.length === 0 ? bar.holes : Object.freeze(holes),
  });
}

/** The holes left without a screw, in the mirror. */
function moveOmitted(work: Work, { part, omit }: ConnectorChoice, instance: Instance): readonly string[] | undefined {
  if (!instance.placement.mirrors || omit.length === 0 || part.kind !== "bracket") return omit;
  const images = mirroredBracketHoles(part);
  if (images === undefined) return refuseImage(work, part.name, "holes", instance);
  return Object.freeze(omit.map((hole) => images.get(hole) ?? hole));
}

/** A connector's copy on the copy of its bar. */
export function copyConnector(
  work: Work,
  choice: ConnectorChoice,
  bar: Bar | undefined,
  id: string,
  instance: Instance,
): ConnectorChoice | undefined {
  const { placement } = instance;
  const named = { ...choice, ref: Object.freeze(ref("connector", id)) };
  if (placement.shifts) return Object.freeze(named);
  const { on, slot, bore, ...rest } = named;
  const omit = moveOmitted(work, choice, instance);
  if (omit === undefined) return undefined;
  return Object.freeze({
    ...rest,
    omit,
    ...(on === undefined ? {} : { on: moveFace(on, bar, instance) }),
    ...(slot === undefined ? {} : { slot: moveSlot(slot, on, bar, instance) }),
    ...(bore === undefined
      ? {}
      : { bore: moveChoice(bore, instance, (number) => (bar === undefined ? number : mirroredBore(bar, number))) }),
    shift: placement.mirrors ? negated(rest.shift) : rest.shift,
  });
}

function negated<N extends number>(value: N): N {
  return (0 - value) as N;
}
