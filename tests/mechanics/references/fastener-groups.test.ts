import { elasticGroup, tiltingPulls } from "../../../src/mechanics/fasteners/elastic-group.ts";
import { frictionRadius, slipOfGroup } from "../../../src/mechanics/fasteners/slip-group.ts";
import { loadReference } from "../../references/load-reference.ts";
import type { Runner } from "../reference-run.ts";
import { runFamily } from "../reference-run.ts";

type Get = (name: string) => number;

/** Four fasteners at (±x, ±y), the load along y at distance e along x. */
function four(x: number, y: number, P: number, e: number) {
  const fasteners = [
    [x, y],
    [x, -y],
    [-x, y],
    [-x, -y],
  ].map(([a = 0, b = 0]) => ({ at: [a, b] as const }));
  const { forces, moment } = elasticGroup(fasteners, { force: [0, P], at: [e, 0] });
  const sizes = forces.map(([fx, fy]) => Math.hypot(fx, fy));
  const central = elasticGroup(fasteners, { force: [0, P], at: [0, 0] });
  const turning = elasticGroup(fasteners, { force: [0, 0], at: [0, 0], moment });
  return {
    primary: Math.hypot(...(central.forces[0] ?? [Number.NaN])),
    secondary: Math.hypot(...(turning.forces[0] ?? [Number.NaN])),
    F_near: Math.max(...sizes),
    F_far: Math.min(...sizes),
    max: Math.max(...sizes),
  };
}

/** Torque at which a group of equal fasteners slips under a pure moment of one unit. */
const slipTorque = (places: readonly (readonly [number, number])[], slip: number, torque = 0): number => {
  const fasteners = places.map((at) => ({ at, slip, torque }));
  const { lower, upper } = slipOfGroup(fasteners, { force: [0, 0], at: [0, 0], moment: 1 });
  return upper - lower < 1e-6 * upper ? upper : Number.NaN;
};

/** Share of its strength that a bolt of the handbook's coefficients bears where it is bent most: (1 − e^(−10 × 0.34))^0.55. */
const AT_FULL_SLIP = (1 - Math.exp(-3.4)) ** 0.55;

const NEWTON_METRE = 1000; // N.mm

const runners: Record<string, Runner> = {
  "bolts.group.shigley87": (_, get) => four(get("xs"), get("ys"), get("P"), get("e")),
  "bolts.group.bhandari73": (_, get) => four(get("w") / 2, get("h") / 2, get("P"), get("e")),
  "bolts.group.bhandari75": (_, get) => {
    const [l1, l2] = [get("l1"), get("l2")];
    const [Ft = Number.NaN] = tiltingPulls([l1, l1, l2, l2], get("P") * get("e"));
    const corners = [-1, 1].flatMap((x) => [l1, l2].map((y) => ({ at: [x, y] as const })));
    const { forces } = elasticGroup(corners, { force: [0, -get("P")], at: [0, 0] });
    return { Ft, Fs: Math.hypot(...(forces[0] ?? [Number.NaN])) };
  },
  "bolts.group.bhandari78": (_, get) => {
    const [tilt = Number.NaN] = tiltingPulls([get("l1"), get("l2")], get("P") * get("e"));
    return { F: get("P") / 2 + tilt };
  },
  "bolts.group.two-inline": (_, get: Get) => {
    const fasteners = [-1, 1].map((side) => ({ at: [0, (side * get("s")) / 2] as const }));
    const { forces } = elasticGroup(fasteners, { force: [0, -get("P")], at: [get("e"), 0] });
    return Math.hypot(...(forces[0] ?? [Number.NaN]));
  },
  "bolts.group.ic.two-in-row": (_, get) => {
    const row = [-1, 1].map((side) => ({ at: [0, (side * get("s")) / 2] as const, slip: AT_FULL_SLIP }));
    const at = (e: number): number => slipOfGroup(row, { force: [0, -1], at: [e, 0] }).upper;
    return Object.fromEntries([2, 3, 4, 5, 6].map((e) => [String(e), at(e)]));
  },
  "bolts.turn.single-M8": (_, get) => {
    const r_eff = frictionRadius(get("do"), get("di"));
    const slip = get("mu") * get("Fi");
    return { r_eff, T: slipTorque([[0, 0]], slip, slip * r_eff) / NEWTON_METRE };
  },
  "bolts.turn.pair": (_, get) =>
    slipTorque(
      [
        [0, -get("s") / 2],
        [0, get("s") / 2],
      ],
      get("mu") * get("Fi"),
    ) / NEWTON_METRE,
};

const GROUPS = /^bolts\.(group|turn)\./;
const elsewhere = Object.fromEntries(
  loadReference("bolts")
    .checks.filter(({ id }) => !GROUPS.test(id))
    .map(({ id }) => [id, "sizes, torques and strengths of single screws are not the mechanics of a group"]),
);
/** The tool checks groups, it does not choose a size of screw for them. */
runFamily("bolts", runners, elsewhere, {
  "bolts.group.bhandari73": ["dc", "size"],
  "bolts.group.bhandari75": ["A"],
  "bolts.group.bhandari78": ["A"],
});
