import { describe, expect, test } from "vitest";
import { MechanicsInputError, SolveCheckFailed } from "../../src/mechanics/errors.ts";
import type { Frame } from "../../src/mechanics/frame.ts";
import { prepareFrame } from "../../src/mechanics/frame.ts";
import type { FrameModel, Member } from "../../src/mechanics/model.ts";
import { demand } from "../../src/mechanics/statics/checks.ts";
import { solveFrame } from "../../src/mechanics/statics/solve.ts";
import { randomFrame, randomLoads } from "./random-frame.ts";

const model = randomFrame(4);
const solve = (frame: Frame) => solveFrame(frame, [randomLoads(model, 1)], [[1]]);

describe("a solution that does not satisfy its own equations is a failure of the tool", () => {
  test("when the factor gives wrong answers", () => {
    const frame = prepareFrame(model);
    const factor = { ...frame.system.factor, solve: (b: Float64Array) => new Float64Array(b.length).fill(1e-3) };
    expect(() => solve({ ...frame, system: { ...frame.system, factor } })).toThrow(SolveCheckFailed);
  });

  test("when the assembled matrix is not that of the members", () => {
    const frame = prepareFrame(model);
    const value = frame.system.matrix.value.map((k) => k * 1.000001);
    const matrix = { ...frame.system.matrix, value };
    expect(() => solve({ ...frame, system: { ...frame.system, matrix } })).toThrow(SolveCheckFailed);
  });

  test("the error says which check, how far off, and what was allowed", () => {
    try {
      demand("energy", 0.02);
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(SolveCheckFailed);
      if (error instanceof SolveCheckFailed)
        expect([error.check, error.defect, error.allowed]).toEqual(["energy", 0.02, 1e-8]);
    }
  });

  test("a defect that is not a number fails", () => {
    expect(() => demand("residual", Number.NaN)).toThrow(SolveCheckFailed);
  });
});

describe("a model that contradicts itself is refused", () => {
  const first = model.members[0] as Member;
  const withMember = (change: Partial<Member>): FrameModel => ({ ...model, members: [{ ...first, ...change }] });
  test.each([
    ["a node that does not exist", withMember({ to: 999 })],
    ["no length", withMember({ to: first.from })],
    ["axes turned away from the bar", withMember({ axes: { x: first.axes.y, y: first.axes.z, z: first.axes.x } })],
    ["left-handed axes", withMember({ axes: { ...first.axes, y: first.axes.z, z: first.axes.y } })],
    ["a negative stiffness", withMember({ EIy: -1 })],
    ["a stiffness beyond numbers", withMember({ EIz: 1e308 })],
    ["an infinite bending stiffness", withMember({ EIz: Infinity })],
    [
      "a support on no node",
      { ...model, supports: [{ node: -1, holds: ["fixed", "fixed", "fixed", "fixed", "fixed", "fixed"] }] },
    ],
    ["a contact without a unit normal", { ...model, contacts: [{ from: 4, to: "ground", normal: [0, 0, 2], gap: 0 }] }],
    [
      "a spring softer than nothing",
      { ...model, springs: [{ from: 4, to: "ground", axes: first.axes, stiffness: [-1, 0, 0, 0, 0, 0] }] },
    ],
  ] as const)("%s", (_, wrong) => {
    expect(() => prepareFrame(wrong as FrameModel)).toThrow(MechanicsInputError);
  });

  test("a load beyond the end of its member, and a load that is no number", () => {
    const frame = prepareFrame(model);
    const point = (along: number, force: number) => () =>
      solveFrame(frame, [{ members: [{ kind: "point", member: 0, along, force: [force, 0, 0] }] }], [[1]]);
    expect(point(50, 1)).toThrow(MechanicsInputError);
    expect(point(0.1, Number.NaN)).toThrow(MechanicsInputError);
  });
});
