import { describe, expect, test } from "vitest";
import type { Vec3 } from "../../src/geometry/vector.ts";
import { dot, rotateAbout } from "../../src/geometry/vector.ts";
import { prepareFrame } from "../../src/mechanics/frame.ts";
import type { FrameModel, LoadCase, MemberLoad, Triad } from "../../src/mechanics/model.ts";
import { extrema, valueAt } from "../../src/mechanics/piecewise.ts";
import { memberDeflections, memberForces, solvedState } from "../../src/mechanics/results.ts";
import { displacedEnds } from "../../src/mechanics/statics/member-forces.ts";
import { solveFrame } from "../../src/mechanics/statics/solve.ts";
import { memberLength, randomFrame, randomLoads } from "./random-frame.ts";

const SEEDS = [1, 2, 3, 4, 5];
const solveOne = (model: FrameModel, load: LoadCase) => solveFrame(prepareFrame(model), [load], [[1]]);
const displacementsOf = (model: FrameModel, load: LoadCase) => solvedState(solveOne(model, load), 0).displacements;

/** Largest difference beside the largest value. */
function difference(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let [worst, size] = [0, 0];
  for (let i = 0; i < a.length; i++) {
    worst = Math.max(worst, Math.abs((a[i] as number) - (b[i] as number)));
    size = Math.max(size, Math.abs(a[i] as number));
  }
  return worst / size;
}

type Map3 = (v: Vec3) => Vec3;

function mapLoads(load: LoadCase, polar: Map3, axial: Map3): LoadCase {
  const pair = (p: readonly [Vec3, Vec3], map: Map3) => [map(p[0]), map(p[1])] as const;
  const members = (load.members ?? []).map((own): MemberLoad => {
    if (own.kind === "strain") return own;
    const arm = polar(own.arm ?? [0, 0, 0]);
    if (own.kind === "point") {
      return { ...own, arm, force: polar(own.force ?? [0, 0, 0]), moment: axial(own.moment ?? [0, 0, 0]) };
    }
    const none = [
      [0, 0, 0],
      [0, 0, 0],
    ] as const;
    return { ...own, arm, force: pair(own.force ?? none, polar), moment: pair(own.moment ?? none, axial) };
  });
  const nodes = (load.nodes ?? []).map((n) => ({
    node: n.node,
    force: polar(n.force ?? [0, 0, 0]),
    moment: axial(n.moment ?? [0, 0, 0]),
  }));
  return { nodes, members };
}

const six = (u: Float64Array, node: number): readonly [Vec3, Vec3] => {
  const g = (i: number): number => u[6 * node + i] as number;
  return [
    [g(0), g(1), g(2)],
    [g(3), g(4), g(5)],
  ];
};

describe("turning the frame turns the answer", () => {
  test.each(SEEDS)("seed %i", (seed) => {
    const model = randomFrame(seed);
    const load = randomLoads(model, seed + 50);
    const turn: Map3 = (v) => rotateAbout(v, [0.3, -0.7, 0.5], 1.1 + seed);
    const turnAxes = ({ x, y, z }: Triad): Triad => ({ x: turn(x), y: turn(y), z: turn(z) });
    const turned = {
      ...model,
      nodes: model.nodes.map(turn),
      members: model.members.map((m) => ({ ...m, axes: turnAxes(m.axes) })),
    };
    const plain = displacementsOf(model, load);
    const there = displacementsOf(turned, mapLoads(load, turn, turn));
    const expected = model.nodes.flatMap((_, n) => six(plain, n).flatMap(turn));
    expect(difference(expected, there)).toBeLessThan(1e-10);
  });
});

describe("a mirrored frame gives the mirrored answer", () => {
  test.each(SEEDS)("seed %i", (seed) => {
    const model = randomFrame(seed);
    const load = randomLoads(model, seed + 50);
    const polar: Map3 = ([x, y, z]) => [-x, y, z];
    const axial: Map3 = ([x, y, z]) => [x, -y, -z];
    // A mirrored triad is left-handed; turning y over makes it right-handed again and leaves EI about both axes as it was.
    const axes = ({ x, y, z }: Triad): Triad => ({
      x: polar(x),
      y: polar(y).map((c) => -c) as unknown as Vec3,
      z: polar(z),
    });
    const mirrored = {
      ...model,
      nodes: model.nodes.map(polar),
      members: model.members.map((m) => ({ ...m, axes: axes(m.axes) })),
    };
    const flipped = mapLoads(load, polar, axial);
    // Curvature about z bends along local y, which was turned over.
    const members = (flipped.members ?? []).map((own) =>
      own.kind === "strain" ? { ...own, curvatureZ: -(own.curvatureZ ?? 0) } : own,
    );
    const plain = displacementsOf(model, load);
    const there = displacementsOf(mirrored, { ...flipped, members });
    const expected = model.nodes.flatMap((_, n) => [...polar(six(plain, n)[0]), ...axial(six(plain, n)[1])]);
    expect(difference(expected, there)).toBeLessThan(1e-10);
  });
});

