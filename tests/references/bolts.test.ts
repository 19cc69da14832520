import { describe, expect, test } from "vitest";
import { jointFriction } from "../../src/criteria/joint-friction.ts";
import { SCATTER, TORQUE_COEFFICIENT } from "../../src/facts/clamping.ts";
import { LEAST_COEFFICIENT, PROOF } from "../../src/facts/torque-limit.ts";
import { bucklingResistance } from "../../src/mechanics/design/flexural-buckling.ts";
import { stressArea } from "../../src/mechanics/fasteners/preload.ts";
import { scatterWithin } from "../../src/mechanics/fasteners/slip-fractile.ts";
import { builtinStock } from "../../src/model/stock/builtin-stock.ts";
import { rule as nearEdge } from "../../src/rules/hole.near-edge.ts";
import { type ReferenceCheck, referenceCheck } from "./load-reference.ts";

/*
 * Reference values of the family bolts that are constants of the tool, or that no test of a single part holds.
 * Which test holds which value, and why some are not held at all: bolts-register.test.ts.
 */

const MM = 1e-3;
const MPA = 1e6;
const INCH = 0.0254;
const POUND_FORCE = 4.4482216152605;
const stock = builtinStock();

const numbersOf = ({ expected }: ReferenceCheck): Readonly<Record<string, number>> =>
  expected.value as Readonly<Record<string, number>>;

/** Compares by the check's own tolerance. */
function agree(check: ReferenceCheck, actual: number, expected: unknown): void {
  const { kind, value } = check.tolerance;
  const allowed = kind === "rel" ? value * Math.abs(Number(expected)) : value;
  expect(Math.abs(actual - Number(expected)), `${check.id}: ${actual} against ${expected}`).toBeLessThanOrEqual(
    allowed + 1e-9,
  );
}

function proofOf(name: string): number {
  const found = PROOF.get(name);
  if (found === undefined) throw new Error(`no proof stress of ${name}`);
  return found;
}

describe("proof loads are those of the tables: stress area times proof stress", () => {
  test.each(["M3", "M4", "M5", "M6", "M8", "M10", "M12"])(
    "bolts.metric.%s, classes 8.8 and 10.9 (ISO 898-1)",
    (size) => {
      const check = referenceCheck("bolts", `bolts.metric.${size}`);
      const { pitch = Number.NaN, ...loads } = numbersOf(check);
      const area = stressArea(Number(size.slice(1)) * MM, pitch * MM, "metric");
      for (const name of ["8.8", "10.9"]) agree(check, proofOf(name) * area, loads[`proof_${name}`]);
    },
  );
  test.each(["1/4-20", "5/16-18", "3/8-16", "7/16-14", "1/2-13"])("bolts.unc.%s, grade 5 (SAE J429)", (size) => {
    const check = referenceCheck("bolts", `bolts.unc.${size}`);
    const { D = Number.NaN, proof_g5 } = numbersOf(check);
    const area = stressArea(D * INCH, INCH / Number(size.split("-")[1]), "unified");
    agree(check, (proofOf("grade 5") * area) / POUND_FORCE, proof_g5);
  });
});

describe("what is taken of a screw and its joint when nobody says more", () => {
  test.each([
    ["bolts.K.zinc-plated", "as delivered", TORQUE_COEFFICIENT],
    ["bolts.K.lubricated", "well oiled, for the highest preload", LEAST_COEFFICIENT],
  ])("%s: torque coefficient of a screw %s (Shigley, Table 8-15)", (id, _, coefficient) => {
    const check = referenceCheck("bolts", id);
    agree(check, coefficient, check.expected.value);
  });
  test("bolts.mu.design: middle and range of the friction in a joint (rule of thumb)", () => {
    const { min = 0, typical, max = 0 } = numbersOf(referenceCheck("bolts", "bolts.mu.design"));
    expect(Number(jointFriction.standard)).toBe(typical);
    expect(SCATTER.friction.deviation).toBeCloseTo(scatterWithin(1, min, max).deviation, 12);
  });
  test("bolts.swing: a hex key that is not turned over needs 60° (geometry of a hexagon)", () => {
    const { hex_key = Number.NaN } = numbersOf(referenceCheck("bolts", "bolts.swing"));
    const keys = [...stock.tools.values()].filter(({ kind }) => kind === "hex-key");
    expect(keys.length).toBeGreaterThan(0);
    for (const { swing, name } of keys) expect((swing * 180) / Math.PI, name).toBeCloseTo(hex_key, 9);
  });
});

describe("holes", () => {
  /** Diameters that a screw passes through, by the connector it belongs to. */
  const diameters = [...stock.connectors.values()].flatMap((part): { screw: string; diameter: number }[] => {
    const own = (diameter: number) => ({ screw: part.screw, diameter });
    if (part.kind === "bracket") return [...part.legs.a.holes, ...part.legs.b.holes].map((hole) => own(hole.diameter));
    if (part.kind === "plate" || part.kind === "pivot" || part.kind === "hinge")
      return part.holes.map((hole) => own(hole.diameter));
    return part.kind === "end-screw" && part.head === "on-far-face" ? [own(part.accessHole)] : [];
  });
  test.each(["M5", "M6", "M8", "M10"])(
    "bolts.hole.%s: those in connectors are of the medium series (ISO 273)",
    (size) => {
      const check = referenceCheck("bolts", `bolts.hole.${size}`);
      const own = diameters.filter(({ screw }) => stock.screws.get(screw)?.thread === size);
      expect(own.length).toBeGreaterThan(0);
      for (const { diameter } of own) agree(check, diameter / MM, numbersOf(check).medium);
    },
  );
  test("bolts.en.edge, bolts.en.edge-M8: least distance from an edge (EN 1999-1-1 Table 8.2)", () => {
    const least = Number(nearEdge.criteria.hole?.standard);
    const edge = referenceCheck("bolts", "bolts.en.edge");
    agree(edge, least, numbersOf(edge).e1);
    const m8 = referenceCheck("bolts", "bolts.en.edge-M8");
    agree(m8, least * Number(m8.inputs.d0?.value), numbersOf(m8).e1);
  });
});

test("bolts.bear.end-on: a bar seated end on bears far more than a screw holds (EN 1999-1-1, 6.2.4)", () => {
  const check = referenceCheck("bolts", "bolts.bear.end-on");
  const input = (name: string): number => Number(check.inputs[name]?.value);
  // A seat is short: nothing is lost to buckling.
  const squash = bucklingResistance(1, input("A") * MM ** 2, input("fo") * MPA, input("gammaM1"));
  agree(check, squash, numbersOf(check).squash);
  agree(check, squash / input("slip"), numbersOf(check).ratio);
});
