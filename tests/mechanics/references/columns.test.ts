import {
  BUCKLING_CURVES,
  bucklingReduction,
  bucklingResistance,
  criticalForce,
  lengthFactor,
  relativeSlenderness,
  slendernessOfProof,
} from "../../../src/mechanics/design/flexural-buckling.ts";
import { hollowMemberUse, hollowSectionUse, linearUse } from "../../../src/mechanics/design/interaction.ts";
import { internalPartLimits, thicknessReduction } from "../../../src/mechanics/design/local-buckling.ts";
import { amplifier, secantStress, swayImperfection } from "../../../src/mechanics/design/second-order.ts";
import { prepareFrame } from "../../../src/mechanics/frame.ts";
import type { FrameModel, LoadCase } from "../../../src/mechanics/model.ts";
import { largest, valueAt } from "../../../src/mechanics/piecewise.ts";
import { memberDeflections, memberForces } from "../../../src/mechanics/results.ts";
import { bucklingModes } from "../../../src/mechanics/stability/buckling.ts";
import { solveFrame } from "../../../src/mechanics/statics/solve.ts";
import { loadReference } from "../../references/load-reference.ts";
import type { End } from "../line-beam.ts";
import { down, lineBeamModel } from "../line-beam.ts";
import type { Runner } from "../reference-run.ts";
import { runFamily } from "../reference-run.ts";
import type { Portal } from "./portal-runners.ts";
import { portalModel } from "./portal-runners.ts";

type Get = (name: string) => number;

/** The first critical factor of a model under one load case. */
function critical(model: FrameModel, load: LoadCase): number {
  const found = bucklingModes(solveFrame(prepareFrame(model), [load], [[1]]), 0, 1);
  if (found.kind !== "modes") throw new Error("the column is a mechanism");
  return found.modes[0]?.lambda ?? Number.NaN;
}

/** Critical force of a column of length L along x. */
function columnForce(EI: number, L: number, ends: readonly [End, End], guided = false): number {
  const model = lineBeamModel({
    EI,
    nodes: [
      [0, ends[0]],
      [L, ends[1]],
    ],
  });
  const supports = model.supports.map((s, i) =>
    guided && i === 1 ? { ...s, holds: ["free", "free", "fixed", "fixed", "fixed", "fixed"] as const } : s,
  );
  return critical({ ...model, supports }, { nodes: [{ node: 1, force: [-1, 0, 0] }] });
}

const K = (ends: readonly [End, End], guided = false) => lengthFactor(1, columnForce(1, 1, ends, guided), 1);

/** Columns and beam so that (Ib/b)/(Ic/h) = g, with h = b = EIc = 1 and a unit load on both columns. */
function portal(g: number, feet: Portal["feet"], braced: boolean) {
  const model = portalModel({ h: 1, b: 1, column: 1, beam: g, feet, braced });
  const P_h2_EI = critical(model, { nodes: [1, 2].map((node) => ({ node, force: [0, -1, 0] as const })) });
  return { K: lengthFactor(1, P_h2_EI, 1), P_h2_EI };
}

const chi: Runner = (_, get) => ({
  A: bucklingReduction(get("lambda_bar"), "A"),
  B: bucklingReduction(get("lambda_bar"), "B"),
});

/** A post by the standard's chain, its critical force from the frame's own buckling solution. */
const post: Runner = (_, get) => {
  const Ncr = columnForce(get("E") * get("I"), get("K") * get("L"), ["pinned", "pinned"]);
  const lambda_bar = relativeSlenderness(get("A"), get("fo"), Ncr);
  const reduction = bucklingReduction(lambda_bar, "A");
  return { Ncr, lambda_bar, chi: reduction, NbRd: bucklingResistance(reduction, get("A"), get("fo"), get("gammaM1")) };
};

/** First-order moment and deflection, then M0 + P δ with δ amplified by the frame's own critical factor. */
function amplified(model: FrameModel, first: { readonly M: number; readonly d: number }, P: number) {
  if (P === 0) return first;
  const factor = critical(model, { nodes: [{ node: 1, force: [-P, 0, 0] }] });
  const d = first.d * amplifier(factor);
  return { M: first.M + P * d, d };
}

const uniformColumn: Runner = (_, get) => {
  const model = lineBeamModel({
    EI: get("E") * get("I"),
    nodes: [
      [0, "pinned"],
      [get("L"), "pinned"],
    ],
  });
  const s = solveFrame(prepareFrame(model), [{ members: [down(0, get("L"), get("w"))] }], [[1]]);
  const M = Math.abs(largest(memberForces(s, 0, 0).Mz).value);
  return amplified(model, { M, d: Math.abs(largest(memberDeflections(s, 0, 0).y).value) }, get("P"));
};

