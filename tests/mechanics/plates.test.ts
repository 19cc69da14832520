import { describe, expect, it } from "vitest";
import { type PlateField, plateStates, rigidity } from "../../src/mechanics/plates/levy.ts";
import { platePeak, pushLoad, stretchedDeflection, uniformLoad } from "../../src/mechanics/plates/peak.ts";
import { loadReference, type ReferenceCheck, referenceCheck } from "../references/load-reference.ts";

const { checks } = loadReference("plates");
const family = (start: string): readonly ReferenceCheck[] => checks.filter(({ id }) => id.startsWith(start));
const named = (list: readonly ReferenceCheck[]) =>
  list.map((check) => [`${check.id} (${check.source})`, check] as const);

/** A plate of unit rigidity with Poisson's ratio 0.3, as the tables have it. */
const UNIT = { elasticModulus: 12 * (1 - 0.3 ** 2), poisson: 0.3, thickness: 1 };
const held = (span: number, width: number): PlateField => ({ span, width, edges: ["supported", "supported"] });

function within(actual: number, expected: unknown, { tolerance }: ReferenceCheck): void {
  expect(Math.abs(actual / Number(expected) - 1)).toBeLessThanOrEqual(tolerance.value);
}

const ratio = (check: ReferenceCheck, name: string): number => {
  const { value } = check.inputs[name] ?? { value: Number.NaN };
  return value === "inf" ? 12 : Number(value);
};

describe("a plate on four edges", () => {
  it.each(named(family("plates.ss.uniform")))("%s", (_, check) => {
    const field = held(1, ratio(check, "b/a"));
    const { deflection, stress } = platePeak(UNIT, field, uniformLoad(field, 1));
    const { alpha, beta } = check.expected.value as { alpha: number; beta: number };
    within(deflection, alpha, check);
    within(stress / 6, beta, check);
  });

  it.each(named(family("plates.ss.point")))("%s", (_, check) => {
    const field = held(1, ratio(check, "b/a"));
    // A patch a hundredth of the span stands for the point.
    const { deflection } = platePeak(UNIT, field, pushLoad(field, 1, 0.01));
    within(deflection, (check.expected.value as { alpha: number }).alpha, check);
  });

  it.each(named(family("plates.roark.ss")))("%s", (_, check) => {
    const field = held(1, ratio(check, "a/b"));
    const { deflection, stress } = platePeak(UNIT, field, uniformLoad(field, 1));
    const { alpha, beta } = check.expected.value as { alpha: number; beta: number };
    within(deflection * UNIT.elasticModulus, alpha, check);
    within(stress, beta, check);
  });

  it("gives the same whichever pair of edges carries the sines", () => {
    const load = (field: PlateField) => pushLoad(field, 1, 0.1);
    const [one, other] = [held(1, 1.7), held(1.7, 1)];
    const [a, b] = [platePeak(UNIT, one, load(one)), platePeak(UNIT, other, load(other))];
    expect(a.deflection / b.deflection).toBeCloseTo(1, 5);
    expect(a.stress / b.stress).toBeCloseTo(1, 3);
  });
});

const given = (check: ReferenceCheck, name: string): number => Number(check.inputs[name]?.value);

describe("worked plates", () => {
  it("plates.ex.pc-push: polycarbonate 800 x 1000 x 5 mm, 100 N in the middle", () => {
    const check = referenceCheck("plates", "plates.ex.pc-push");
    const plate = { elasticModulus: given(check, "E"), poisson: given(check, "nu"), thickness: given(check, "t") };
    const field = held(given(check, "a"), given(check, "b"));
    const { D, w } = check.expected.value as { D: number; w: number };
    within(rigidity(plate), D, check);
    within(platePeak(plate, field, pushLoad(field, given(check, "P"), 8)).deflection, w, check);
  });

  it("plates.ex.al-shelf: aluminium 400 x 600 x 3 mm under 1 kPa", () => {
    const check = referenceCheck("plates", "plates.ex.al-shelf");
    const plate = { elasticModulus: given(check, "E"), poisson: given(check, "nu"), thickness: given(check, "t") };
    const field = held(given(check, "a"), given(check, "b"));
    const { w, sigma } = check.expected.value as { w: number; sigma: number };
    const peak = platePeak(plate, field, uniformLoad(field, given(check, "q")));
    within(peak.deflection, w, check);
    within(peak.stress, sigma, check);
  });

  it("plates.ex.two-edges: without sideways contraction a plate on two edges is the beam strip P L³ / 48 E I", () => {
    const check = referenceCheck("plates", "plates.ex.two-edges");
    const [L, b, P] = [given(check, "L"), given(check, "b"), given(check, "P")];
    const plate = { elasticModulus: given(check, "E"), poisson: 0, thickness: given(check, "t") };
    const field: PlateField = { span: L, width: b, edges: ["free", "free"] };
    const load = { pressure: P / (b * 2), x: [L / 2 - 1, L / 2 + 1], y: [0, b] } as const;
    const [middle] = plateStates(plate, field, load, [[L / 2, b / 2]]);
    within(middle?.deflection ?? 0, check.expected.value, check);
  });
});

describe("a plate with free edges", () => {
  // Timoshenko and Woinowsky-Krieger, article 48, table 52 (three edges held, uniform load, ν = 0.3; from memory):
  // deflection and moment at the middle of the free edge; b is the side square to it.
  it.each([
    [0.5, 0.0071, 0.06],
    [1, 0.01286, 0.112],
    [2, 0.01507, 0.132],
  ])("held on three, sides %f: table 52", (b, alpha, beta) => {
    const field: PlateField = { span: 1, width: b, edges: ["supported", "free"] };
    const [edge] = plateStates(UNIT, field, uniformLoad(field, 1), [[0.5, b]]);
    expect((edge?.deflection ?? 0) / alpha).toBeCloseTo(1, 1.7);
    expect((edge?.mx ?? 0) / beta).toBeCloseTo(1, 1.7);
  });

  it("held on two, very narrow, is a beam: 5 q L⁴ / 384 E I without sideways contraction", () => {
    const field: PlateField = { span: 1, width: 0.05, edges: ["free", "free"] };
    const beam = { elasticModulus: 12, poisson: 0, thickness: 1 };
    const [middle] = plateStates(beam, field, uniformLoad(field, 1), [[0.5, 0.025]]);
    expect(middle?.deflection).toBeCloseTo(5 / 384, 6);
    expect(middle?.mx).toBeCloseTo(1 / 8, 5);
    expect(middle?.my).toBeCloseTo(0, 6);
  });
});

describe("the stretching of the middle plane", () => {
  it("is nothing for small deflections and cuts large ones down", () => {
    expect(stretchedDeflection(0.01, 1)).toBeCloseTo(0.01, 6);
    // w/t = 3: 3 + 0.272 · 27 = 10.344.
    expect(stretchedDeflection(10.344, 1)).toBeCloseTo(3, 9);
    expect(stretchedDeflection(10.344e-3, 1e-3)).toBeCloseTo(3e-3, 12);
  });
});
