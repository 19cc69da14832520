import { describe, expect, it } from "vitest";
import { bucklingUse, columnOf } from "../../src/facts/buckling-use.ts";
import { effectiveShare } from "../../src/facts/effective-share.ts";
import { sectionOf } from "../../src/facts/sections.ts";
import { bucklingReduction } from "../../src/mechanics/design/flexural-buckling.ts";
import { criticalMoment, lateralReduction } from "../../src/mechanics/design/lateral-torsional.ts";
import type { InternalForces } from "../../src/mechanics/member/fields.ts";
import { builtinStock } from "../../src/model/stock/builtin-stock.ts";

const stock = builtinStock();

function bar(name: string) {
  const profile = stock.profiles.get(name);
  const material = profile && stock.materials.get(profile.material);
  if (!profile || !material) throw new Error(name);
  return { profile, material, section: sectionOf(profile) };
}

/** The same all along `length` m. */
function uniform(length: number, values: Partial<Record<keyof InternalForces, number>>): InternalForces {
  const of = (value = 0) => ({ breaks: Float64Array.of(0, length), degree: 0, coefficients: Float64Array.of(value) });
  const { N, Vy, Vz, T, My, Mz } = values;
  return { N: of(N), Vy: of(Vy), Vz: of(Vz), T: of(T), My: of(My), Mz: of(Mz) };
}

const whole = (length: number) => [{ from: 0, to: length, length }];

describe("use of a bar before it buckles", () => {
  it("is N over χ A fo/γ of the axis that is held less (EN 1999-1-1, 6.3.1.2; χ is checked against the references apart)", () => {
    const { profile, material, section } = bar("40x80-8");
    const column = columnOf(
      profile,
      material,
      {
        y: whole(2),
        z: [
          { from: 0, to: 1, length: 1 },
          { from: 1, to: 2, length: 1 },
        ],
      },
      1.1,
    );
    const along = (I: number, L: number): number => {
      const lambda = Math.sqrt((section.A * 150e6 * L ** 2) / (Math.PI ** 2 * 70e9 * I));
      return 10_000 / ((bucklingReduction(lambda, "A") * section.A * 150e6) / 1.1);
    };
    const found = bucklingUse(uniform(2, { N: -10_000 }), column);
    expect(found?.use).toBeCloseTo(Math.max(along(section.Iz, 2), along(section.Iy, 1)), 9);
    expect(found?.compression).toBe(10_000);
  });

  it("has nothing to say of a bar that is pulled, or hardly pressed and not tall", () => {
    const { profile, material } = bar("40x40-8");
    const column = columnOf(profile, material, { y: whole(1), z: whole(1) }, 1.1);
    expect(bucklingUse(uniform(1, { N: 5000, My: 400 }), column)).toBeUndefined();
    expect(bucklingUse(uniform(1, { N: -100, My: 400 }), column)).toBeUndefined();
  });

  it("grows moments by 1/(1 − N/Ncr), or by the frame's own growth where that is more", () => {
    const { profile, material, section } = bar("40x40-8");
    const critical = (Math.PI ** 2 * 70e9 * section.Iy) / 1.5 ** 2;
    const column = columnOf(profile, material, { y: whole(1.5), z: whole(1.5) }, 1.1);
    const at = (My: number, sway?: number) =>
      bucklingUse(uniform(1.5, { N: -critical / 4, My }), column, sway)?.use ?? 0;
    const resists = (section.elastic.zPlus * 150e6) / 1.1;
    expect(at(100) - at(0)).toBeCloseTo(((4 / 3) * 100) / resists, 9);
    expect(at(100, 2) - at(0, 2)).toBeCloseTo((2 * 100) / resists, 9);
  });

  it("counts tilting of a tall bar: 4 m of 40x160-8 bent about its strong axis (EN 1999-1-1, 6.3.2)", () => {
    const { profile, material, section } = bar("40x160-8");
    const Mcr = criticalMoment(70e9 * section.Iy, 27e9 * section.J, 70e9 * section.Iw, 4);
    const chi = lateralReduction(Math.sqrt((section.elastic.yPlus * 150e6) / Mcr));
    expect(chi).toBeLessThan(0.9);
    const column = columnOf(profile, material, { y: whole(4), z: whole(4) }, 1.1);
    expect(bucklingUse(uniform(4, { Mz: 1000 }), column)?.use).toBeCloseTo(
      1000 / ((chi * section.elastic.yPlus * 150e6) / 1.1),
      9,
    );
    const held = columnOf(
      profile,
      material,
      { y: whole(4), z: [0, 2].map((from) => ({ from, to: from + 2, length: 2 })) },
      1.1,
    );
    expect(bucklingUse(uniform(4, { Mz: 1000 }), held)?.use).toBeLessThan(
      bucklingUse(uniform(4, { Mz: 1000 }), column)?.use ?? 0,
    );
  });
});

it("every built-in profile counts whole: lips and skins are stocky enough for their alloy", () => {
  for (const profile of stock.profiles.values()) {
    const material = stock.materials.get(profile.material);
    expect(material && effectiveShare(profile, material), profile.name).toBe(1);
  }
});
