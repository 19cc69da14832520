import type { Scene } from "./scene.ts";
import type { Solid } from "./solids/solid.ts";

/** What is drawn of two revisions of a frame that is not drawn alike in both, bars aside. */
export interface Differences {
  /** Parts of the old scene of which the new one has none of that shape in that place. */
  readonly gone: readonly Solid[];
  readonly fresh: readonly Solid[];
}

/** Corners are the same when they agree to a hundredth of a millimetre: what a change of units may leave. */
const GRID = 1e5;

const shapeOf = ({ kind, prism }: Solid): string =>
  `${kind} ${prism.vertices
    .map((point) => point.map((c) => Math.round(c * GRID) + 0).join(" "))
    .sort()
    .join(";")}`;

/** Connectors, screws, caps, panels and feet by shape and place, whatever they are called. */
export function differences(before: Scene, after: Scene): Differences {
  const beside = ({ solids }: Scene): readonly (readonly [Solid, string])[] =>
    solids.filter(({ kind }) => kind !== "bar").map((solid) => [solid, shapeOf(solid)] as const);
  const [old, now] = [beside(before), beside(after)];
  const missing = (own: typeof old, other: typeof old): readonly Solid[] => {
    const known = new Set(other.map(([, shape]) => shape));
    return own.filter(([, shape]) => !known.has(shape)).map(([solid]) => solid);
  };
  return { gone: missing(old, now), fresh: missing(now, old) };
}
