import { linearCombination, type Piecewise } from "../mechanics/piecewise.ts";
import { defineFact } from "./fact.ts";
import { opposite } from "./opposite.ts";
import { type Response, response, type View } from "./response.ts";
import { stability } from "./stability.ts";

type Fields<K extends string> = Readonly<Record<K, Piecewise>>;
type Part = readonly [factor: number, view: View];

const INTERNAL = ["N", "Vy", "Vz", "T", "My", "Mz"] as const;
const MOVED = ["x", "y", "z", "turnX", "turnY", "turnZ"] as const;

function summed<K extends string>(
  names: readonly K[],
  parts: readonly Part[],
  of: (view: View) => Fields<K> | undefined,
): Fields<K> | undefined {
  const found = parts.flatMap(([factor, view]) => {
    const fields = of(view);
    return fields ? [[factor, fields] as const] : [];
  });
  if (found.length < parts.length) return undefined;
  const sum: Partial<Record<K, Piecewise>> = {};
  for (const name of names) sum[name] = linearCombination(found.map(([factor, fields]) => [factor, fields[name]]));
  return sum as Fields<K>;
}

const total = (parts: readonly Part[], of: (view: View) => number): number =>
  parts.reduce((sum, [factor, view]) => sum + factor * of(view), 0);

/** A sum of views with the same bars and loaded places; buckling is that of the first. */
function sumOf(first: View, parts: readonly Part[]): View {
  const at = (of: (view: View) => readonly number[], i: number): number => total(parts, (view) => of(view)[i] ?? 0);
  const triple = (of: (view: View) => readonly number[]) => [at(of, 0), at(of, 1), at(of, 2)] as const;
  return {
    ...first,
    forces: (bar) => summed(INTERNAL, parts, (view) => view.forces(bar)),
    deflections: (bar) => summed(MOVED, parts, (view) => view.deflections(bar)),
    link: (i) => {
      const of = (view: View): readonly number[] => view.link(i);
      return [at(of, 0), at(of, 1), at(of, 2), at(of, 3), at(of, 4), at(of, 5)];
    },
    foot: (i) =>
      Math.max(
        0,
        total(parts, (view) => view.foot(i)),
      ),
    reaction: (i) => ({
      at: first.reaction(i).at,
      force: triple((view) => view.reaction(i).force),
      moment: triple((view) => view.reaction(i).moment),
    }),
    moved: (node) => triple((view) => view.moved(node)),
  };
}

/**
 * The response with what sways grown where the frame is near enough to buckling: in strength combinations that lean or are leant on,
 * the sway part, half of what differs between leaning one way and the other, by 1/(1 − 1/α_cr) where α_cr is below 10 (EN 1993-1-1:2005
 * and EN 1999-1-1:2007, 5.2.2(5), from memory). Where declared loads push sideways by themselves no sway part can be told, and all of it
 * grows. At α_cr of 1 and less there is no such factor: frame.buckles has rejected the frame from 3 on.
 */
export const secondOrder = defineFact<Response, { response: typeof response; stability: typeof stability }>({
  id: "second-order",
  needs: { response, stability },
  compute({ response: found, stability: whole }) {
    if (found.kind !== "solved") return found;
    const grown = (view: View): View => {
      const { combination } = view;
      const factor = combination.sideways ? whole.amplification(combination) : 1;
      if (factor === 1 || !Number.isFinite(factor)) return view;
      const other = combination.across ? undefined : opposite(view, found.views);
      const half = (factor - 1) / 2;
      const parts: readonly Part[] = other
        ? [
            [1 + half, view],
            [-half, other],
          ]
        : [[factor, view]];
      return sumOf(view, parts);
    };
    return { ...found, views: found.views.map(grown) };
  },
});
