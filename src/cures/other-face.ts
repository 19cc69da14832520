import type { KitItem } from "../model/generated/frame-file.generated.ts";
import { connectorsOf } from "./connectors-of-joint.ts";
import type { Cure, Proposal } from "./cure.ts";

type Side = NonNullable<KitItem["on"]>;

/** Opposite sides a connector may be put on, in the words of the frame file. */
const PAIRS: readonly (readonly [Side, Side])[] = [
  ["above", "below"],
  ["+x", "-x"],
  ["+y", "-y"],
];

/** A connector on another face of its bars, where its screws find slots. Other joints of the same kit stay as they are. */
export const otherFace: Cure = {
  id: "other-face",
  turn: 1,
  mends: ["slot.mismatched"],
  *propose(ailment, patient): Iterable<Proposal> {
    // "rail-1.from/2" or "rail-1.from/2/b1": the second connector of the joint.
    const [joint = "", place] = ailment.at.id.split("/");
    const items = connectorsOf(joint, patient)?.items;
    const index = Number(place) - 1;
    const item = items?.[index];
    if (!items || !item) return;
    const pointer = `${patient.pointerOf({ kind: "joint", id: joint })}/by`;
    const onSides = (sides: readonly (Side | undefined)[]): Proposal["edits"] => [
      { pointer, to: items.map((each, i) => ({ ...each, on: sides[i] ?? each.on })) },
    ];
    if (items.length === 2)
      for (const [one, other] of PAIRS)
        yield { words: `the connectors on "${one}" and "${other}"`, edits: onSides([one, other]) };
    const taken = new Set(items.map((each) => each.on));
    for (const side of PAIRS.flat())
      if (!taken.has(side))
        yield {
          words: `${item.connector} on "${side}"`,
          edits: onSides(items.map((_, i) => (i === index ? side : undefined))),
        };
  },
};
