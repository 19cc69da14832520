import { combinations } from "../facts/combinations.ts";
import { factOf } from "../facts/fact.ts";
import { footing } from "../facts/footing.ts";
import { appliedLoads, sumOf } from "../facts/free-body.ts";
import { response, type View } from "../facts/response.ts";
import { sagOf } from "../facts/sag.ts";
import { type Span, spans } from "../facts/spans.ts";
import { structure } from "../facts/structure.ts";
import { whyNotSolved } from "../facts/why-not-solved.ts";
import { extrema, largest, type Piecewise } from "../mechanics/piecewise.ts";
import type { Frame } from "../model/frame.ts";
import type { BarLine, StaticsLine, StaticsSheet } from "../report/statics/statics-sheet.ts";

function barLine(view: View, bar: string, held: readonly Span[]): BarLine | undefined {
  const forces = view.forces(bar);
  if (!forces) return undefined;
  const size = (field: Piecewise): number => Math.abs(largest(field).value);
  const { min, max } = extrema(forces.N);
  let sag: number | undefined;
  for (const span of held) sag = Math.max(sag ?? 0, sagOf(view, bar, span) ?? 0);
  return {
    bar,
    N: [min.value, max.value],
    Vy: size(forces.Vy),
    Vz: size(forces.Vz),
    T: size(forces.T),
    My: size(forces.My),
    Mz: size(forces.Mz),
    ...(sag === undefined ? {} : { sag }),
  };
}

const share = (part: number, whole: number): number => (whole > 0 ? part / whole : 0);

/** Every combination as a body cut free of the floor, or why there is none; with the forces in one bar when asked for. */
export function staticsSheetOf(file: string, frame: Frame, bar?: string): StaticsSheet | { readonly why: string } {
  const found = factOf(response, frame);
  if (found.kind !== "solved") return { why: whyNotSolved(found) };
  const feet = factOf(footing, frame);
  const known = factOf(structure, frame);
  const { cases } = factOf(combinations, frame);
  const held = bar === undefined ? [] : (factOf(spans, frame).get(bar) ?? []);
  const lines = found.views.map((view): StaticsLine => {
    const loads = [...appliedLoads(known, cases, view.combination.factors)];
    const reactions = feet.map((_, i) => view.reaction(i));
    const applied = sumOf(loads);
    const all = sumOf([...loads, ...reactions]);
    const residual = Math.max(
      share(Math.hypot(...all.force), all.forces),
      share(Math.hypot(...all.moment), all.moments),
    );
    const line = bar === undefined ? undefined : barLine(view, bar, held);
    return {
      combination: view.combination.name,
      joints: view.bound,
      applied: { force: applied.force, moment: applied.moment },
      feet: reactions.map(({ at, force, moment }, i) => ({ foot: feet[i]?.ref.id ?? "", at, force, moment })),
      sum: { force: all.force, moment: all.moment },
      residual,
      ...(line ? { bar: line } : {}),
    };
  });
  return { file, title: frame.title, units: frame.units, lines };
}
