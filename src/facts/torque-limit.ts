import { stressArea, torqueFor } from "../mechanics/fasteners/preload.ts";
import { LIPS_GIVE } from "../model/stock/lip-rating.ts";
import type { Profile, Screw, Stock } from "../model/stock/stock.ts";
import { type Clamp, clamping, TORQUE_COEFFICIENT } from "./clamping.ts";
import { defineFact } from "./fact.ts";

/** The torque a tightened screw may take and what gives first beyond it. */
export interface TorqueLimit {
  /** N·m. */
  readonly torque: number;
  readonly what: string;
  readonly basis: string;
}

/** Torque coefficient of a well oiled screw, whose preload is the highest to be expected (published spread, from memory). */
export const LEAST_COEFFICIENT = 0.15;
/** Proof stress by property class, Pa: ISO 898-1, SAE J429, ISO 3506-1 (0.2 % proof), from memory. */
export const PROOF: ReadonlyMap<string, number> = new Map([
  ["8.8", 580e6],
  ["10.9", 830e6],
  ["12.9", 970e6],
  ["A2-70", 450e6],
  ["A4-70", 450e6],
  ["grade 5", 586e6],
]);
/** A thread tapped in soft metal shears along half of its cylinder, at 0.6 of the strength (common practice). */
const THREAD_SHARE = 0.5;
const SHEAR_SHARE = 0.6;
/** Tightening torques of tables are rounded: one above proof by no more than this share is not above it. */
const ROUNDED = 1.02;
/** Sizes across flats nearer than this are one, m. */
const SAME_KEY = 1e-5;

const isMetric = (screw: Screw): boolean => screw.thread.startsWith("M");

/** Torque at which the thread in the core of a bar strips, N·m; `engaged` in m, `ultimate` in Pa. */
export function strippingTorque(screw: Screw, engaged: number, ultimate: number): number {
  const holds = Math.PI * screw.diameter * engaged * THREAD_SHARE * SHEAR_SHARE * ultimate;
  return torqueFor(holds, LEAST_COEFFICIENT, screw.diameter);
}

/** Everything that limits the torque of a clamping screw; the least governs. */
function torqueLimits(clamp: Clamp, profile: Profile, stock: Stock): readonly TorqueLimit[] {
  const { screw, into } = clamp.placed;
  const limits: TorqueLimit[] = [
    { torque: screw.torque, what: "the screw", basis: `torque of ${screw.name}: ${screw.source}` },
  ];
  const stated = profile.torques.get(screw.thread);
  limits.push({
    torque: stated ?? torqueFor(LIPS_GIVE * profile.lipRating, TORQUE_COEFFICIENT, screw.diameter),
    what: "the slot lips",
    basis: stated ? `torque stated for ${profile.name}` : `where the lips of ${profile.name} give (docs/method/joints)`,
  });
  const proof = PROOF.get(screw.propertyClass);
  if (proof !== undefined) {
    const area = stressArea(screw.diameter, screw.pitch, isMetric(screw) ? "metric" : "unified");
    const torque = ROUNDED * torqueFor(proof * area, LEAST_COEFFICIENT, screw.diameter);
    limits.push({ torque, what: "the screw", basis: `proof load of class ${screw.propertyClass}, well oiled` });
  }
  const keys = [...stock.tools.values()].filter(
    (tool) => tool.kind === "hex-key" && Math.abs(tool.key - screw.key) < SAME_KEY,
  );
  const strongest = keys.reduce((most, tool) => Math.max(most, tool.torque), 0);
  if (screw.head !== "hex" && strongest > 0)
    limits.push({ torque: strongest, what: "the key", basis: "proof torque of the hex key (ISO 2936)" });
  if (into.kind === "bore") {
    const material = stock.materials.get(profile.material);
    if (material)
      limits.push({
        torque: strippingTorque(screw, into.engaged, material.ultimate),
        what: "the thread in the core",
        basis: "shear of half the thread's cylinder, well oiled (docs/method/joints)",
      });
  }
  return limits;
}

/** A clamping screw and what gives first when it is tightened too far. */
export interface CappedScrew {
  readonly clamp: Clamp;
  readonly first: TorqueLimit;
}

/** What limits the torque of every clamping screw. */
export const torqueLimit = defineFact<readonly CappedScrew[], { clamping: typeof clamping }>({
  id: "torque-limit",
  needs: { clamping },
  compute({ clamping: { all } }, frame) {
    const profiles = new Map(frame.bars.map((bar) => [bar.ref.id, bar.profile]));
    return all.flatMap((clamp) => {
      const profile = profiles.get(clamp.bar);
      const limits = profile ? torqueLimits(clamp, profile, frame.stock) : [];
      const [one] = limits;
      return one ? [{ clamp, first: limits.reduce((a, b) => (b.torque < a.torque ? b : a), one) }] : [];
    });
  },
});
