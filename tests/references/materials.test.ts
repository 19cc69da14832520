import { memberFactor } from "../../src/criteria/member-factor.ts";
import { PROOF } from "../../src/facts/torque-limit.ts";
import { prepareFrame } from "../../src/mechanics/frame.ts";
import { valueAt } from "../../src/mechanics/piecewise.ts";
import { memberForces, solvedState } from "../../src/mechanics/results.ts";
import { solveFrame } from "../../src/mechanics/statics/solve.ts";
import { builtinStock } from "../../src/model/stock/builtin-stock.ts";
import type { Material } from "../../src/model/stock/stock.ts";
import { readQuantity } from "../../src/model/units/read-quantity.ts";
import { GLOBAL } from "../mechanics/line-beam.ts";
import { type Runner, runFamily } from "../mechanics/reference-run.ts";
import type { ReferenceCheck } from "./load-reference.ts";

const MPA = 1e6;
const KSI = 6894757.293168;
const MM = 1e-3;

/** The bars that the thermal examples are about are of the material that most of the stock is made of. */
const USUAL = "6060-T66";

function material(name: string): Material {
  const found = builtinStock().materials.get(name);
  if (found === undefined) throw new Error(`no material ${name} in stock`);
  return found;
}

/** In a unit, to nine digits: a number of a table has lost no more on its way to SI and back. */
const inUnit = (si: number, unit: number): number => Number((si / unit).toPrecision(9));

const strengths: Runner = ({ inputs }) => {
  const { proof, ultimate, bucklingClass } = material(String(inputs.alloy?.value));
  return { fo: inUnit(proof, MPA), fu: inUnit(ultimate, MPA), buckling_class: bucklingClass };
};

function proofOf(name: string): number {
  const found = PROOF.get(name);
  if (found === undefined) throw new Error(`no proof stress of ${name}`);
  return found;
}

const propertyClass = ({ inputs }: ReferenceCheck): string => String(inputs.class?.value);
const proofStress: Runner = (check) => ({ Sp: inUnit(proofOf(propertyClass(check)), MPA) });

/** A bar of 40 x 40 mm solid, warmed evenly; its far end is free to move along or held. */
function warmed(length: number, warming: number, held: boolean) {
  const { elasticModulus: E, shearModulus: G, expansion } = material(USUAL);
  const A = 0.04 ** 2;
  const I = 0.04 ** 4 / 12;
  const model = {
    nodes: [[0, 0, 0] as const, [length, 0, 0] as const],
    members: [
      {
        from: 0,
        to: 1,
        axes: GLOBAL,
        EA: E * A,
        EIy: E * I,
        EIz: E * I,
        GJ: 1.7 * G * I,
        GAy: Infinity,
        GAz: Infinity,
        massPerLength: 0,
      },
    ],
    supports: [
      { node: 0, holds: ["fixed", "fixed", "fixed", "fixed", "fixed", "fixed"] as const },
      { node: 1, holds: [held ? "fixed" : "free", "fixed", "fixed", "fixed", "fixed", "fixed"] as const },
    ],
  };
  const strain = { kind: "strain", member: 0, axial: expansion * warming } as const;
  const solution = solveFrame(prepareFrame(model), [{ members: [strain] }], [[1]]);
  return {
    growth: solvedState(solution, 0).displacements[6] ?? Number.NaN,
    stress: valueAt(memberForces(solution, 0, 0).N, length / 2) / A,
  };
}

const runners: Readonly<Record<string, Runner>> = {
  "materials.en.6060-T6": strengths,
  "materials.en.6060-T66.ep.t3-25": strengths,
  "materials.en.6063-T66.ep.t0-10": strengths,
  "materials.en.6005A-T6.hollow.t5-15": strengths,
  "materials.en.constants": () => {
    const { elasticModulus, shearModulus, density, expansion } = material(USUAL);
    return {
      E: inUnit(elasticModulus, MPA),
      G: inUnit(shearModulus, MPA),
      density_kg_m3: density,
      alpha_per_K: expansion,
    };
  },
  "materials.astm.6105-T5": ({ inputs }) => {
    const { proof, ultimate } = material(String(inputs.alloy?.value));
    return { Ftu: inUnit(ultimate, KSI), Fty: inUnit(proof, KSI) };
  },
  "materials.astm.E": () => {
    const { elasticModulus, shearModulus } = material("6105-T5");
    return { E: inUnit(elasticModulus, KSI), G: inUnit(shearModulus, KSI) };
  },
  "materials.conv.6061": (_, get) => {
    const read = readQuantity(`${get("Fty")} ksi`, "stress", "in-lbf-lb");
    return "si" in read ? read.si / MPA : Number.NaN;
  },
  "materials.steel.8.8.le16": proofStress,
  "materials.steel.10.9.all": proofStress,
  "materials.steel.12.9.all": proofStress,
  "materials.steel.A2-70": (check) => ({ Rp02: inUnit(proofOf(propertyClass(check)), MPA) }),
  // Held in whole MPa: 85 ksi are 586.05.
  "materials.steel.SAE-J429-grade-5": () => ({ Sp: Math.round((10 * proofOf("grade 5")) / KSI) / 10 }),
  "materials.ex.design-stress-6060T66": (_, get) => get("fo") / Number(memberFactor.standard),
  "materials.ex.mass-per-metre": (_, get) => get("A") * MM ** 2 * material(USUAL).density,
  "materials.ex.thermal-2m": (_, get) => warmed(get("L") * MM, get("dT"), false).growth / MM,
  "materials.ex.restrained-thermal": (_, get) => -warmed(1, get("dT"), true).stress / MPA,
};

