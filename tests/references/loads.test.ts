import { expect } from "vitest";
import { usualLoad } from "../../src/cli/start/drawing.ts";
import { SERIES } from "../../src/cli/start/series.ts";
import type { Criterion } from "../../src/criteria/criterion.ts";
import { memberFactor } from "../../src/criteria/member-factor.ts";
import { slipFactor } from "../../src/criteria/slip-factor.ts";
import { sway } from "../../src/criteria/sway.ts";
import { GRAVITY } from "../../src/facts/acting.ts";
import { LEAN, OUT_OF_PLUMB } from "../../src/facts/combinations.ts";
import { ALLOWABLE, PARTIAL } from "../../src/facts/load-factors.ts";
import { noSettings } from "../../src/house/settings.ts";
import { Limits } from "../../src/inspection/limits.ts";
import { BASIC_SWAY, swayImperfection } from "../../src/mechanics/design/second-order.ts";
import { frameRef } from "../../src/model/ref.ts";
import { rule as sags } from "../../src/rules/bar.sags.ts";
import { rule as overloaded } from "../../src/rules/foot.overloaded.ts";
import { rule as resonates } from "../../src/rules/frame.resonates.ts";
import type { AnyRule } from "../../src/rules/shape/rule.ts";
import { pointDown, reaction, solveLine } from "../mechanics/line-beam.ts";
import { type Runner, runFamily } from "../mechanics/reference-run.ts";
import { frameFrom, table } from "../rules/table.ts";

const MM = 1e-3;
const KPA = 1000;

/** A criterion of a rule by the name the rule has for it. */
function criterionOf(rule: AnyRule, name: string): Criterion {
  const found = rule.criteria[name];
  if (found === undefined) throw new Error(`${rule.id} has no criterion ${name}`);
  return found;
}

const standard = (rule: AnyRule, name: string): number => Number(criterionOf(rule, name).standard);

/** The standard value of a criterion as a rule gets it, m, for a part of this span, m. */
function allowed(criterion: Criterion, span: number): number {
  const settings = noSettings("2026-01-01");
  const limits = new Limits(frameFrom(table()), { ...settings, rules: [] });
  return limits.given(criterion).at(frameRef, span).value;
}

/** So long that no least value counts, m. */
const LONG = 6;
const divisor =
  (criterion: Criterion): Runner =>
  () =>
    Number((LONG / allowed(criterion, LONG)).toPrecision(12));

const sag = criterionOf(sags, "allowed");
const usual = SERIES.find(({ size }) => size === "40");
if (usual === undefined) throw new Error("no series of 40 mm to start with");

const runners: Readonly<Record<string, Runner>> = {
  "loads.en1990.gamma": () => ({ G_sup: PARTIAL.permanent, G_inf: PARTIAL.helping, Q: PARTIAL.variable }),
  "loads.en1990.psi": () => ({
    B_psi0: Number((PARTIAL.beside / PARTIAL.variable).toPrecision(12)),
    E_psi2: PARTIAL.accompanying,
  }),
  "loads.ec9.gammaM": () => ({ M1: Number(memberFactor.standard), M3: Number(slipFactor.standard) }),
  "loads.phi0": () => {
    expect(OUT_OF_PLUMB).toBe(BASIC_SWAY);
    return OUT_OF_PLUMB;
  },
  "loads.ex.notional": (_, get) => get("V") * swayImperfection(get("h"), get("m"), OUT_OF_PLUMB),
  "loads.asce7.asd": () => ({ c1_D: ALLOWABLE.permanent, c2_D: ALLOWABLE.permanent, c2_L: ALLOWABLE.variable }),
  "loads.ex.uls": (_, get) => PARTIAL.permanent * get("G") + PARTIAL.variable * get("Q"),
  "loads.limit.L150": divisor(sway),
  "loads.limit.L300": divisor(sag),
  "loads.ex.limit": (_, get) => ({ rail: allowed(sag, get("L") * MM) / MM }),
  "loads.typ.person-lean": () => {
    expect(usualLoad(usual, "lean")).toBe(LEAN);
    return LEAN;
  },
  "loads.typ.bench-top": () => usualLoad(usual, "goods") * KPA,
  "loads.typ.cart-push": () => usualLoad(usual, "push"),
  "loads.castor.ecc": (_, get) => {
    const [a, e] = [get("a"), get("e")];
    const nodes = [[0, "pinned"] as const, [a, "pinned"] as const];
    const solution = solveLine({ EI: 1e12, nodes }, { members: [pointDown(0, a / 2 + e, get("W"))] });
    return reaction(solution, 1) / 2; // two feet at either end
  },
  "loads.dyn.moving": () => ({ normal: standard(overloaded, "rolling") }),
  "loads.dyn.avoid": () => ({
    low: standard(resonates, "low"),
    high: standard(resonates, "high"),
  }),
  "loads.ex.self-weight": (_, get) => get("m") * GRAVITY * MM,
};

const NO_FACTORED_TIPPING =
  "tipping is judged by a tilt of 10° and a push of a share of the weight (frame.tips), without partial factors";
const NOT_THIS_CODE = "strength is combined after EN 1990 alone";
const OTHER_LIMIT = 'no criterion has this as its standard value; house and frame files set it: "span / 500"';
const AUTHOR_SAYS = "what a frame carries is for its author to write; nothing is assumed of this size";
const NO_IMPACT = "falling and sudden loads are outside the tool: an author writes the static load to be borne";
const listed: Readonly<Record<string, string>> = {
  "loads.en1990.equ": NO_FACTORED_TIPPING,
  "loads.ex.equ": NO_FACTORED_TIPPING,
  "loads.asce7.strength": NOT_THIS_CODE,
  "loads.ex.lrfd": NOT_THIS_CODE,
  "loads.ec3.gammaM": "bars are of aluminium; their factor is that of EN 1999-1-1",
  "loads.limit.L200": OTHER_LIMIT,
  "loads.limit.L360": OTHER_LIMIT,
  "loads.limit.L500": OTHER_LIMIT,
  "loads.limit.L1000": OTHER_LIMIT,
  "loads.limit.code": OTHER_LIMIT,
  "loads.typ.person-push-hard": AUTHOR_SAYS,
  "loads.typ.person-sit-or-step": AUTHOR_SAYS,
  "loads.typ.heavy-bench": AUTHOR_SAYS,
  "loads.typ.shelf-storage":
    "a rack starts with 1 kPa a level, less than such shelves are mostly sold for, and says that its loads are to be set",
  "loads.osha.step": "guards keep people away from machines; rails that keep people from falling are not judged",
  "loads.castor.3of4":
    "the frame is solved on its feet as the floor lets them touch; a rolling caster then bears half as much again",
  "loads.impact.drop": NO_IMPACT,
  "loads.impact.sudden": NO_IMPACT,
  "loads.dyn.amp":
    "shaking is kept away from natural frequencies (loads.dyn.avoid); how far it moves a frame is not computed",
};

runFamily("loads", runners, listed, {
  // Uses are not told apart: offices' share stands beside a leaning person, also where goods are stored (there the code has 1).
  "loads.en1990.psi": ["B_psi1", "B_psi2", "E_psi0", "E_psi1", "wind_psi0", "wind_psi1", "wind_psi2"],
  // Screws work by friction: none is judged in bearing, and slip alike whether under service or strength loads.
  "loads.ec9.gammaM": ["M2", "M3ser"],
  // An overhang counts with twice its length at the same share as any span: L/150, stricter than this check's L/100.
  "loads.ex.limit": ["cantilever"],
  "loads.dyn.moving": ["smooth", "shock"],
});
