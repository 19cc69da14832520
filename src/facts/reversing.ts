import { defineFact } from "./fact.ts";
import { opposite } from "./opposite.ts";
import type { View } from "./response.ts";

/** What shakes a frame: why, and which share of the weights comes and goes. */
export interface Reversing {
  readonly why: "vibration" | "casters";
  readonly share: number;
}

/** Share of the weights that shaking adds and takes (common practice: light machines a tenth, strong ones and rolling half). */
const SHARE = { light: 0.1, strong: 0.5, rolling: 0.5 } as const;

/** Whether something declared shakes the frame; undefined where nothing does. */
export const reversing = defineFact<Reversing | undefined>({
  id: "reversing",
  compute(_, frame) {
    const strong = frame.site.vibration === "strong";
    if (!strong && frame.stands.some((stand) => stand.hold === "rolling"))
      return { why: "casters", share: SHARE.rolling };
    const shaking = frame.masses.some((mass) => mass.shakes !== undefined);
    if (frame.site.vibration === "none" && !shaking) return undefined;
    return { why: "vibration", share: strong ? SHARE.strong : SHARE.light };
  },
});

type Six = ReturnType<View["link"]>;

/** A view of what reverses: a share of the weights, as if it acted alone. */
export function shaken(view: View, share: number): View {
  return { ...view, link: (i) => view.link(i).map((part) => share * part) as unknown as Six };
}

/** Half of what changes between a push one way and back. */
export function pushedToAndFro(one: View, other: View): View {
  return {
    ...one,
    link(i) {
      const back = other.link(i);
      return one.link(i).map((part, k) => (part - (back[k] ?? 0)) / 2) as unknown as Six;
    },
  };
}

/** Everything that reverses, as views: the weights in service shaken, and every push with its opposite. */
export function reversedViews(views: readonly View[], share: number): readonly View[] {
  const found: View[] = [];
  for (const view of views) if (view.combination.kind === "service") found.push(shaken(view, share));
  for (const one of views) {
    const { kind, side } = one.combination;
    const other = kind === "sway" && side?.sign === 1 ? opposite(one, views) : undefined;
    if (other) found.push(pushedToAndFro(one, other));
  }
  return found;
}
