import { describe, expect, test } from "vitest";
import { prepareFrame } from "../../src/mechanics/frame.ts";
import type { FrameModel, MemberLoad, Six } from "../../src/mechanics/model.ts";
import { largest, valueAt } from "../../src/mechanics/piecewise.ts";
import { memberDeflections, memberForces, solvedState } from "../../src/mechanics/results.ts";
import { solveFrame } from "../../src/mechanics/statics/solve.ts";
import { GLOBAL } from "./line-beam.ts";
import { beam, EI, FIXED, FREE, GA, L, MEMBER, near, on, PINNED, RELATIVE, uniform } from "./one-beam.ts";

describe("a member under loads between its ends, without sub-meshing (Roark 7th ed. Tables 8.1; Timoshenko)", () => {
  test("held at both ends, point force at a: P a b²/L², P a² b/L², and P a³ b³/(3 EI L³) below the force", () => {
    const [P, a] = [730, 0.41];
    const b = L - a;
    const s = beam(FIXED, FIXED, on({ kind: "point", member: 0, along: a, force: [0, -P, 0] }));
    const Mz = memberForces(s, 0, 0).Mz;
    near(valueAt(Mz, 0), (-P * a * b * b) / L ** 2);
    near(valueAt(Mz, L), (-P * a * a * b) / L ** 2);
    near(valueAt(memberDeflections(s, 0, 0).y, a), (-P * a ** 3 * b ** 3) / (3 * EI * L ** 3));
  });

  test("held at both ends, moment M0 at a: shear 6 M0 a b/L³, end moment M0 b (2a − b)/L²", () => {
    const [M0, a] = [120, 0.47];
    const b = L - a;
    const s = beam(FIXED, FIXED, on({ kind: "point", member: 0, along: a, moment: [0, 0, M0] }));
    const { Vy, Mz } = memberForces(s, 0, 0);
    near(Math.abs(valueAt(Vy, 0.1)), (6 * M0 * a * b) / L ** 3);
    near(Math.abs(valueAt(Mz, 0)), Math.abs((M0 * b * (2 * a - b)) / L ** 2));
    near(valueAt(Mz, a, "after") - valueAt(Mz, a, "before"), -M0);
  });

  test("propped cantilever: largest deflection (39 + 55√33)/65536 wL⁴/EI at (15 − √33)/16 L from the held end", () => {
    const w = 480;
    const { at, value } = largest(memberDeflections(beam(FIXED, PINNED, on(uniform(w))), 0, 0).y);
    near(at, ((15 - Math.sqrt(33)) / 16) * L, 1e-9);
    near(value, ((-(39 + 55 * Math.sqrt(33)) / 65536) * w * L ** 4) / EI);
  });

  test("triangular load on a simple span: moment w0L²/(9√3) at L/√3, deflection at L√(1 − √(8/15))", () => {
    const w0 = 900;
    const s = beam(
      PINNED,
      PINNED,
      on({
        kind: "line",
        member: 0,
        start: 0,
        end: L,
        force: [
          [0, 0, 0],
          [0, -w0, 0],
        ],
      }),
    );
    const moment = largest(memberForces(s, 0, 0).Mz);
    near(moment.value, (w0 * L * L) / (9 * Math.sqrt(3)));
    near(moment.at, L / Math.sqrt(3), 1e-9);
    near(largest(memberDeflections(s, 0, 0).y).at, L * Math.sqrt(1 - Math.sqrt(8 / 15)), 1e-9);
  });

  test("partial load on a cantilever with shear: by the influence line of the tip", () => {
    // Load w on [c, d]: tip = ∫ w x²(3L − x)/6EI dx + ∫ w x/GA dx (influence of the tip, Timoshenko beam).
    const [w, c, d] = [650, 0.3, 0.9];
    const line: MemberLoad = {
      kind: "line",
      member: 0,
      start: c,
      end: d,
      force: [
        [0, -w, 0],
        [0, -w, 0],
      ],
    };
    const s = beam(FIXED, FREE, on(line), { GAy: GA });
    const bend = (x: number): number => L * x ** 3 - x ** 4 / 4;
    const tip = (w * (bend(d) - bend(c))) / (6 * EI) + (w * (d * d - c * c)) / (2 * GA);
    near(-(solvedState(s, 0).displacements[7] as number), tip);
  });

  test("a trapezoid in two directions with an arm: reactions by statics, torque force × arm", () => {
    const [c, d] = [0.2, 1.1];
    const [first, last] = [
      [3, -400, 90],
      [7, -900, -30],
    ] as const;
    const line: MemberLoad = { kind: "line", member: 0, start: c, end: d, force: [first, last], arm: [0, 0.02, 0.035] };
    const s = beam(FIXED, FREE, on(line), { GAy: GA, GAz: GA });
    const { reactions } = solvedState(s, 0);
    const total = (i: 0 | 1 | 2): number => ((first[i] + last[i]) * (d - c)) / 2;
    const lever = (i: 0 | 1 | 2): number => ((d - c) * ((2 * c + d) * first[i] + (c + 2 * d) * last[i])) / 6;
    for (const i of [0, 1, 2] as const) near(reactions[i] as number, -total(i));
    near(reactions[3] as number, -(0.02 * total(2) - 0.035 * total(1)));
    near(reactions[4] as number, -(0.035 * total(0) - lever(2)));
    near(reactions[5] as number, -(lever(1) - 0.02 * total(0)));
  });

  test("temperature: a held bar presses EA ε, a held gradient bends EI κ without moving", () => {
    const [axial, kappa] = [23e-6 * 30, 23e-6 * 200];
    const s = beam(FIXED, FIXED, on({ kind: "strain", member: 0, axial, curvatureY: kappa, curvatureZ: -kappa }));
    const { N, My, Mz } = memberForces(s, 0, 0);
    near(valueAt(N, L / 3), -MEMBER.EA * axial);
    near(valueAt(My, L / 2), -MEMBER.EIy * kappa);
    near(valueAt(Mz, L / 2), EI * kappa);
    for (const part of Object.values(memberDeflections(s, 0, 0))) {
      expect(Math.abs(largest(part).value)).toBeLessThan(RELATIVE * kappa * L);
    }
    const free = beam(FIXED, FREE, on({ kind: "strain", member: 0, axial, curvatureY: kappa }));
    near(solvedState(free, 0).displacements[6] as number, axial * L);
    near(solvedState(free, 0).displacements[8] as number, (-kappa * L * L) / 2);
  });

  test("distributed torque m between held ends: mL/2 at both, largest twist mL²/8GJ", () => {
    const s = beam(
      FIXED,
      FIXED,
      on({
        kind: "line",
        member: 0,
        start: 0,
        end: L,
        moment: [
          [9, 0, 0],
          [9, 0, 0],
        ],
      }),
    );
    near(valueAt(memberForces(s, 0, 0).T, 0), (9 * L) / 2);
    near(largest(memberDeflections(s, 0, 0).turnX).value, (9 * L * L) / (8 * MEMBER.GJ));
  });

  test("distributed bending moment on a cantilever: no shear, M0(L − x)", () => {
    const s = beam(
      FIXED,
      FREE,
      on({
        kind: "line",
        member: 0,
        start: 0,
        end: L,
        moment: [
          [0, 0, 60],
          [0, 0, 60],
        ],
      }),
    );
    const { Vy, Mz } = memberForces(s, 0, 0);
    expect(Math.abs(valueAt(Vy, 0.4))).toBeLessThan(1e-10);
    near(valueAt(Mz, 0.4), 60 * (L - 0.4));
  });

  test("Timoshenko cantilever: PL³/3EI + PL/GA, in both planes", () => {
    const P = 210;
    const s = beam(FIXED, FREE, { nodes: [{ node: 1, force: [0, P, P] }] }, { GAy: GA, GAz: GA / 2 });
    const { displacements } = solvedState(s, 0);
    near(displacements[7] as number, (P * L ** 3) / (3 * EI) + (P * L) / GA);
    near(displacements[8] as number, (P * L ** 3) / (3 * MEMBER.EIy) + (P * L) / (GA / 2));
  });
});

