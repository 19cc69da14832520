import type { Contact, FrameModel, LoadCase, Member, MemberLoad, Spring, Vec3 } from "../../src/mechanics/model.ts";
import { GROUND } from "../../src/mechanics/model.ts";
import { GLOBAL } from "./line-beam.ts";
import { axesAlong, memberLength, randomNumbers, SECTION } from "./random-frame.ts";

/** Half a bar: rails end here beside the axis of their post. */
const HALF = 0.02;

/**
 * A rack as it is built: posts through, rails between them on springs of very different stiffness below their axes, rail
 * ends that bear on the posts by two contacts (some with a gap, some yielding, some with friction), and feet that stand by
 * contact and friction alone.
 */
export function jointedFrame(seed: number): { readonly model: FrameModel; readonly cases: readonly LoadCase[] } {
  const random = randomNumbers(7 * seed);
  const [nx, nz] = [1 + Math.floor(3 * random()), 1 + Math.floor(3 * random())];
  const id = (i: number, j: number, k: number): number => (2 * k + j) * (nx + 1) + i;
  const nodes: Vec3[] = [];
  for (let k = 0; k <= nz; k++)
    for (let j = 0; j <= 1; j++) for (let i = 0; i <= nx; i++) nodes.push([0.9 * i, 0.7 * j, 0.6 * k]);
  const posts = nodes.length;
  const position = (node: number): Vec3 => nodes[node] ?? [0, 0, 0];
  const members: Member[] = [];
  const springs: Spring[] = [];
  const contacts: Contact[] = [];
  const join = (from: number, to: number): void => {
    members.push({ from, to, axes: axesAlong(position(from), position(to), 0), ...SECTION });
  };
  const seat = (rail: number, post: number, away: Vec3, stiffness: number): void => {
    const [x, y, z] = position(rail);
    const twist = random() < 0.3 ? 1 : stiffness;
    const along = 5e6 * random() + 1e4;
    const six = [5e6, 5e6, along, stiffness, stiffness, twist] as const;
    springs.push({ from: rail, to: post, at: [x, y, z - HALF], axes: GLOBAL, stiffness: six });
    if (random() < 0.5) return;
    for (const off of [-HALF, HALF]) {
      contacts.push({
        from: rail,
        to: post,
        normal: away,
        at: [x, y, z + off],
        gap: random() < 0.3 ? 1e-4 * random() : 0,
        friction: random() < 0.3 ? 0.2 : 0,
        ...(random() < 0.3 ? { stiffness: 1e8 } : {}),
      });
    }
  };
  const rail = (a: number, b: number, [dx, dy]: readonly [number, number]): void => {
    const [p, q] = [position(a), position(b)];
    const from = nodes.push([p[0] + HALF * dx, p[1] + HALF * dy, p[2]]) - 1;
    const to = nodes.push([q[0] - HALF * dx, q[1] - HALF * dy, q[2]]) - 1;
    join(from, to);
    const stiffness = 10 ** (2 + 3 * random());
    seat(from, a, [dx, dy, 0], stiffness);
    seat(to, b, [-dx, -dy, 0], stiffness);
  };
  for (let k = 0; k <= nz; k++) {
    for (let j = 0; j <= 1; j++) {
      for (let i = 0; i <= nx; i++) {
        if (k < nz) join(id(i, j, k), id(i, j, k + 1));
        if (k > 0 && i < nx) rail(id(i, j, k), id(i + 1, j, k), [1, 0]);
        if (k > 0 && j < 1) rail(id(i, j, k), id(i, j + 1, k), [0, 1]);
      }
    }
  }
  for (let foot = 0; foot < 2 * (nx + 1); foot++) {
    contacts.push({
      from: foot,
      to: GROUND,
      normal: [0, 0, 1],
      gap: random() < 0.2 ? 5e-4 * random() : 0,
      friction: 0.3,
    });
  }
  const model: FrameModel = { nodes, members, springs, contacts };
  const down = (member: number, q: number, arm: Vec3): MemberLoad => {
    return {
      kind: "line",
      member,
      start: 0,
      end: memberLength(model, member),
      force: [
        [0, 0, -q],
        [0, 0, -q],
      ],
      arm,
    };
  };
  const cases: LoadCase[] = [
    { members: members.map((_, m) => down(m, 30, [0, 0, 0])) },
    { members: members.flatMap((own, m) => (own.from >= posts ? [down(m, 400, [0.01, 0.01, 0.02])] : [])) },
    { nodes: [{ node: id(nx, 1, nz), force: [60 * random(), 60 * random(), 0] }] },
  ];
  return { model, cases };
}
