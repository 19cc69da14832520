import { along, dot, length, midpoint, normalise, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Choice, FaceChoice } from "../model/frame.ts";
import type { FaceName, Slot } from "../model/stock/stock.ts";
import { faceAcross, faceNames, faceNormal, up } from "./axes.ts";
import type { Body } from "./bodies.ts";

/** An answer, or what the author has to be asked. */
export type Answer<T> =
  | { readonly is: T }
  | { readonly found: string; readonly expected: string; readonly mend: string };

/** A face looks a written direction when its normal lies within this cosine of it: 5°. */
const SAME_WAY = Math.cos((5 * Math.PI) / 180);
/** A face looks up or down rather than sideways beyond this cosine: 45°. At it, give or take rounding, it does both. */
const LEVEL = Math.SQRT1_2;
const ROUNDING = 1e-9;
/** Two faces whose normals point to the middle alike within this share leave "inner" open. */
const ALIKE = 0.01;

function facing(body: Body, direction: Vec3): readonly FaceName[] {
  return faceNames.filter((face) => dot(faceNormal(body.axes, face), direction) > SAME_WAY);
}

function best(body: Body, faces: readonly FaceName[], direction: Vec3): readonly FaceName[] {
  const towards = (face: FaceName): number => dot(faceNormal(body.axes, face), direction);
  const most = faces.reduce((high, face) => Math.max(high, towards(face)), -Infinity);
  return faces.filter((face) => towards(face) > most - ALIKE);
}

function words(body: Body): string {
  return faceNames
    .map((face) => {
      const n = faceNormal(body.axes, face);
      return `${face} looks ${n.map((c) => c.toFixed(2).replace(/^-0\.00$/, "0.00")).join(" ")}`;
    })
    .join(", ");
}

/** Which face of a bar is meant. `middle` is the middle of the frame, m. */
export function chooseFace(body: Body, choice: FaceChoice, middle: Vec3): Answer<FaceName> {
  const id = body.bar.ref.id;
  let faces: readonly FaceName[];
  let written: string;
  if (choice.by === "name") return { is: choice.name };
  if (choice.by === "direction") {
    written = choice.written;
    faces = facing(body, choice.direction);
  } else {
    written = choice.word;
    if (choice.word === "above" || choice.word === "below") {
      const way: Vec3 = choice.word === "above" ? up : [0, 0, -1];
      faces = best(body, faceNames, way).filter((face) => dot(faceNormal(body.axes, face), way) > LEVEL - ROUNDING);
    } else {
      const own = midpoint(body.bar.from, body.bar.to);
      const inward = subtract(middle, own);
      const flat = along(inward, body.axes.x, -dot(inward, body.axes.x));
      // On a level bar inner and outer are its two sides, not its top and underside.
      const level = Math.abs(dot(body.axes.x, up)) < LEVEL;
      const sides = level
        ? faceNames.filter((face) => Math.abs(dot(faceNormal(body.axes, face), up)) < LEVEL + ROUNDING)
        : faceNames;
      const sideways: Vec3 = level ? [flat[0], flat[1], 0] : flat;
      if (length(sideways) < 1e-9) faces = [];
      else {
        const to = normalise(sideways);
        faces = best(body, sides, choice.word === "inner" ? to : [-to[0], -to[1], -to[2]]);
      }
    }
  }
  const [only, second] = faces;
  if (only && !second) return { is: only };
  return {
    found: `face "${written}" of ${id}`,
    expected: only ? `one face; ${faces.join(" and ")} look that way alike` : "a face that looks that way",
    mend: `name the face by a direction or by letter: ${words(body)}`,
  };
}

/** Which slots of a face are meant: the only one, or those chosen. */
export function chooseSlots(body: Body, face: FaceName, choice: Choice | undefined): Answer<readonly Slot[]> {
  const slots = body.bar.profile.slots.filter((slot) => slot.face === face);
  const id = body.bar.ref.id;
  const [first, second] = slots;
  if (!first)
    return {
      found: `face ${face} of ${id}`,
      expected: "a face with a slot",
      mend: `${body.bar.profile.name} has none there; choose another face`,
    };
  if (!choice) {
    if (!second) return { is: [first] };
    return {
      found: `face ${face} of ${id}, which has ${slots.length} slots`,
      expected: "one slot named",
      mend: `add "slot": a direction, "all", or a number from 1 to ${slots.length}`,
    };
  }
  if (choice.by === "all") return { is: slots };
  if (choice.by === "number") {
    const chosen = slots.find((slot) => slot.number === choice.number);
    return chosen
      ? { is: [chosen] }
      : {
          found: `slot ${choice.number} on face ${face} of ${id}`,
          expected: `a number from 1 to ${slots.length}`,
          mend: "count the slots along the face",
        };
  }
  const way = dot(faceAcross(body.axes, face), choice.direction);
  if (Math.abs(way) < 1e-6) {
    return {
      found: `slot "${choice.written}" on face ${face} of ${id}`,
      expected: "a direction across the face",
      mend: `use a number from 1 to ${slots.length}`,
    };
  }
  return { is: [slots.reduce((a, b) => (b.across * way > a.across * way ? b : a))] };
}
