import { extrema, largest, valueAt } from "../../../src/mechanics/piecewise.ts";
import { solvedState } from "../../../src/mechanics/results.ts";
import type { End } from "../line-beam.ts";
import { bending, displacement, down, lateral, pointDown, reaction, solveLine } from "../line-beam.ts";
import { solvePrinted } from "../reference-model.ts";
import type { Runner } from "../reference-run.ts";
import { runFamily } from "../reference-run.ts";
import { frequencyRunners } from "./frequency-runners.ts";
import { portalRunners } from "./portal-runners.ts";

type Get = (name: string) => number;
const EI = (get: Get): number => get("E") * get("I");

const oneSpan = (get: Get, left: End, right: End) => ({
  EI: EI(get),
  nodes: [
    [0, left],
    [get("L"), right],
  ] as const,
});
const uniform = (get: Get, left: End, right: End) =>
  solveLine(oneSpan(get, left, right), { members: [down(0, get("L"), get("w"))] });
const midPoint = (get: Get, left: End, right: End) =>
  solveLine(oneSpan(get, left, right), { members: [pointDown(0, get("L") / 2, get("P"))] });
const offPoint = (get: Get) =>
  solveLine(oneSpan(get, "pinned", "pinned"), { members: [pointDown(0, get("a"), get("P"))] });
const endMoment = (get: Get) =>
  solveLine(oneSpan(get, "pinned", "pinned"), { nodes: [{ node: 1, moment: [0, 0, get("M0")] }] });
const tip = (get: Get, load: Parameters<typeof solveLine>[1], left: End = "fixed") =>
  solveLine(oneSpan(get, left, "free"), load);
const spans = (get: Get, count: number, loaded: readonly number[]) =>
  solveLine(
    { EI: EI(get), nodes: Array.from({ length: count + 1 }, (_, i) => [i * get("L"), "pinned"] as const) },
    { members: loaded.map((member) => down(member, get("L"), get("w"))) },
  );
const sagOf = (s: ReturnType<typeof solveLine>, member = 0): number => Math.abs(largest(lateral(s, member)).value);
const momentOf = (s: ReturnType<typeof solveLine>, member = 0): number => Math.abs(largest(bending(s, member)).value);

const semi = (get: Get, load: Parameters<typeof solveLine>[1]) => {
  const spring = { turnSpring: get("k") };
  const s = solveLine(oneSpan(get, spring, spring), load);
  return { M_end: Math.abs(valueAt(bending(s), 0)), defl: Math.abs(valueAt(lateral(s), get("L") / 2)) };
};

