import type { SectionProperties } from "../../facts/sections.ts";
import type { Material, Profile } from "../../model/stock/stock.ts";
import { showHidden } from "../../model/text/quote.ts";
import { formatQuantity } from "../../model/units/format-quantity.ts";
import type { Quantity } from "../../model/units/quantity.ts";
import type { UnitSystem } from "../../model/units/unit-system.ts";
import { safeJson } from "../json/safe-json.ts";

/** A profile with what was computed from its cross-section. */
export interface SectionSheet {
  readonly profile: Profile;
  readonly material: Material;
  readonly section: SectionProperties;
  readonly units: UnitSystem;
}

/** Outer size in words: along y × along z. */
export function outerSize({ profile, units }: SectionSheet): string {
  return [profile.height, profile.width].map((side) => formatQuantity(side, "length", units)).join(" × ");
}

const slotWords = ({ profile, units }: SectionSheet): string =>
  profile.slots
    .map(({ face, number, opening, closed }) =>
      closed ? `${face}${number} closed` : `${face}${number} ${formatQuantity(opening, "length", units)}`,
    )
    .join(", ");

const inPercent = (share: number): string => `${Number((100 * share).toPrecision(2))} %`;

/** The product of second moments is nothing but rounding, where it is this small beside the greatest of them. */
const ROUNDING = 1e-9;

const product = ({ Iyz, principal }: SectionProperties): number => (Math.abs(Iyz) <= ROUNDING * principal.I1 ? 0 : Iyz);

/** The properties of a section, one a line: name, value, what it is. */
export function* sectionText(sheet: SectionSheet): Generator<string> {
  const { profile, material, section, units } = sheet;
  const print = (value: number, quantity: Quantity): string => formatQuantity(value, quantity, units);
  const { elastic, plastic, torsionBand, principal, centroid, shearCentre } = section;
  const about = profile.about === "" ? "" : `, ${showHidden(profile.about)}`;
  yield `${showHidden(profile.name)}${about}\n${outerSize(sheet)}, ${showHidden(material.name)}; y out of face A, z out of face B\n\n`;
  const rows: readonly (readonly [name: string, value: string, about: string])[] = [
    ["A", print(section.A, "area"), "area"],
    ["mass", print(section.A * material.density, "lineMass"), "of a length"],
    ["Iy", print(section.Iy, "secondMoment"), "bending about y"],
    ["Iz", print(section.Iz, "secondMoment"), "bending about z"],
    ["Iyz", print(product(section), "secondMoment"), "product about y and z"],
    ["I1, I2", `${print(principal.I1, "secondMoment")}, ${print(principal.I2, "secondMoment")}`, "principal"],
    ["Wy", print(Math.min(elastic.zPlus, elastic.zMinus), "sectionModulus"), "elastic, about y"],
    ["Wz", print(Math.min(elastic.yPlus, elastic.yMinus), "sectionModulus"), "elastic, about z"],
    ["Zy, Zz", `${print(plastic.y, "sectionModulus")}, ${print(plastic.z, "sectionModulus")}`, "plastic"],
    [
      "J",
      print(section.J, "secondMoment"),
      `torsion; right within ±${inPercent((torsionBand.high - torsionBand.low) / 2 / section.J)}`,
    ],
    ["Wt", print(section.Wt, "sectionModulus"), "torsion, greatest shear stress = torque / Wt"],
    ["Avy, Avz", `${print(section.Avy, "area")}, ${print(section.Avz, "area")}`, "in shear along y, along z"],
    ["centroid", `${print(centroid.y, "length")}, ${print(centroid.z, "length")}`, "from the middle of the envelope"],
    ["shear centre", `${print(shearCentre.y, "length")}, ${print(shearCentre.z, "length")}`, "likewise"],
    ["proof", print(material.proof, "stress"), showHidden(material.source)],
    ["slots", slotWords(sheet), `size ${showHidden(profile.slotSize)}`],
    ["lips", print(profile.lipRating, "force"), `pull of one nut; ${showHidden(profile.lipSource)}`],
  ];
  const name = Math.max(...rows.map(([head]) => head.length));
  const value = Math.max(...rows.map(([head, amount]) => (head === "slots" ? 0 : amount.length)));
  for (const [head, amount, note] of rows) yield `  ${head.padEnd(name)}  ${amount.padEnd(value)}  ${note}\n`;
}

/** The same as one JSON document in SI: m², m⁴, m³, m⁶, kg/m, Pa, N. */
export function* sectionJson({ profile, material, section }: SectionSheet): Generator<string> {
  const { name, about, height, width, slots, bores, slotSize, lipRating } = profile;
  yield safeJson({
    formatVersion: "1.0",
    profile: { name, about, height, width, slotSize, lipRating, slots, bores },
    material,
    massPerLength: section.A * material.density,
    section: {
      A: section.A,
      centroid: section.centroid,
      Iy: section.Iy,
      Iz: section.Iz,
      Iyz: section.Iyz,
      principal: section.principal,
      elastic: section.elastic,
      plastic: section.plastic,
      Avy: section.Avy,
      Avz: section.Avz,
      shearCentre: section.shearCentre,
      J: section.J,
      torsionBand: section.torsionBand,
      Wt: section.Wt,
      Iw: section.Iw,
    },
  });
  yield "\n";
}
