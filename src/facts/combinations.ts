import { scale, type Vec3 } from "../geometry/vector.ts";
import type { MemberLoad, NodeLoad, LoadCase as SolverCase } from "../mechanics/model.ts";
import { formatQuantity } from "../model/units/format-quantity.ts";
import { acting } from "./acting.ts";
import { type Choice, together } from "./acting-together.ts";
import type { Effect } from "./adverse.ts";
import { bodies } from "./bodies.ts";
import { allExclude } from "./excluding.ts";
import { defineFact } from "./fact.ts";
import { fastenedSheets } from "./fastened-sheets.ts";
import { footing } from "./footing.ts";
import { appliedLoads, sumOf } from "./free-body.ts";
import { loadEffects } from "./load-effects.ts";
import { loadFactors } from "./load-factors.ts";
import { oddFloors } from "./odd-floors.ts";
import { planAxes } from "./plan-axes.ts";
import { pushLevel } from "./push-level.ts";
import { sheetBraces } from "./sheet-braces.ts";
import { solverModel } from "./solver-model.ts";
import { structure } from "./structure.ts";
import { tippingEdges } from "./tipping-edges.ts";
import { tippingPush } from "./tipping-push.ts";
import { warmth } from "./warmth.ts";

/**
 * service: everything at its own size. strength: with the factors of the method, in plumb and out of it, on an uneven floor, or with an
 * accidental load.
 * sway: own size and a push.
 */
export type CombinationKind = "service" | "strength" | "sway";

export interface Combined {
  /** In words: "1.35 permanent + 1.5 trays + out of plumb along +x". */
  readonly name: string;
  readonly kind: CombinationKind;
  /** One factor a solver case. */
  readonly factors: readonly number[];
  /** Whether anything pushes sideways: the feet then hold by friction. */
  readonly sideways: boolean;
  /** Whether declared loads push sideways by themselves. */
  readonly across: boolean;
  /** Load cases and equipment that act besides what is permanent. */
  readonly acts: readonly string[];
  /** Of a combination that comes four ways: which way it leans, or is leant on or pushed. */
  readonly side?: Side;
  /** Whether a person leans on it. */
  readonly leaning?: true;
  /** On an uneven floor: how far it lies below each foot that is not anchored, m. */
  readonly gaps?: readonly number[];
}

/** What it is but for the way it leans or is pushed. */
const laden = ({ name }: Combined): string => name.replace(/ along [+-][xy]( turned by -?\d+°)?$/, "");

/** Whether two combinations are one, leaning, leant on or pushed one way and the other. */
export function opposed(a: Combined, b: Combined): boolean {
  return a.side !== undefined && a.side.axis === b.side?.axis && a.side.sign === -b.side.sign && laden(a) === laden(b);
}

export interface Side {
  /** Which of the frame's own axes in plan. */
  readonly axis: 0 | 1;
  readonly sign: 1 | -1;
}

export interface Combinations {
  readonly cases: readonly SolverCase[];
  readonly all: readonly Combined[];
}

/** EN 1993-1-1:2005, 5.3.2: a frame stands out of plumb by this much, rad. */
export const OUT_OF_PLUMB = 1 / 200;
/** A person leans on it, N (common practice); a push at which it should still feel firm, N (common practice). */
export const LEAN = 250;
export const PUSH = 150;
/** ψ0 of warmth and cold beside other loads (EN 1990:2002, Table A1.1, from memory). */
const WARMTH_BESIDE = 0.6;
/** Of the push that tips a light frame, so much shows how stiff it stands before it does. */
const BEFORE_TIPPING = 0.9;
/** What tips at less than this, N, does not stand. */
const LEAST_PUSH = 1;

/** "1.35 self-weight", and the name alone where it is taken once. */
const times = (factor: number, name: string): string =>
  factor === 1 ? name : `${Number(factor.toPrecision(3))} ${name}`;

