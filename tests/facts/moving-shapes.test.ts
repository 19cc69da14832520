import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { bentLine } from "../../src/facts/bent-line.ts";
import { bodies, cutPoint } from "../../src/facts/bodies.ts";
import { factOf } from "../../src/facts/fact.ts";
import { evenPoints, modeLine } from "../../src/facts/mode-line.ts";
import { movingShapes } from "../../src/facts/moving-shapes.ts";
import { response } from "../../src/facts/response.ts";
import type { Structure } from "../../src/facts/structure.ts";
import { dot, length, subtract } from "../../src/geometry/vector.ts";
import { prepareFrame } from "../../src/mechanics/frame.ts";
import type { FrameModel, Hold, Six } from "../../src/mechanics/model.ts";
import { bucklingOf } from "../../src/mechanics/stability/buckling.ts";
import { solveFrame } from "../../src/mechanics/statics/solve.ts";
import { textOf } from "../demo/inspect-demo.ts";
import { axesAlong, SECTION } from "../mechanics/random-frame.ts";
import { frameOf, one } from "./known.ts";

const read = (name: string) => frameOf(JSON.parse(readFileSync(`docs/rules/${name}.fault.frame.json`, "utf8")));

describe("the shapes a frame moves into", () => {
  it("has a loose frame move without any bar growing longer, all eight bars about the line through the two feet", () => {
    const frame = read("frame.loose");
    const [shape, ...others] = factOf(movingShapes, frame);
    expect(others).toEqual([]);
    expect(shape?.kind).toBe("loose");
    expect(shape?.name).toContain("turn about x at leg-1.foot and leg-2.foot");
    const rates: number[] = [];
    for (const body of factOf(bodies, frame).values()) {
      const [from, to] = one(shape?.lineOf(body.bar.ref.id)).moved;
      if (!from || !to) throw new Error("no ends");
      // Small rigid motion: no difference along the bar.
      expect(dot(subtract(to, from), body.axes.x)).toBeCloseTo(0, 9);
      // The feet stand at y = 0 on the floor; what turns about that line goes by its distance from it.
      const at = cutPoint(body, "to");
      rates.push(length(to) / Math.hypot(at[1], at[2]));
    }
    for (const rate of rates) expect(rate / (rates[0] ?? 0)).toBeCloseTo(1, 6);
  });

  it("has it bend as the response has it, the farthest first, and buckle at the factor the rule tells, the least first", () => {
    const frame = read("frame.buckles");
    const shapes = factOf(movingShapes, frame);
    const factors = shapes.flatMap(({ kind, factor }) => (kind === "buckled" && factor !== undefined ? [factor] : []));
    expect(factors).toHaveLength(3);
    // docs/rules/frame.buckles.md: buckles at 2.31 times its load.
    expect(factors[0]).toBeCloseTo(2.31, 2);
    expect([...factors].sort((a, b) => a - b)).toEqual(factors);
    const found = factOf(response, frame);
    const body = one(factOf(bodies, frame).get("leg-1"));
    if (found.kind !== "solved") throw new Error("not solved");
    const [first] = shapes;
    const view = found.views.find(({ combination, bound }) => combination.name === first?.name && bound === "typical");
    expect(first?.lineOf("leg-1")).toEqual(bentLine(one(view), body, 9));
  });

  it("draws the first mode of a pinned column as the half wave of a sine (Euler: Timoshenko and Gere, Theory of Elastic Stability, 2.1)", () => {
    const frame = frameOf(JSON.parse(textOf("first-bench")));
    const body = one([...factOf(bodies, frame).values()].find(({ axes }) => Math.abs(axes.x[2]) > 0.99));
    const long = body.cutLength;
    const nodes = [
      [0, 0, 0],
      [0, 0, long],
    ] as const;
    const pinned: Six<Hold> = ["fixed", "fixed", "fixed", "free", "free", "fixed"];
    const model: FrameModel = {
      nodes,
      members: [{ from: 0, to: 1, axes: axesAlong(nodes[0], nodes[1], 0), ...SECTION, EIy: SECTION.EIz / 2 }],
      supports: [
        { node: 0, holds: pinned },
        { node: 1, holds: ["fixed", "fixed", "free", "free", "free", "fixed"] },
      ],
    };
    const solution = solveFrame(prepareFrame(model), [{ nodes: [{ node: 1, force: [0, 0, -100] }] }], [[1]]);
    const found = bucklingOf(solution).modes(0, 1);
    if (found.kind !== "modes") throw new Error("a mechanism");
    const [shape] = found.modes;
    const known = { piecesOf: () => [0], pieces: [{ bar: "a", from: 0, to: 1, stations: [0, long] }] };
    const start = body.axes.x[2] > 0 ? body : undefined;
    const line = one(
      modeLine(() => evenPoints(one(shape).alongMember(0)), known as unknown as Structure, one(start), 9),
    );
    const sizes = line.moved.map(length);
    const middle = sizes[4] ?? 0;
    // Largest 1 among the points it was worked out at, which may lie beside the middle.
    expect(middle).toBeCloseTo(1, 1);
    sizes.forEach((size, i) => {
      expect(size / middle).toBeCloseTo(Math.sin((Math.PI * i) / 8), 3);
    });
  });
});
