import { GRAVITY } from "../../src/facts/acting.ts";
import { type Bound, PLAIN_BRACKET } from "../../src/facts/joint-stiffness.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { barData } from "./gantry.ts";

/*
 * A leaf of two stiles 40x80 and two rails 40x40, each rail held by one plain bracket at each end, on two hinges of a post that stands on an
 * anchored plate. Drawn in mm, lengths below in m. The hinge line lies at x = 42, y = 0, in the middle of the bars, so that nothing but what is worked
 * out by hand twists them; the stiles' axes lie at x = 84 and 464, the outer face of the leaf at x = 504, and the rails are 300 mm long between the stiles.
 */

const HINGE = 0.042;
const FREE = 0.464;
const OUTER = 0.504;
const L = 0.3;
const REACH = OUTER - HINGE;
/** Between the rails, m. */
const APART = 0.6;
/** N/m: stiffness of a hinge as docs/method/panels.md has it. */
const PIN = 5e7;
/** kg: inside-bracket-40. */
const BRACKET = 0.0365;
/** What docs/method/panels.md takes for the play of a pin, m. */
const PLAY = 0.17e-3;
/** N·m/rad: an anchored plate under a bar of 40 mm pitch is worth three plain brackets. */
const PLATE = 3;

export interface Leaf {
  /** Profile of the post, and the side of it that looks along x. */
  readonly post?: string;
  readonly tall?: string;
  /** Heights of the hinges and of the lower ends of the stiles, mm. */
  readonly hinges?: readonly number[];
  readonly low?: number;
  /** kg, on the free stile half way up. */
  readonly handle?: number;
}

const STILE_TOP = 1000;
const usual = { post: "80x80-8", tall: "+x", hinges: [300, 900], low: 200, handle: 0 } as const;

export function hungLeaf(leaf: Leaf = {}): FrameFile {
  const { post, tall, hinges, low, handle } = { ...usual, ...leaf };
  const stile = (id: string, x: number) => ({
    id,
    profile: "40x80-8",
    tall: "+x",
    from: [x, 0, low],
    to: [x, 0, STILE_TOP],
  });
  const rail = (id: string, z: number) => ({ id, profile: "40x40-8", from: [84, 0, z], to: [464, 0, z] });
  return {
    format: 1,
    title: "a leaf on a post",
    units: "mm-N-kg",
    kits: { corner: [{ connector: "inside-bracket-40", on: "below" }] },
    bars: [
      { id: "post", profile: post, tall, from: [0, 0, 100], to: [0, 0, 1100] },
      stile("hung", 84),
      stile("free", 464),
      rail("lower", 300),
      rail("upper", 900),
    ],
    joints: [{ bars: ["lower", "upper"], by: "corner" }],
    doors: [
      {
        id: "door",
        bars: ["hung", "free", "lower", "upper"],
        axis: "-z",
        swing: [0, 90],
        hinges: hinges.map((z) => ({ part: "hinge-40", bars: ["hung", "post"], at: [42, 0, z] })),
      },
    ],
    stands: [{ part: "caster-75-plate", bars: ["post"], hold: "anchored" }],
    ...(handle > 0 ? { masses: [{ id: "lock", mass: handle, centre: [464, 0, 600], on: ["free"] }] } : {}),
  } as unknown as FrameFile;
}

/** What the outer corner of the leaf comes down by hand, m, by its parts. */
export interface ByHand {
  readonly racking: number;
  readonly post: number;
  readonly play: number;
  readonly all: number;
  /** Weight of the leaf, N, and its centre before the hinge line, m. */
  readonly weight: number;
  readonly centre: number;
}

/**
 * Racking: of the two rails each is a beam that two stiles hold by their corners k without letting its ends turn, with half of the free stile
 * V at its end and its own weight w on it. No end turns: ∫M/EI + M₀/k + M₁/k = 0 gives M₀, the area of the moments about the far end gives the
 * drop; for w = 0 and k = ∞ it is VL³/12EI (slope-deflection). The stiles, bent by moments of one sense at both rails, give way by h/6EI beside 1/k.
 * Post: a cantilever on an elastic plate, bent by the couple H = W x̄ / h of the hinges and by the weight at its arm, and twisted by H where that acts beside it; the leaf tilts with
 * the chord between its hinges and comes down with them (Timoshenko and Gere, beam deflections).
 */
export function dropByHand(bound: Bound, leaf: Leaf = {}, opening: "shut" | "wide open" = "shut"): ByHand {
  const { post, hinges, low, handle } = { ...usual, ...leaf };
  const rail = barData("40x40-8");
  const stile = barData("40x80-8");
  const column = barData(post);
  const corner = PLAIN_BRACKET[bound];
  const k = 1 / (1 / corner + APART / (6 * stile.E * stile.section.Iz));
  const own = stile.weight * (STILE_TOP - low) * 1e-3 + 2 * BRACKET * GRAVITY;
  const held = own + handle * GRAVITY;
  const V = held / 2;
  const w = rail.weight;
  const EI = rail.E * rail.section.Iy;
  const moments = ((V + w * L) * L ** 2) / 2 - (w * L ** 3) / 6;
  const M0 = (moments / EI + (V * L + (w * L ** 2) / 2) / k) / (L / EI + 2 / k);
  const bent = (M0 * L ** 2) / 2 - ((V + w * L) * L ** 3) / 6 + (w * L ** 4) / 24;
  const racking = bent / EI + (M0 * L) / k;

  const W = own + held + 2 * w * L;
  const centre = (own * 0.084 + held * FREE + 2 * w * L * 0.274) / W - HINGE;
  const [z1 = 0, z2 = z1] = hinges.map((z) => z / 1e3);
  const h = z2 - z1;
  // Shut the leaf hangs along x beside the post; open it hangs along y, its hinge line out on x beside the plane the post is bent in.
  const [arm, beside] = opening === "shut" ? [HINGE, 0] : [0, HINGE];
  const EIp = column.E * (opening === "shut" ? column.section.Iz : column.section.Iy);
  const GJ = column.G * column.section.J;
  const foot = (W * (centre + arm)) / (PLATE * corner);
  const H = (W * centre) / h;
  const lower = foot + ((W * (centre + arm)) / EIp) * (z1 - 0.1);
  const chord =
    lower + (H * h ** 2) / (3 * EIp) + (W * arm * h) / (4 * EIp) + (H * beside ** 2) / GJ + (2 * H) / (PIN * h);
  const upper = lower + ((H * h ** 2) / 2 + (W * arm * h) / 2) / EIp;
  const down = chord * REACH + (arm * (lower + upper)) / 2;
  const play = (PLAY * REACH) / h;
  return { racking, post: down, play, all: racking + down + play, weight: W, centre };
}