const NO_SUCH_ALLOY =
  "stock holds no such alloy and temper, and nothing is looked up by the name of an alloy; a team adds what it uses";
const OTHER_WALL = "stock holds this alloy with the strengths of another range of wall thickness, which are lower";
const listed: Readonly<Record<string, string>> = {
  "materials.en.6060-T66.ep.t0-3": OTHER_WALL,
  "materials.en.6005A-T6.hollow.t0-5": OTHER_WALL,
  "materials.en.6005A-T6.open.t0-5": OTHER_WALL,
  "materials.en.6005A-T6.open.t5-10": OTHER_WALL,
  "materials.en.6063-T66.ep.t10-25":
    "stock holds the strengths for walls up to 10 mm, and says so; T-slotted profiles have no thicker walls",
  "materials.en.6060-T5.ep.t0-5": NO_SUCH_ALLOY,
  "materials.en.6060-T5.ep.t5-25": NO_SUCH_ALLOY,
  "materials.en.6063-T5.ep.t0-3": NO_SUCH_ALLOY,
  "materials.en.6063-T5.ep.t3-25": NO_SUCH_ALLOY,
  "materials.en.6063-T6.ep.t0-25": NO_SUCH_ALLOY,
  "materials.en.6061-T6.ep.t0-25": NO_SUCH_ALLOY,
  "materials.en.6082-T6.ep.t0-5": NO_SUCH_ALLOY,
  "materials.en.6082-T6.ep.t5-15": NO_SUCH_ALLOY,
  "materials.astm.6061-T6": NO_SUCH_ALLOY,
  "materials.astm.6063-T6": NO_SUCH_ALLOY,
  "materials.astm.6063-T5": NO_SUCH_ALLOY,
  "materials.astm.6005A-T61": NO_SUCH_ALLOY,
  "materials.en.G-consistency": "stock holds the shear modulus of the code, 27000 MPa, which is this value rounded",
  "materials.steel.8.8.gt16":
    "screws in stock end at M12; a thicker one that a team adds is judged by the proof stress up to 16 mm, which is lower",
  "materials.steel.A2-50":
    "no proof stress is held for this class: a screw of it is limited by its stated torque alone",
  "materials.steel.A4-80":
    "no proof stress is held for this class: a screw of it is limited by its stated torque alone",
  "materials.steel.SAE-J429-grade-8":
    "no proof stress is held for this grade: a screw of it is limited by its stated torque alone",
  "materials.steel.constants": "no bar and no sheet in stock is of steel; connectors carry a mass and a stiffness each",
};

const BARS_DO_NOT_STRETCH_THAT_FAR = ["A_min_pct"];
const ONLY_PROOF_LIMITS_TORQUE = ["Rm", "Rp02"];
runFamily("materials", runners, listed, {
  "materials.en.6060-T66.ep.t3-25": BARS_DO_NOT_STRETCH_THAT_FAR,
  "materials.en.6063-T66.ep.t0-10": BARS_DO_NOT_STRETCH_THAT_FAR,
  "materials.en.6005A-T6.hollow.t5-15": BARS_DO_NOT_STRETCH_THAT_FAR,
  "materials.en.constants": ["nu"], // bars are given E and G
  "materials.steel.8.8.le16": ONLY_PROOF_LIMITS_TORQUE,
  "materials.steel.10.9.all": ONLY_PROOF_LIMITS_TORQUE,
  "materials.steel.12.9.all": ONLY_PROOF_LIMITS_TORQUE,
  "materials.steel.A2-70": ["Rm"],
  "materials.steel.SAE-J429-grade-5": ["Sy", "Sut"],
});
