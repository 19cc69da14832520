import { factOf } from "../../src/facts/fact.ts";
import { gathered, masses } from "../../src/facts/mass.ts";
import { sectionOf } from "../../src/facts/sections.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { PORTAL, portal, testedBracket } from "./portal.ts";
import { frameFrom } from "./table.ts";

/** Distance of the leg axes along y, m. */
const DEPTH = 0.71;
/** Share of a leg's mass that goes with the head of the portal: a leg that turns as one about its foot, 1/3. */
const LEG_SHARE = 1 / 3;
export const MACHINE = 200;
/** Aluminium, Pa. */
const [E, G] = [70e9, 27e9];
/** A bracket is so stiff across its plane, as a share of in it. */
const ACROSS = 0.3;

/** The two portals with a machine of 200 kg in the middle, on the short rails, shaking with this frequency, Hz. */
export function shakenPortal(shakes?: number): FrameFile {
  const file = portal("tested");
  file.masses = [
    {
      id: "machine",
      mass: MACHINE,
      centre: [750, 375, 840],
      on: ["top-2", "top-4"],
      ...(shakes === undefined ? {} : { shakes }),
    },
  ];
  return file;
}

/**
 * The three lowest frequencies by hand, Hz: sway along x and y and turning about the middle. Stiffness of a leg with its
 * corner, k = 1 / (h³/3EI + h² (b/6EI_b + 1/c)) (slope-deflection); turning about the middle, legs at both ends of a rail lean against
 * each other and twist it as well, 1 / (b/2GJ_b + 1/0.3c) a corner more. One mass at the head, single degree of freedom.
 */
export function swaysByHand(stiffness: number): { readonly x: number; readonly y: number; readonly turn: number } {
  const frame = frameFrom(portal("tested"), testedBracket("tested", stiffness));
  const section = (name: string): ReturnType<typeof sectionOf> => {
    const profile = frame.stock.profiles.get(name);
    if (!profile) throw new Error(name);
    return sectionOf(profile);
  };
  const [leg, rail] = [section("40x40-8"), section("40x80-8")];
  const { height: h, span } = PORTAL;
  const corner = (b: number): number => 1 / (b / (6 * E * rail.Iz) + 1 / stiffness);
  const twisted = (b: number): number => 1 / (b / (2 * G * rail.J) + 1 / (ACROSS * stiffness));
  const legs = (corner: number): number => 4 / (h ** 3 / (3 * E * leg.Iz) + h ** 2 / corner);
  const [kx, ky] = [legs(corner(span)), legs(corner(DEPTH))];
  const turning =
    legs(corner(span) + twisted(DEPTH)) * (DEPTH / 2) ** 2 + legs(corner(DEPTH) + twisted(span)) * (span / 2) ** 2;
  const own = factOf(masses, frame).own;
  const of = (start: string): number => gathered(own.filter(({ ref }) => ref.id.startsWith(start))).mass;
  const [rails, posts] = [of("top"), of("leg")];
  const moved = MACHINE + rails + LEG_SHARE * posts;
  // The machine stands in two halves on the short rails, half a span off; rails go by their lengths on both sides.
  const [a, c] = [span / 2, DEPTH / 2];
  const [long, short] = [(rails * span) / (span + DEPTH), (rails * DEPTH) / (span + DEPTH)];
  const inertia =
    MACHINE * a ** 2 +
    long * (c ** 2 + a ** 2 / 3) +
    short * (a ** 2 + c ** 2 / 3) +
    LEG_SHARE * posts * (a ** 2 + c ** 2);
  const hertz = (k: number, m: number): number => Math.sqrt(k / m) / (2 * Math.PI);
  return { x: hertz(kx, moved), y: hertz(ky, moved), turn: hertz(turning, inertia) };
}
