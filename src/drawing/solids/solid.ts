import type { Prism } from "../../geometry/prism.ts";
import type { Vec3 } from "../../geometry/vector.ts";
import type { Ref } from "../../model/ref.ts";

/** What a surface shows: the skin of a part, an open slot, sawn metal with its true outline, a hole or socket. */
export type SurfaceKind = "skin" | "slot" | "sawn" | "recess";

/** A flat piece of what is seen of a solid: outer ring and holes [m], filled by the even-odd rule. */
export interface Surface {
  readonly kind: SurfaceKind;
  readonly normal: Vec3;
  readonly rings: readonly (readonly Vec3[])[];
}

export type SolidKind = "bar" | "connector" | "screw" | "cap" | "panel" | "stand" | "mass";

/** One convex piece of a frame as it is drawn; the surfaces in the order they are painted. */
export interface Solid {
  readonly kind: SolidKind;
  readonly of: Ref;
  /** Bars and joint it belongs to, by id: what has to be there for it to be there. */
  readonly with: readonly string[];
  /** The bar it is fastened to and goes with where a door turns; absent where that is every bar it belongs to. */
  readonly on?: string;
  /** Its envelope: decides what hides what. */
  readonly prism: Prism;
  readonly surfaces: readonly Surface[];
}

/** The faces of the envelope as they are. */
export function skins(prism: Prism): readonly Surface[] {
  return prism.faces.map(({ normal, vertices }) => ({ kind: "skin", normal, rings: [vertices] }));
}
