import type { Bar, BarEnd, Choice, ConnectorChoice, Cut, FaceChoice } from "../frame.ts";
import { type EndName, endRef, ref } from "../ref.ts";
import { type Instance, refuseImage, renamed } from "./copies.ts";
import { mirroredBore, mirroredBracketHoles, mirroredFace, mirroredSlot } from "./mirror-image.ts";
import { moveAxis, movePoint, moveVector } from "./placement.ts";
import { faceMeant, sectionAxes } from "./section-axes.ts";
import { directionChoice, triple } from "./values.ts";
import type { Work } from "./work.ts";

/** A face of the copy of a bar. */
export function moveFace(choice: FaceChoice, bar: Bar | undefined, { placement }: Instance): FaceChoice {
  if (placement.shifts) return choice;
  if (choice.by === "direction") return directionChoice(moveVector(placement, choice.direction));
  if (choice.by === "name") return placement.mirrors ? { by: "name", name: mirroredFace(choice.name) } : choice;
  if (choice.word === "inner" || choice.word === "outer") return choice;
  const up = moveVector(placement, triple(0, 0, 1));
  if (up[2] === 1) return choice;
  if (up[2] === -1) return { by: "word", word: choice.word === "above" ? "below" : "above" };
  const name = bar === undefined ? undefined : faceMeant(bar, choice);
  if (name === undefined) return choice;
  return { by: "name", name: placement.mirrors ? mirroredFace(name) : name };
}

/** A choice of the copy: by direction it is moved, by number it is counted the other way in a mirror. */
export function moveChoice(
  choice: Choice,
  instance: Instance,
  mirroredNumber: (number: number) => number | undefined,
): Choice | undefined {
  const { placement } = instance;
  if (placement.shifts || choice.by === "all") return choice;
  if (choice.by === "direction") return directionChoice(moveVector(placement, choice.direction));
  const number = placement.mirrors ? mirroredNumber(choice.number) : choice.number;
  return number === undefined ? undefined : Object.freeze({ by: "number", number });
}

/** The slot of a face of a bar's copy. */
export function moveSlot(
  work: Work,
  slot: Choice,
  on: FaceChoice | undefined,
  bar: Bar | undefined,
  instance: Instance,
): Choice | undefined {
  const moved = moveChoice(slot, instance, (number) => (bar === undefined ? number : mirroredSlot(bar, on, number)));
  return moved ?? refuseImage(work, bar?.profile.name ?? "", "slot", instance);
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

/** A bar's copy: from and to keep their places on it, face A looks where the image of face A looks. */
export function copyBar(bar: Bar, instance: Instance): Bar {
  const { placement } = instance;
  const id = bar.ref.id + instance.suffix;
  const tall = bar.stance.by === "tall" ? bar.stance.direction : placement.shifts ? undefined : sectionAxes(bar).y;
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
  const ownSlot = slot === undefined ? undefined : moveSlot(work, slot, on, bar, instance);
  const ownBore =
    bore === undefined
      ? undefined
      : moveChoice(bore, instance, (number) => (bar === undefined ? number : mirroredBore(bar, number)));
  if (bore !== undefined && ownBore === undefined) return refuseImage(work, bar?.profile.name ?? "", "bore", instance);
  if (omit === undefined || (slot !== undefined && ownSlot === undefined)) return undefined;
  return Object.freeze({
    ...rest,
    omit,
    ...(on === undefined ? {} : { on: Object.freeze(moveFace(on, bar, instance)) }),
    ...(ownSlot === undefined ? {} : { slot: ownSlot }),
    ...(ownBore === undefined ? {} : { bore: ownBore }),
    shift: placement.mirrors ? negated(rest.shift) : rest.shift,
  });
}

function negated<N extends number>(value: N): N {
  return (0 - value) as N;
}
