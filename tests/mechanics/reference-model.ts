import { cross, dot, normalise, rotateAbout, scale, subtract } from "../../src/geometry/vector.ts";
import { prepareFrame } from "../../src/mechanics/frame.ts";
import type { FrameModel, Hold, LoadCase, Six, Triad, Vec3 } from "../../src/mechanics/model.ts";
import type { Solution } from "../../src/mechanics/statics/solve.ts";
import { solveFrame } from "../../src/mechanics/statics/solve.ts";
import { loadReference } from "../references/load-reference.ts";

interface PrintedMember {
  readonly i: string;
  readonly j: string;
  readonly E: number;
  readonly G: number;
  readonly A: number;
  readonly Iy: number;
  readonly Iz: number;
  readonly J: number;
  readonly roll_deg?: number;
  readonly q_global?: Vec3;
  readonly point_loads?: readonly { readonly a: number; readonly P_global: Vec3 }[];
}

interface PrintedModel {
  readonly up: "Y" | "Z";
  readonly nodes: Readonly<Record<string, Vec3>>;
  readonly supports: Readonly<Record<string, readonly number[]>>;
  readonly members: readonly PrintedMember[];
  readonly loads: Readonly<Record<string, readonly number[]>>;
}

/** Printed frames: local y on the `up` side of the plane of x and up; for a member along Y up, z is global Z. Then rolled. */
export function printedAxes(from: Vec3, to: Vec3, up: "Y" | "Z", rollDeg = 0): Triad {
  const x = normalise(subtract(to, from));
  const upward: Vec3 = up === "Y" ? [0, 1, 0] : [0, 0, 1];
  const rest = subtract(upward, scale(x, dot(x, upward)));
  const vertical = Math.hypot(...rest) < 1e-9;
  const y0 = vertical ? cross([0, 0, 1], x) : normalise(rest);
  const y = rotateAbout(y0, x, (rollDeg * Math.PI) / 180);
  return { x, y, z: cross(x, y) };
}

export interface Printed {
  readonly model: FrameModel;
  readonly load: LoadCase;
  readonly node: (name: string) => number;
}

/** A frame printed in the references, in its own consistent units. */
export function printedFrame(family: string, name: string): Printed {
  const printed = loadReference(family).models?.[name] as PrintedModel;
  const names = Object.keys(printed.nodes);
  const node = (id: string): number => names.indexOf(id);
  const position = (id: string): Vec3 => printed.nodes[id] ?? [0, 0, 0];
  const members = printed.members.map((m) => ({
    from: node(m.i),
    to: node(m.j),
    axes: printedAxes(position(m.i), position(m.j), printed.up, m.roll_deg),
    EA: m.E * m.A,
    EIy: m.E * m.Iy,
    EIz: m.E * m.Iz,
    GJ: m.G * m.J,
    GAy: Infinity,
    GAz: Infinity,
    massPerLength: 0,
  }));
  const supports = Object.entries(printed.supports).map(([id, held]) => ({
    node: node(id),
    holds: [0, 1, 2, 3, 4, 5].map((i): Hold => (held.includes(i) ? "fixed" : "free")) as unknown as Six<Hold>,
  }));
  const memberLoads = printed.members.flatMap((m, member) => {
    const length = Math.hypot(...subtract(position(m.j), position(m.i)));
    const uniform = m.q_global
      ? [{ kind: "line" as const, member, start: 0, end: length, force: [m.q_global, m.q_global] as const }]
      : [];
    const points = (m.point_loads ?? []).map((p) => ({
      kind: "point" as const,
      member,
      along: p.a,
      force: p.P_global,
    }));
    return [...uniform, ...points];
  });
  const nodeLoads = Object.entries(printed.loads).map(([id, [fx = 0, fy = 0, fz = 0, mx = 0, my = 0, mz = 0]]) => ({
    node: node(id),
    force: [fx, fy, fz] as const,
    moment: [mx, my, mz] as const,
  }));
  const model = { nodes: names.map(position), members, supports };
  return { model, load: { nodes: nodeLoads, members: memberLoads }, node };
}

export function solvePrinted(family: string, name: string): { readonly solution: Solution; readonly printed: Printed } {
  const printed = printedFrame(family, name);
  return { printed, solution: solveFrame(prepareFrame(printed.model), [printed.load], [[1]]) };
}