const SIDES: readonly Side[] = [
  { axis: 0, sign: 1 },
  { axis: 0, sign: -1 },
  { axis: 1, sign: 1 },
  { axis: 1, sign: -1 },
];

/** The weight in a case laid over sideways: what leaning by one radian would put across. */
function sideways(loads: SolverCase, direction: Vec3): SolverCase {
  const over = (f: Vec3): Vec3 => scale(direction, -f[2]);
  const members: MemberLoad[] = [];
  for (const load of loads.members ?? []) {
    if (load.kind === "point" && load.force)
      members.push({ kind: "point", member: load.member, along: load.along, force: over(load.force) });
    if (load.kind === "line" && load.force)
      members.push({
        kind: "line",
        member: load.member,
        start: load.start,
        end: load.end,
        force: [over(load.force[0]), over(load.force[1])],
      });
  }
  const nodes: NodeLoad[] = [];
  for (const load of loads.nodes ?? []) if (load.force) nodes.push({ node: load.node, force: over(load.force) });
  return { members, nodes };
}

/** The same loads with nothing level in them: what bears down of them, and moments. Undefined where that is all of them. */
function downOnly(loads: SolverCase): SolverCase | undefined {
  const down = (f: Vec3): Vec3 => [0, 0, f[2]];
  const level = (f: Vec3 | undefined): boolean => f !== undefined && Math.hypot(f[0], f[1]) > 0;
  const { members = [], nodes = [] } = loads;
  const any =
    nodes.some(({ force }) => level(force)) ||
    members.some((load) =>
      load.kind === "line" ? load.force?.some(level) === true : load.kind === "point" && level(load.force),
    );
  if (!any) return undefined;
  return {
    ...loads,
    nodes: nodes.map((load) => (load.force ? { ...load, force: down(load.force) } : load)),
    members: members.map((load): MemberLoad => {
      if (load.kind === "point" && load.force) return { ...load, force: down(load.force) };
      if (load.kind === "line" && load.force) return { ...load, force: [down(load.force[0]), down(load.force[1])] };
      return load;
    }),
  };
}

/** A load pushes sideways from this share of its weight on: below, it is a slope of the drawing. */
const ACROSS = 0.02;

/** Sum of loads that act together, N. */
export function resultantOf(cases: readonly SolverCase[], factors: readonly number[]): Vec3 {
  let sum: Vec3 = [0, 0, 0];
  const add = (force: Vec3, by: number): void => {
    sum = [sum[0] + force[0] * by, sum[1] + force[1] * by, sum[2] + force[2] * by];
  };
  for (const [i, { members, nodes }] of cases.entries()) {
    const factor = factors[i] ?? 0;
    if (factor === 0) continue;
    for (const load of members ?? []) {
      if (load.kind === "point" && load.force) add(load.force, factor);
      if (load.kind === "line" && load.force) {
        for (const end of load.force) add(end, (factor * (load.end - load.start)) / 2);
      }
    }
    for (const load of nodes ?? []) if (load.force) add(load.force, factor);
  }
  return sum;
}

/** Whether loads that act together push the frame to one side. */
function pushes(cases: readonly SolverCase[], factors: readonly number[]): boolean {
  const [x, y, z] = resultantOf(cases, factors);
  return Math.hypot(x, y) > ACROSS * Math.abs(z);
}

/** Load cases as the solver takes them, and all combinations that the rules look at. */
export const combinations = defineFact<
  Combinations,
  {
    acting: typeof acting;
    bodies: typeof bodies;
    fastened: typeof fastenedSheets;
    structure: typeof structure;
    level: typeof pushLevel;
    footing: typeof footing;
    by: typeof loadFactors;
    warm: typeof warmth;
    plan: typeof planAxes;
  }
