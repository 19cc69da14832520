import { barForces } from "../facts/bar-forces.ts";
import { combinations } from "../facts/combinations.ts";
import { factOf } from "../facts/fact.ts";
import { footing } from "../facts/footing.ts";
import { appliedLoads, sumOf } from "../facts/free-body.ts";
import { response } from "../facts/response.ts";
import { sags } from "../facts/sag.ts";
import { spans } from "../facts/spans.ts";
import { structure } from "../facts/structure.ts";
import { whyNotSolved } from "../facts/why-not-solved.ts";
import type { Frame } from "../model/frame.ts";
import type { StaticsLine, StaticsSheet } from "../report/statics/statics-sheet.ts";

const share = (part: number, whole: number): number => (whole > 0 ? part / whole : 0);

/** Every combination as a body cut free of the floor, or why there is none; with the forces in one bar when asked for. */
export function staticsSheetOf(file: string, frame: Frame, bar?: string): StaticsSheet | { readonly why: string } {
  const found = factOf(response, frame);
  if (found.kind !== "solved") return { why: whyNotSolved(found) };
  const feet = factOf(footing, frame);
  const known = factOf(structure, frame);
  const { cases } = factOf(combinations, frame);
  const bent = factOf(sags, frame);
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
    const line = bar === undefined ? undefined : barForces(view, bar, held, bent);
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
