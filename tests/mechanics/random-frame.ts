import type { Vec3 } from "../../src/geometry/vector.ts";
import { cross, normalise, rotateAbout, subtract } from "../../src/geometry/vector.ts";
import type { FrameModel, LoadCase, Member, MemberLoad, Support, Triad } from "../../src/mechanics/model.ts";

/** Numbers in [0, 1) that repeat for a seed (Park and Miller's generator, Communications of the ACM 31, 1988). */
export function randomNumbers(seed: number): () => number {
  let state = (seed % 2147483646) + 1;
  return () => {
    state = (state * 48271) % 2147483647;
    return (state - 1) / 2147483646;
  };
}

export function axesAlong(from: Vec3, to: Vec3, roll: number): Triad {
  const x = normalise(subtract(to, from));
  const helper: Vec3 = Math.abs(x[2]) < 0.9 ? [0, 0, 1] : [0, 1, 0];
  const y = rotateAbout(normalise(cross(helper, x)), x, roll);
  return { x, y, z: cross(x, y) };
}

/** An aluminium section of about 40 mm, N and m, with unequal axes. */
export const SECTION = { EA: 76e6, EIy: 10.8e3, EIz: 16.2e3, GJ: 970, GAy: 12e6, GAz: 9e6, massPerLength: 2.94 };

const FIXED = ["fixed", "fixed", "fixed", "fixed", "fixed", "fixed"] as const;

/** A tower of cells whose nodes stand a little off the grid, on fixed feet; every cell braced on one face. */
export function randomFrame(seed: number, storeys = 2): FrameModel {
  const random = randomNumbers(seed);
  const nodes: Vec3[] = [];
  for (let level = 0; level <= storeys; level++) {
    for (const [x, y] of [
      [0, 0],
      [1.2, 0],
      [1.2, 0.8],
      [0, 0.8],
    ] as const) {
      const off = (): number => 0.1 * (random() - 0.5);
      nodes.push([x + off(), y + off(), 0.9 * level + off()]);
    }
  }
  const pairs: (readonly [number, number])[] = [];
  for (let level = 0; level < storeys; level++) {
    for (let k = 0; k < 4; k++) {
      pairs.push([4 * level + k, 4 * level + 4 + k], [4 * level + 4 + k, 4 * level + 4 + ((k + 1) % 4)]);
    }
    pairs.push([4 * level, 4 * level + 5]);
  }
  const members = pairs.map(([from, to]): Member => {
    const axes = axesAlong(nodes[from] ?? [0, 0, 0], nodes[to] ?? [0, 0, 0], 6 * random());
    return { from, to, axes, ...SECTION };
  });
  const supports: Support[] = [0, 1, 2, 3].map((node) => ({ node, holds: FIXED }));
  return { nodes, members, supports };
}

export function memberLength(model: FrameModel, m: number): number {
  const member = model.members[m];
  if (!member) throw new RangeError("no such member");
  const [a, b] = [model.nodes[member.from], model.nodes[member.to]];
  return a && b ? Math.hypot(...subtract(b, a)) : Number.NaN;
}

/** Forces, moments, partial trapezoids and strains on random members and nodes. */
export function randomLoads(model: FrameModel, seed: number): LoadCase {
  const random = randomNumbers(seed);
  const vector = (size: number): Vec3 => [size * (random() - 0.5), size * (random() - 0.5), size * (random() - 0.5)];
  const members = model.members.flatMap((_, member): MemberLoad[] => {
    const length = memberLength(model, member);
    const start = 0.5 * length * random();
    const end = start + (length - start) * random();
    return [
      { kind: "point", member, along: length * random(), force: vector(400), moment: vector(50), arm: vector(0.05) },
      { kind: "line", member, start, end, force: [vector(800), vector(800)], moment: [vector(20), vector(20)] },
      { kind: "strain", member, axial: 1e-4 * random(), curvatureY: 1e-3 * random(), curvatureZ: 1e-3 * random() },
    ];
  });
  return {
    nodes: model.nodes.slice(4).map((_, i) => ({ node: i + 4, force: vector(300), moment: vector(30) })),
    members,
  };
}