describe("superposition", () => {
  test.each(SEEDS)("seed %i: a combination equals the sum of its loads in one case", (seed) => {
    const model = randomFrame(seed);
    const [a, b] = [randomLoads(model, seed + 1), randomLoads(model, seed + 2)];
    const factor = (load: LoadCase, k: number): LoadCase => {
      const scaled = mapLoads(
        load,
        (v) => [k * v[0], k * v[1], k * v[2]],
        (v) => [k * v[0], k * v[1], k * v[2]],
      );
      const members = (scaled.members ?? []).map((own, i): MemberLoad => {
        const first = load.members?.[i];
        if (own.kind !== "strain")
          return first && first.kind !== "strain" && first.arm ? { ...own, arm: first.arm } : own;
        const { member, axial = 0, curvatureY = 0, curvatureZ = 0 } = own;
        return { kind: "strain", member, axial: k * axial, curvatureY: k * curvatureY, curvatureZ: k * curvatureZ };
      });
      return { nodes: scaled.nodes ?? [], members };
    };
    const together = {
      nodes: [...(factor(a, 1.35).nodes ?? []), ...(factor(b, 1.5).nodes ?? [])],
      members: [...(factor(a, 1.35).members ?? []), ...(factor(b, 1.5).members ?? [])],
    };
    const combined = solveFrame(prepareFrame(model), [a, b], [[1.35, 1.5]]);
    const single = solveOne(model, together);
    expect(difference(solvedState(combined, 0).displacements, solvedState(single, 0).displacements)).toBeLessThan(
      1e-11,
    );
    const [m1, m2] = [memberForces(combined, 0, 3).Mz, memberForces(single, 0, 3).Mz];
    expect(
      difference([extrema(m1).max.value, extrema(m1).max.at], [extrema(m2).max.value, extrema(m2).max.at]),
    ).toBeLessThan(1e-9);
  });
});

describe("Maxwell and Betti", () => {
  test.each(SEEDS)("seed %i: unit forces at two places do the same work on each other", (seed) => {
    const model = randomFrame(seed);
    const [m, n] = [1, 9];
    const [x, y] = [0.3 * memberLength(model, m), 0.7 * memberLength(model, n)];
    const [f, g]: [Vec3, Vec3] = [
      [0.2, -0.5, 0.9],
      [-0.6, 0.1, 0.4],
    ];
    const cases: LoadCase[] = [
      { members: [{ kind: "point", member: m, along: x, force: f }] },
      { members: [{ kind: "point", member: n, along: y, force: g }] },
    ];
    const s = solveFrame(prepareFrame(model), cases, [
      [1, 0],
      [0, 1],
    ]);
    const work = (combination: number, member: number, at: number, force: Vec3): number => {
      const d = memberDeflections(s, combination, member);
      const axes = model.members[member]?.axes ?? { x: force, y: force, z: force };
      const along = [valueAt(d.x, at), valueAt(d.y, at), valueAt(d.z, at)];
      return (
        dot(force, axes.x) * (along[0] ?? 0) +
        dot(force, axes.y) * (along[1] ?? 0) +
        dot(force, axes.z) * (along[2] ?? 0)
      );
    };
    const [there, back] = [work(1, m, x, f), work(0, n, y, g)];
    expect(Math.abs(there - back)).toBeLessThan(1e-10 * Math.abs(there));
  });
});