describe("ends", () => {
  test("settlement of a held end: 6 EI Δ/L²", () => {
    const s = beam(FIXED, FIXED, { settlements: [{ node: 1, component: 1, value: -0.004 }] });
    near(Math.abs(valueAt(memberForces(s, 0, 0).Mz, 0)), (6 * EI * 0.004) / L ** 2);
  });

  test("rigid arms: the clear span decides, the node takes wL²/12 + (wL/2) e", () => {
    const [w, e] = [500, 0.04];
    const model: FrameModel = {
      nodes: [
        [-e, 0, 0],
        [L + e, 0, 0],
      ],
      members: [{ ...MEMBER, fromOffset: [e, 0, 0], toOffset: [-e, 0, 0] }],
      supports: [0, 1].map((node) => ({ node, holds: FIXED })),
    };
    const s = solveFrame(prepareFrame(model), [on(uniform(w))], [[1]]);
    near(solvedState(s, 0).reactions[5] as number, (w * L * L) / 12 + ((w * L) / 2) * e);
    near(-largest(memberDeflections(s, 0, 0).y).value, (w * L ** 4) / (384 * EI));
  });

  test("a hinge inside: two cantilevers meet and share the force", () => {
    const hinge: Six<boolean> = [false, false, false, false, false, true];
    const model: FrameModel = {
      nodes: [
        [0, 0, 0],
        [L / 2, 0, 0],
        [L, 0, 0],
      ],
      members: [
        { ...MEMBER, toReleases: hinge },
        { ...MEMBER, from: 1, to: 2 },
      ],
      supports: [
        { node: 0, holds: FIXED },
        { node: 2, holds: FIXED },
      ],
    };
    const s = solveFrame(prepareFrame(model), [{ nodes: [{ node: 1, force: [0, -300, 0] }] }], [[1]]);
    near(-(solvedState(s, 0).displacements[7] as number), (150 * (L / 2) ** 3) / (3 * EI));
    expect(Math.abs(valueAt(memberForces(s, 0, 0).Mz, L / 2))).toBeLessThan(1e-9);
  });

  test("released on one end under a uniform load: wL²/8 at the other, the free end turns by wL³/48EI", () => {
    const s = beam(FIXED, FIXED, on(uniform(700)), { toReleases: [false, false, false, false, true, true] });
    near(valueAt(memberForces(s, 0, 0).Mz, 0), (-700 * L * L) / 8);
    near(Math.abs(valueAt(memberDeflections(s, 0, 0).turnZ, L)), (700 * L ** 3) / (48 * EI));
  });

  test("semi-rigid joints as springs between nodes: (wL²/12)/(1 + 2EI/kL) (Monforton and Wu 1963)", () => {
    const [w, k] = [640, 8000];
    const joint = (from: number, to: number) => ({
      from,
      to,
      axes: GLOBAL,
      stiffness: [1e9, 1e9, 1e9, 1e6, 1e6, k] as const,
    });
    const model: FrameModel = {
      nodes: [
        [0, 0, 0],
        [L, 0, 0],
        [0, 0, 0],
        [L, 0, 0],
      ],
      members: [MEMBER],
      springs: [joint(0, 2), joint(1, 3)],
      supports: [2, 3].map((node) => ({ node, holds: FIXED })),
    };
    const s = solveFrame(prepareFrame(model), [on(uniform(w))], [[1]]);
    const held = (w * L * L) / 12 / (1 + (2 * EI) / (k * L));
    near(-valueAt(memberForces(s, 0, 0).Mz, 0), held, 1e-9);
    near(Math.abs(solvedState(s, 0).springs[5] as number), held, 1e-9);
    near(solvedState(s, 0).springs[1] as number, (w * L) / 2, 1e-9);
  });

  test("an elastic support carries k·δ: cantilever with a spring under its tip", () => {
    const [P, k] = [300, 40_000];
    const s = beam(FIXED, ["free", k, "free", "free", "free", "free"], { nodes: [{ node: 1, force: [0, -P, 0] }] });
    const share = (P * k) / (k + (3 * EI) / L ** 3);
    near(solvedState(s, 0).reactions[7] as number, share);
  });
});
