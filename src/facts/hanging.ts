import { dot } from "../geometry/vector.ts";
import type { Ref } from "../model/ref.ts";
import { up } from "./axes.ts";
import { type Body, bodies } from "./bodies.ts";
import { contacts, TOUCH } from "./contacts.ts";
import { defineFact } from "./fact.ts";
import { placements } from "./placements.ts";

/** A joint through which a level bar's weight goes into another bar's side. */
export interface HangingJoint {
  readonly joint: Ref<"joint">;
  readonly bar: string;
  readonly onto: string;
  /** The bar rests on something at this end all the same: a bar under it that touches it. */
  readonly rests: boolean;
  /** The bar it hangs on could stop under it and carry it: a post that ends at its height. */
  readonly seatPossible: boolean;
}

/** A bar is level below, and a post plumb above, these sines and cosines: 30° and 10°. */
const LEVEL_SINE = Math.sin(Math.PI / 6);
const PLUMB_COSINE = Math.cos((10 * Math.PI) / 180);

function top(body: Body): number {
  return body.bounds.max[2];
}

/** Whether a post ends within the depth of the bar, so that it could be cut to end under it. */
function endsBeside(post: Body, bar: Body): boolean {
  const plumb = Math.abs(dot(post.axes.x, up)) > PLUMB_COSINE;
  const depth = bar.bounds.max[2] - bar.bounds.min[2];
  return plumb && top(post) <= top(bar) + depth && top(post) > bar.bounds.min[2] + TOUCH;
}

/** Which joints pass weight by hanging on fasteners, and whether a seat was possible there. */
export const hanging = defineFact<
  readonly HangingJoint[],
  { bodies: typeof bodies; contacts: typeof contacts; placements: typeof placements }
>({
  id: "hanging",
  needs: { bodies, contacts, placements },
  compute({ bodies: all, contacts: touching, placements: placed }) {
    const list: HangingJoint[] = [];
    for (const { joint, contact } of placed.met) {
      const body = all.get(joint.bar);
      const onto = all.get(contact.b.bar);
      if (!body || !onto) continue;
      const level = Math.abs(dot(body.axes.x, up)) < LEVEL_SINE;
      const sideways = Math.abs(dot(contact.normal, up)) < LEVEL_SINE;
      if (!level || !sideways) continue;
      const from = contact.middle;
      const rests = touching
        .of(joint.bar)
        .some(
          (seen) =>
            seen.normal[2] < -0.9 &&
            seen.gap < TOUCH &&
            Math.hypot(seen.middle[0] - from[0], seen.middle[1] - from[1]) < body.cutLength / 4,
        );
      // Something that stands on the post would fall with it.
      const carriesMore = touching
        .of(onto.bar.ref.id)
        .some(
          (seen) => seen.normal[2] > 0.9 && seen.gap < TOUCH && seen.middle[2] > from[2] && seen.b.bar !== joint.bar,
        );
      list.push({
        joint: joint.ref,
        bar: joint.bar,
        onto: contact.b.bar,
        rests,
        seatPossible: endsBeside(onto, body) && !carriesMore,
      });
    }
    return list;
  },
});