/** Splits member m at a fraction of its length; loads on it are cut at the new node. */
function split(model: FrameModel, load: LoadCase, m: number, fraction: number): readonly [FrameModel, LoadCase] {
  const member = model.members[m];
  const length = memberLength(model, m);
  const at = fraction * length;
  if (!member) throw new RangeError("no such member");
  const node = model.nodes.length;
  const a = model.nodes[member.from] ?? [0, 0, 0];
  const middle: Vec3 = [a[0] + at * member.axes.x[0], a[1] + at * member.axes.x[1], a[2] + at * member.axes.x[2]];
  const rest = model.members.length;
  const members = [...model.members.map((own, i) => (i === m ? { ...own, to: node } : own)), { ...member, from: node }];
  const between = (p: readonly [Vec3, Vec3], t: number): Vec3 =>
    [0, 1, 2].map((i) => (1 - t) * (p[0][i] ?? 0) + t * (p[1][i] ?? 0)) as unknown as Vec3;
  const cut = (own: MemberLoad): MemberLoad[] => {
    if (own.member !== m) return [own];
    if (own.kind === "strain") return [own, { ...own, member: rest }];
    if (own.kind === "point") return [own.along <= at ? own : { ...own, member: rest, along: own.along - at }];
    if (own.end <= at) return [own];
    if (own.start >= at) return [{ ...own, member: rest, start: own.start - at, end: own.end - at }];
    const t = (at - own.start) / (own.end - own.start);
    const none = [
      [0, 0, 0],
      [0, 0, 0],
    ] as const;
    const [force, moment] = [own.force ?? none, own.moment ?? none];
    return [
      { ...own, end: at, force: [force[0], between(force, t)], moment: [moment[0], between(moment, t)] },
      {
        ...own,
        member: rest,
        start: 0,
        end: own.end - at,
        force: [between(force, t), force[1]],
        moment: [between(moment, t), moment[1]],
      },
    ];
  };
  return [
    { ...model, nodes: [...model.nodes, middle], members },
    { ...load, members: (load.members ?? []).flatMap(cut) },
  ];
}

describe("splitting a bar changes nothing", () => {
  test.each(SEEDS)("seed %i", (seed) => {
    const model = randomFrame(seed);
    const load = randomLoads(model, seed + 9);
    const m = 2 * seed;
    const [parted, cutLoads] = split(model, load, m, 0.37);
    const [whole, pieces] = [solveOne(model, load), solveOne(parted, cutLoads)];
    const [u, v] = [solvedState(whole, 0).displacements, solvedState(pieces, 0).displacements];
    expect(difference(u, v.subarray(0, u.length))).toBeLessThan(1e-10);
    const length = memberLength(model, m);
    const last = model.members.length;
    for (const key of ["N", "Vy", "Vz", "T", "My", "Mz"] as const) {
      const one = memberForces(whole, 0, m)[key];
      const [first, second] = [memberForces(pieces, 0, m)[key], memberForces(pieces, 0, last)[key]];
      const size = Math.max(...Object.values(extrema(one)).map(({ value }) => Math.abs(value)));
      for (const t of [0.05, 0.2, 0.3, 0.5, 0.8, 0.95]) {
        const x = t * length;
        const there = t < 0.37 ? valueAt(first, x) : valueAt(second, x - 0.37 * length);
        expect(Math.abs(valueAt(one, x) - there), `${key} at ${t}`).toBeLessThan(1e-11 * size);
      }
    }
    const sagWhole = memberDeflections(whole, 0, m).y;
    const sagPart = memberDeflections(pieces, 0, last).y;
    expect(Math.abs(valueAt(sagWhole, 0.8 * length) - valueAt(sagPart, 0.43 * length))).toBeLessThan(1e-15);
  });
});

describe("self checks", () => {
  test.each(SEEDS)("seed %i: residual, equilibrium and energy of a sound solution are at rounding level", (seed) => {
    const model = randomFrame(seed, 4);
    const { quality } = solvedState(solveOne(model, randomLoads(model, seed)), 0);
    expect(quality.residual).toBeLessThan(1e-11);
    expect(quality.equilibrium).toBeLessThan(1e-11);
    expect(quality.energy).toBeLessThan(1e-11);
  });

  test.each(SEEDS)("seed %i: the far end of every member is met by its own internal forces and deflections", (seed) => {
    const model = randomFrame(seed);
    const s = solveOne(model, randomLoads(model, seed));
    const { ends, displacements } = solvedState(s, 0);
    const at = new Float64Array(12);
    model.members.forEach((_, m) => {
      displacedEnds(s.frame.parts.table, m, displacements, ends, at);
      const L = memberLength(model, m);
      const f = memberForces(s, 0, m);
      const d = memberDeflections(s, 0, m, f);
      const forces = [f.N, f.Vy, f.Vz, f.T, f.My, f.Mz].map((p) => valueAt(p, L));
      const moves = [d.x, d.y, d.z, d.turnX, d.turnY, d.turnZ].map((p) => valueAt(p, L));
      expect(difference(ends.forces.subarray(12 * m + 6, 12 * m + 12), forces)).toBeLessThan(1e-10);
      expect(difference(at.subarray(6), moves)).toBeLessThan(1e-10);
    });
  });
});
