import { bodies } from "../facts/bodies.ts";
import type { Contact } from "../facts/contacts.ts";
import { factOf } from "../facts/fact.ts";
import { along, cross, length, normalise, type Vec3 } from "../geometry/vector.ts";
import type { Frame } from "../model/frame.ts";
import { measuredPicture } from "./measured-picture.ts";
import type { Scene } from "./scene.ts";

/** Where the dimension stands off the gap, picture units. */
const OFF = 78;
/** Bars within this of parallel lie side by side, sine. */
const PARALLEL = 1e-3;

/** The gap between two bars from its side, without what fastens them, with its length in words. */
export function gapPicture(
  frame: Frame,
  scene: Scene,
  { normal, middle, widestGap, a, b }: Contact,
  words: string,
): string | undefined {
  const [own, other] = [a, b].map(({ bar }) => factOf(bodies, frame).get(bar)?.axes.x);
  if (!own || !other) return undefined;
  // An end on a bar is seen square to both; bars side by side are seen along them.
  const beside = length(cross(own, other)) < PARALLEL;
  const side = beside ? own : normalise(cross(normal, other));
  const eye: Vec3 = side[2] < -0.5 || side[1] > 0.5 || side[0] < -0.5 ? [-side[0], -side[1], -side[2]] : side;
  const to = along(middle, normal, widestGap);
  const bars = new Set([a.bar, b.bar]);
  return measuredPicture(
    scene,
    {
      from: middle,
      to,
      eye,
      over: Math.abs(eye[2]) > 0.9 ? [0, 1, 0] : [0, 0, 1],
      ends: beside,
      dimensions: [{ from: middle, to, aside: cross(eye, normal), off: OFF, words }],
      look: ({ kind, of }) => (kind !== "bar" || !bars.has(of.id) ? undefined : of.id === a.bar ? "marked" : "plain"),
    },
    `the gap between ${a.bar} and ${b.bar}, from its side`,
  );
}
