import { expect, it } from "vitest";
import { largestStress } from "../../src/facts/bar-stress.ts";
import { referenceCheck } from "../references/load-reference.ts";
import { barData } from "../rules/gantry.ts";

it("torsion-and-sections.use.von-mises: √(σ² + 3 τ²) of a pull and a twist along a bar", () => {
  const { inputs, expected } = referenceCheck("torsion-and-sections", "torsion-and-sections.use.von-mises");
  const { profile, section } = barData("40x40-8");
  const MPa = 1e6;
  const of = (value: number) => ({ breaks: Float64Array.of(0, 1), degree: 0, coefficients: Float64Array.of(value) });
  const [sigma, tau] = [Number(inputs.sigma?.value) * MPa, Number(inputs.tau?.value) * MPa];
  const none = of(0);
  const forces = { N: of(sigma * section.A), Vy: none, Vz: none, T: of(tau * section.Wt), My: none, Mz: none };
  const found = largestStress(forces, profile);
  expect(found.equivalent / (Number(expected.value) * MPa)).toBeCloseTo(1, 4);
  expect([found.normal / MPa, found.shear / MPa]).toEqual([expect.closeTo(60, 9), expect.closeTo(25, 9)]);
});
