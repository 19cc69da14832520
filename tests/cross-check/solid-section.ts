import type { FrameModel, Member } from "../../src/mechanics/model.ts";

/**
 * A member as a solid bar: the rectangle that has its axial and both bending stiffnesses, of a material without lateral
 * contraction whose shear modulus gives the torsional stiffness.
 */
export interface SolidSection {
  /** Size along local y and z, m. */
  readonly width: number;
  readonly height: number;
  /** Pa. */
  readonly E: number;
  readonly G: number;
}

/**
 * EA = E b h, EIy = E b h³/12 and EIz = E h b³/12 have one solution. A quadratic element across the section can warp by
 * c y z only, and ∫(y²(1+c)² + z²(1−c)²)dA is least at J = 4 Iy Iz/(Iy + Iz): 2 I for a square, which cannot warp at all.
 */
export function solidSection({ EA, EIy, EIz, GJ }: Member): SolidSection {
  const height = Math.sqrt((12 * EIy) / EA);
  const width = Math.sqrt((12 * EIz) / EA);
  const E = EA / (width * height);
  return { width, height, E, G: (GJ * (EIy + EIz) * E) / (4 * EIy * EIz) };
}

/** The frame with the shear stiffness its solid bars have: one quadratic element across carries shear evenly, so GA. */
export function withSolidShear(model: FrameModel): FrameModel {
  const members = model.members.map((member) => {
    const { width, height, G } = solidSection(member);
    return { ...member, GAy: G * width * height, GAz: G * width * height };
  });
  return { ...model, members };
}