>({
  id: "combinations",
  needs: {
    acting,
    bodies,
    fastened: fastenedSheets,
    structure,
    level: pushLevel,
    footing,
    by: loadFactors,
    warm: warmth,
    plan: planAxes,
  },
  compute({ acting: known, bodies: all, fastened, structure: nodes, level, footing: feet, by, warm, plan }, frame) {
    const base = known.cases.map((c) => c.loads);
    const n = base.length;
    const cases: SolverCase[] = [...base, ...plan.directions.flatMap((way) => base.map((c) => sideways(c, way)))];
    const pushAt = cases.length;
    for (const way of plan.directions) {
      const force = scale(way, 1 / Math.max(1, level.nodes.length));
      cases.push({ nodes: level.nodes.map((node) => ({ node, force })) });
    }
    // Where each case with something level in it stands again without that.
    const downOf = new Map<number, number>();
    for (const [i, loads] of base.entries()) {
      const down = downOnly(loads);
      if (!down) continue;
      downOf.set(i, cases.length);
      cases.push(down);
    }
    const permanent = known.cases.flatMap((c, i) => (c.kind === "permanent" ? [i] : []));
    let effects: readonly Effect[] | undefined;
    const influence = (): readonly Effect[] | undefined => {
      const braces = sheetBraces(fastened, nodes, "typical");
      effects ??= loadEffects(known, nodes, all, solverModel(nodes, all, feet, frame.stock, "typical", "held", braces));
      return effects;
    };
    const choices = together(known, allExclude(frame), influence);
    const combined: Combined[] = [];
    const factors = (g: number, q: number, choice: Choice | undefined): number[] => {
      const list = new Array<number>(cases.length).fill(0);
      for (const i of permanent) list[i] = g;
      for (const i of choice?.indices ?? []) list[i] = q;
      return list;
    };
    const always = [...new Set(permanent.map((i) => known.cases[i]?.name ?? ""))];
    const words = (g: number, q: number, choice: Choice | undefined): string =>
      [...always.map((name) => times(g, name)), ...(choice?.said ?? []).map((name) => times(q, name))].join(" + ");
    const edges = feet.some(({ hold }) => hold === "anchored") ? [] : tippingEdges(feet, frame.stands);
    /** What a frame with these loads is pushed with to see how stiff it stands, N. */
    const pushOn = (loads: readonly number[], axis: Side["axis"]): number => {
      const tips = tippingPush(sumOf(appliedLoads(nodes, cases, loads)), edges, plan.directions[axis], {
        height: level.height,
        floor: frame.floor.z,
      });
      return Math.min(PUSH, BEFORE_TIPPING * tips);
    };
    const slope = OUT_OF_PLUMB + frame.floor.slope;
    type More = Partial<Pick<Combined, "across" | "side" | "leaning" | "gaps">>;
    const add = (
      kind: CombinationKind,
      name: string,
      list: readonly number[],
      acts: readonly string[],
      more: More = {},
    ) => {
      const { across = pushes(cases, list), side } = more;
      combined.push({ kind, name, factors: list, sideways: across || side !== undefined, acts, ...more, across });
    };
    /**
     * Loads that push sideways have all feet hold by friction, which lends thrust to what else they bear. So much of them as bears down
     * is asked besides, on feet that slide.
     */
    const alsoDown = (kind: CombinationKind, name: string, list: readonly number[], acts: readonly string[]): void => {
      const down = [...list];
      for (const [i, at] of downOf) {
        down[at] = list[i] ?? 0;
        down[i] = 0;
      }
      add(kind, `${name}, its push sideways left out`, down, acts);
    };
    const namesOf = (choice: Choice | undefined): readonly string[] => choice?.names ?? [];
    const orNone = (list: readonly Choice[]): readonly (Choice | undefined)[] => (list.length > 0 ? list : [undefined]);
    /** In plumb, and of a set that counts in full out of it as well. */
    const stand = (choice: Choice | undefined, alsoLeaning: boolean): void => {
      const acts = namesOf(choice);
      const own = factors(1, 1, choice);
      const across = pushes(cases, own);
      add("service", words(1, 1, choice), own, acts, { across });
      if (across) alsoDown("service", words(1, 1, choice), own, acts);
      const strong = factors(by.permanent, by.variable, choice);
      const name = words(by.permanent, by.variable, choice);
      // With all factors 1 it is what the frame serves under, judged by other limits.
      add("strength", by.variable === 1 ? `${name}, for strength` : name, strong, acts, { across });
      if (across) alsoDown("strength", by.variable === 1 ? `${name}, for strength` : name, strong, acts);
      for (const side of alsoLeaning ? SIDES : []) {
        const tilted = [...strong];
        for (let i = 0; i < n; i += 1) tilted[n * (1 + side.axis) + i] = side.sign * slope * (strong[i] ?? 0);
        add("strength", `${name}, out of plumb along ${plan.words(side.axis, side.sign)}`, tilted, acts, {
          across,
          side,
        });
      }
      if (choice !== undefined)
        add("strength", words(by.helping, by.variable, choice), factors(by.helping, by.variable, choice), acts);
    };
    for (const choice of orNone(choices.all)) stand(choice, true);
    for (const choice of choices.patterns) stand(choice, false);
    for (const { words: where, gaps } of oddFloors(feet, frame.floor.uneven)) {
      for (const choice of orNone(choices.fullest)) {
        const name = `${words(by.permanent, by.variable, choice)}, ${where}`;
        add("strength", name, factors(by.permanent, by.variable, choice), namesOf(choice), { gaps });
      }
    }
    for (const { name: weather, loads } of warm) {
      const at = cases.length;
      cases.push(loads);
      const wide = (list: readonly number[], by: number) => {
        const longer = new Array<number>(cases.length).fill(0);
        for (const [i, factor] of list.entries()) longer[i] = factor;
        longer[at] = by;
        return longer;
      };
      for (const choice of orNone(choices.fullest)) {
        const [most, beside] = [by.variable, by.variable * WARMTH_BESIDE];
        for (const [q, t] of choice ? [[most, beside] as const, [by.beside, most] as const] : [[most, most] as const]) {
          const name = `${words(by.permanent, q, choice)} + ${times(t, weather)}`;
          add("strength", name, wide(factors(by.permanent, q, choice), t), namesOf(choice));
        }
      }
    }
    for (const choice of choices.accidental)
      for (const beside of orNone(choices.fullest)) {
        const rare = factors(by.accidental, by.accompanying, beside);
        for (const i of choice.indices) rare[i] = by.accidental;
        const struck = choice.said.map((name) => times(by.accidental, name)).join(" + ");
        const name = `${words(by.accidental, by.accompanying, beside)} + ${struck} by accident`;
        add("strength", name, rare, [...namesOf(beside), ...choice.names]);
      }
    for (const side of SIDES) {
      const way = plan.words(side.axis, side.sign);
      for (const choice of orNone(choices.fullest)) {
        const leaning = factors(by.permanent, by.beside, choice);
        const across = pushes(cases, leaning);
        leaning[pushAt + side.axis] = side.sign * by.variable * LEAN;
        const who = times(by.variable, "a person leaning");
        const name = `${words(by.permanent, by.beside, choice)} + ${who} along ${way}`;
        add("strength", name, leaning, namesOf(choice), { across, side, leaning: true });
      }
      for (const choice of [undefined, ...choices.fullest]) {
        const pushed = factors(1, 1, choice);
        const across = pushes(cases, pushed);
        const push = pushOn(pushed, side.axis);
        // Loads that push it by themselves leave a light frame little more to be pushed with.
        if (push < LEAST_PUSH || (across && push < PUSH)) continue;
        pushed[pushAt + side.axis] = side.sign * push;
        const name = `${words(1, 1, choice)} + a push of ${formatQuantity(Math.round(push), "force", frame.units)} along ${way}`;
        add("sway", name, pushed, namesOf(choice), { across, side });
      }
    }
    return { cases, all: combined };
  },
});
