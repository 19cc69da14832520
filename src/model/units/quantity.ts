/** What a number measures. Two quantities of one dimension differ where the trade writes them in different units. */
export type Quantity =
  | "length" // m
  | "area" // m²
  | "sectionModulus" // m³
  | "secondMoment" // m⁴, also the torsion constant
  | "angle" // rad
  | "force" // N
  | "moment" // N·m
  | "stress" // Pa, inside material
  | "pressure" // Pa, on a surface
  | "lineLoad" // N/m
  | "mass" // kg
  | "lineMass" // kg/m
  | "massDensity" // kg/m³
  | "frequency" // Hz
  | "velocity" // m/s
  | "temperature" // K
  | "stiffness" // N/m
  | "rotationalStiffness" // N·m/rad
  | "ratio" // 1
  | "count"; // 1

/** A number in the SI unit of its quantity (m, N, kg, s, rad, Pa, K). Minted by `si` only. */
export type Si<Q extends Quantity> = number & { readonly si: Q };

/** Says that a number is in the SI unit of the quantity; changes nothing. */
export function si<Q extends Quantity>(value: number, _quantity: Q): Si<Q> {
  return value as Si<Q>;
}