const beams: Record<string, Runner> = {
  "beams.ss.P-mid": (_, get) => sagOf(midPoint(get, "pinned", "pinned")),
  "beams.ss.P-mid.M": (_, get) => momentOf(midPoint(get, "pinned", "pinned")),
  "beams.ss.P-off": (_, get) => sagOf(offPoint(get)),
  "beams.ss.P-off.underload": (_, get) => -valueAt(lateral(offPoint(get)), get("a")),
  "beams.ss.udl": (_, get) => sagOf(uniform(get, "pinned", "pinned")),
  "beams.ss.udl.M": (_, get) => momentOf(uniform(get, "pinned", "pinned")),
  "beams.ss.endmoment": (_, get) => sagOf(endMoment(get)),
  "beams.ss.endmoment.slope": (_, get) => displacement(endMoment(get), 1, 5),
  "beams.ss.triangular": (_, get) =>
    sagOf(solveLine(oneSpan(get, "pinned", "pinned"), { members: [down(0, get("L"), 0, get("w0"))] })),
  "beams.cant.P-tip": (_, get) => -displacement(tip(get, { nodes: [{ node: 1, force: [0, -get("P"), 0] }] }), 1, 1),
  "beams.cant.P-tip.slope": (_, get) =>
    -displacement(tip(get, { nodes: [{ node: 1, force: [0, -get("P"), 0] }] }), 1, 5),
  "beams.cant.udl": (_, get) => -displacement(tip(get, { members: [down(0, get("L"), get("w"))] }), 1, 1),
  "beams.cant.M-tip": (_, get) => displacement(tip(get, { nodes: [{ node: 1, moment: [0, 0, get("M0")] }] }), 1, 1),
  "beams.ff.P-mid": (_, get) => sagOf(midPoint(get, "fixed", "fixed")),
  "beams.ff.P-mid.M": (_, get) => Math.abs(valueAt(bending(midPoint(get, "fixed", "fixed")), 0)),
  "beams.ff.udl": (_, get) => sagOf(uniform(get, "fixed", "fixed")),
  "beams.ff.udl.M": (_, get) => momentOf(uniform(get, "fixed", "fixed")),
  "beams.prop.udl": (_, get) => {
    const s = uniform(get, "fixed", "pinned");
    return { defl: sagOf(s), M: Math.abs(valueAt(bending(s), 0)), R_prop: reaction(s, 1) };
  },
  "beams.prop.P-mid": (_, get) => {
    const s = midPoint(get, "fixed", "pinned");
    const defl = -valueAt(lateral(s), get("L") / 2);
    return { defl, M: Math.abs(valueAt(bending(s), 0)), R_prop: reaction(s, 1) };
  },
  "beams.two-span.udl": (_, get) => {
    const s = spans(get, 2, [0, 1]);
    return { R_end: reaction(s, 0), R_mid: reaction(s, 1), M_mid: -valueAt(bending(s), get("L")), defl: sagOf(s) };
  },
  "beams.two-span.udl-one": (_, get) => {
    const s = spans(get, 2, [0]);
    const [R_left, R_mid, R_right] = [reaction(s, 0), reaction(s, 1), reaction(s, 2)];
    return { R_left, R_mid, R_right, M_mid: -valueAt(bending(s), get("L")) };
  },
  "beams.three-span.udl": (_, get) => {
    const s = spans(get, 3, [0, 1, 2]);
    return { R_end: reaction(s, 0), R_inner: reaction(s, 1), M_inner: -valueAt(bending(s), get("L")) };
  },
  "beams.two-span.settle": (_, get) => {
    const nodes = [0, 1, 2].map((i) => [i * get("L"), "pinned"] as const);
    const s = solveLine({ EI: EI(get), nodes }, { settlements: [{ node: 1, component: 1, value: -get("D") }] });
    return valueAt(bending(s), get("L"));
  },
  "beams.overhang.P": (_, get) => {
    const nodes = [
      [0, "pinned"],
      [get("L"), "pinned"],
      [get("L") + get("a"), "free"],
    ] as const;
    const s = solveLine({ EI: EI(get), nodes }, { nodes: [{ node: 2, force: [0, -get("P"), 0] }] });
    const bow_up = extrema(lateral(s)).max.value;
    return { tip: -displacement(s, 2, 1), bow_up, R_far: reaction(s, 0), R_near: reaction(s, 1) };
  },
  "beams.semi.udl": (_, get) => {
    const r = 1 / (1 + (3 * EI(get)) / (get("k") * get("L")));
    return { r, ...semi(get, { members: [down(0, get("L"), get("w"))] }) };
  },
  "beams.semi.P-mid": (_, get) => semi(get, { members: [pointDown(0, get("L") / 2, get("P"))] }),
  "beams.semi.cantilever": (_, get) => {
    const load = { nodes: [{ node: 1, force: [0, -get("P"), 0] as const }] };
    return -displacement(tip(get, load, { turnSpring: get("k") }), 1, 1);
  },
  "beams.stress.bending": (_, get) => {
    const s = tip(get, { nodes: [{ node: 1, moment: [0, 0, get("M")] }] });
    return (momentOf(s) * get("c")) / get("I");
  },
  "beams.shear.udl": (_, get) => {
    const load = { members: [down(0, get("L"), get("w"))] };
    const shearing = solveLine({ ...oneSpan(get, "pinned", "pinned"), GAy: get("G") * get("Av") }, load);
    return sagOf(shearing) - sagOf(solveLine(oneSpan(get, "pinned", "pinned"), load));
  },
  "beams.thermal.bow": (_, get) => {
    const nodes = [
      [0, "pinned"],
      [get("L"), "pinned"],
    ] as const;
    const curvatureZ = (-get("alpha") * get("dT")) / get("h"); // the warmer top stretches
    return sagOf(solveLine({ EI: 1, nodes }, { members: [{ kind: "strain", member: 0, curvatureZ }] }));
  },
};

const COMPONENTS = ["UX", "UY", "UZ", "RX", "RY", "RZ"];
const FORCES = ["FX", "FY", "FZ", "MX", "MY", "MZ"];

function atNode(family: string, model: string, name: string, kind: "displacements" | "reactions") {
  const { solution, printed } = solvePrinted(family, model);
  const values = solvedState(solution, 0)[kind];
  const names = kind === "displacements" ? COMPONENTS : FORCES;
  return Object.fromEntries(names.map((key, i) => [key, values[6 * printed.node(name) + i] as number]));
}

const frames: Record<string, Runner> = {
  "beams.frame3d.logan58": () => atNode("beams", "logan58", "1", "displacements"),
  "beams.frame3d.ferreira83": () => atNode("beams", "ferreira83", "1", "displacements"),
  "beams.frame3d.ferreira83.more-digits": () => atNode("beams", "ferreira83", "1", "displacements"),
  "beams.frame2d.kassimali66.R1": () => atNode("beams", "kassimali66", "1", "reactions"),
  "beams.frame2d.kassimali66.R3": () => atNode("beams", "kassimali66", "3", "reactions"),
  "beams.truss3d.kassimali81.R1": () => atNode("beams", "kassimali81", "1", "reactions"),
  "beams.truss3d.kassimali81.R3": () => atNode("beams", "kassimali81", "3", "reactions"),
  "beams.frame3d.pyramid": () => atNode("beams", "pyramid", "1", "displacements"),
  "beams.frame3d.pyramid.R3": () => atNode("beams", "pyramid", "3", "reactions"),
  "beams.frame2d.logan530": () => ({
    ...atNode("beams", "logan530", "1", "reactions"),
    UY_node3: atNode("beams", "logan530", "3", "displacements").UY ?? Number.NaN,
  }),
  "beams.frame2d.ssll14": () => {
    const at = atNode("beams", "ssll14", "A", "reactions");
    const v_C = atNode("beams", "ssll14", "C", "displacements").UY ?? Number.NaN;
    return { V_A: at.FY ?? Number.NaN, H_A: at.FX ?? Number.NaN, v_C };
  },
  "beams.frame3d.bench40.t2": () => atNode("beams", "bench40", "t2", "displacements"),
  "beams.frame3d.bench40.b2": () => atNode("beams", "bench40", "b2", "reactions"),
};

runFamily("beams", { ...beams, ...frames, ...portalRunners, ...frequencyRunners }, {});