const flagpole: Runner = (_, get) => {
  const model = lineBeamModel({
    EI: get("E") * get("I"),
    nodes: [
      [0, "fixed"],
      [get("L"), "free"],
    ],
  });
  const s = solveFrame(prepareFrame(model), [{ nodes: [{ node: 1, force: [0, -get("H"), 0] }] }], [[1]]);
  const M = Math.abs(valueAt(memberForces(s, 0, 0).Mz, 0));
  return amplified(model, { M, d: Math.abs(valueAt(memberDeflections(s, 0, 0).y, get("L"))) }, get("P"));
};

const acting = (get: Get) => ({ N: get("N"), My: get("My"), Mz: get("Mz") });

const runners: Record<string, Runner> = {
  "columns.ec9.parameters": () => ({
    alpha_A: BUCKLING_CURVES.A.alpha,
    lambda0_A: BUCKLING_CURVES.A.plateau,
    alpha_B: BUCKLING_CURVES.B.alpha,
    lambda0_B: BUCKLING_CURVES.B.plateau,
  }),
  "columns.K.pinned-pinned": () => K(["pinned", "pinned"]),
  "columns.K.fixed-pinned": () => K(["fixed", "pinned"]),
  "columns.K.fixed-fixed": () => K(["fixed", "fixed"]),
  "columns.K.fixed-free": () => K(["fixed", "free"]),
  "columns.K.fixed-guided": () => K(["fixed", "free"], true),
  "columns.euler.s40": (_, get) => {
    const byFrame = columnForce(get("E") * get("I"), get("L"), ["pinned", "pinned"]);
    const byFormula = criticalForce(get("E") * get("I"), get("K") * get("L"));
    return Math.abs(byFrame / byFormula - 1) < 1e-4 ? byFrame : Number.NaN;
  },
  "columns.slenderness.lambda1": (_, get) => slendernessOfProof(get("E"), get("fo")),
  "columns.ex.talat51": (_, get) => {
    const [b, t, fo] = [get("b"), get("t"), get("fo")];
    const beta = (b - 2 * t) / t;
    const rho_c = thicknessReduction(beta, fo);
    const Aeff = rho_c * (b ** 2 - (b - 2 * t) ** 2);
    const I = (b ** 4 - (b - 2 * t) ** 4) / 12;
    const Ncr = columnForce(get("E") * I, get("L"), ["pinned", "pinned"]);
    const lambda_bar = relativeSlenderness(Aeff, fo, Ncr);
    const reduction = bucklingReduction(lambda_bar, "A");
    return {
      beta,
      rho_c,
      Aeff,
      I,
      lambda_bar,
      chi: reduction,
      NbRd: bucklingResistance(reduction, Aeff, fo, get("gammaM1")),
    };
  },
  "columns.ec9.class-limits-A": (_, get) => ({ ...internalPartLimits(get("fo")) }),
  "columns.ex.s40-1500": post,
  "columns.ex.s40-1500-sway": post,
  "columns.pdelta.aisc1.P0": uniformColumn,
  "columns.pdelta.aisc1.P150": uniformColumn,
  "columns.pdelta.aisc1.P450": uniformColumn,
  "columns.pdelta.aisc2.P0": flagpole,
  "columns.pdelta.aisc2.P100": flagpole,
  "columns.amp.approx": (_, get) => amplifier(get("Pcr") / get("P")),
  "columns.ecc.secant": (_, get) => {
    const names = { A: get("A"), I: get("I"), E: get("E"), L: get("L"), e: get("e"), c: get("c") };
    return secantStress({ N: get("P"), ...names });
  },
  "columns.inter.hollow": (_, get) =>
    hollowMemberUse(
      acting(get),
      { N: get("NRd"), My: get("MyRd"), Mz: get("MzRd") },
      get("chi_min"),
      get("omega_x"),
      get("omega_0"),
    ),
  "columns.inter.section-hollow": (_, get) =>
    hollowSectionUse(acting(get), { N: get("NRd"), My: get("MyRd"), Mz: get("MzRd") }),
  "columns.inter.linear": (_, get) => linearUse(acting(get), { N: get("NbRd"), My: get("MyRd"), Mz: get("MzRd") }),
  "columns.imp.sway": (_, get) => swayImperfection(get("h"), get("m"), get("phi0")),
};

for (const { id } of loadReference("columns").checks) {
  if (id.startsWith("columns.chi.")) runners[id] = chi;
  const named = /^columns\.portal\.(sway|braced)-(pinned|fixed)\./.exec(id);
  if (named) {
    const feet = named[2] === "fixed" ? "fixed" : "pinned";
    runners[id] = (_, get) => portal(get("g"), feet, named[1] === "braced");
  }
}

runFamily("columns", runners, {
  "columns.pdelta.aisc2.P200":
    "critical factor 1.5: amplification is used from 3 up only, frames below are rejected, and no second-order solution is offered",
});
