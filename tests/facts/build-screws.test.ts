import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { buildOrder } from "../../src/facts/build-order.ts";
import { buildPlan, type PlannedStep, type Tightening } from "../../src/facts/build-plan.ts";
import { factOf } from "../../src/facts/fact.ts";
import { partCounts } from "../../src/facts/part-counts.ts";
import type { Frame } from "../../src/model/frame.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { frameOf, one } from "./known.ts";

const read = (path: string): Frame => frameOf(JSON.parse(readFileSync(path, "utf8")) as FrameFile);
const guard = read("docs/demo/mixer-guard.frame.json");
const cabinet = read("tests/defects/frames/seed-cabinet.frame.json");
const table = read("tests/defects/frames/timber-table.frame.json");

const stepOf = (frame: Frame, part: string): PlannedStep => {
  const number = one(factOf(buildOrder, frame).placedAt(part), part);
  const all = factOf(buildPlan, frame).flatMap(({ steps }) => steps);
  return one(all.find(({ step }) => step.number === number));
};
const total = (lines: readonly Tightening[]): number => lines.reduce((sum, { count }) => sum + count, 0);

describe("screws of ties", () => {
  it("are tightened while their two bars lie by themselves, before a bracket covers their holes", () => {
    const order = factOf(buildOrder, table);
    const step = one(order.tightenedAt("tie-front/2/a1"));
    const there = order.presentAt(step);
    expect(["front", "front-upper"].filter((bar) => there.has(bar))).toHaveLength(2);
    expect([...there].filter((part) => part.startsWith("leg-"))).toEqual([]);
    expect(step).toBeLessThan(one(order.placedAt("leg-1.to/1")));
  });

  it("are twelve to a beam, to the torque of the lips, and have no diagonals to square", () => {
    const piece = one(factOf(buildPlan, table).find(({ bars }) => bars.join() === "front,front-upper"));
    expect(piece.squareWithin).toBeUndefined();
    const square = one(piece.steps.find(({ step }) => step.what === "square"));
    expect(square.tightens).toMatchObject([{ screw: "M8x16-button", count: 12 }]);
    // The same thread in the same slot as that of the brackets.
    const bracket = one(stepOf(table, "leg-1.to/1/b1").step.number);
    expect(bracket).toBeGreaterThan(square.step.number);
    const torques = factOf(buildPlan, table).flatMap(({ steps }) => steps.flatMap(({ tightens }) => tightens));
    expect(new Set(torques.map(({ torque }) => torque)).size).toBe(1);
  });

  it("go in one by one with a group of the author's that has one of the bars", () => {
    const file = JSON.parse(readFileSync("tests/defects/frames/timber-table.frame.json", "utf8")) as FrameFile;
    file.groups = [{ id: "trestle", parts: ["leg-1", "leg-2", "front"] }];
    const order = factOf(buildOrder, frameOf(file));
    expect(order.presentAt(one(order.tightenedAt("tie-front/2/a1"))).has("leg-1")).toBe(true);
  });
});

describe("what is put on the square frame", () => {
  it("is screwed on as it is put on: a wall with all its screws, no torque rated", () => {
    const wall = stepOf(cabinet, "wall-back");
    expect(wall.tightens).toEqual([]);
    // Two posts of 1135 mm, 1115 and 920 between the insets: six, six, five and five at most 250 mm apart.
    expect(wall.fixes).toEqual([{ screw: "screw such as M8x16-button", count: 22, torque: undefined, lock: "none" }]);
  });

  it("is hung as it is put in: eight screws of hinges and two of the latch, with the file's lock", () => {
    const door = stepOf(guard, "door/hinge-1");
    expect(door.connectors).toEqual([
      { name: "hinge-40", count: 2 },
      { name: "pivot-40", count: 1 },
    ]);
    expect(door.fixes).toMatchObject([{ screw: "M8x16", count: 10, lock: "washer" }]);
    expect(one(door.fixes[0]).torque).toBeGreaterThan(0);
  });
});

it("every screw that lies on the bench is tightened at some step, once", () => {
  for (const frame of [guard, cabinet, table]) {
    const steps = factOf(buildPlan, frame).flatMap((piece) => piece.steps);
    const bench = factOf(partCounts, frame).filter(({ kind }) => kind === "screw");
    expect(steps.reduce((sum, { tightens, fixes }) => sum + total(tightens) + total(fixes), 0)).toBe(
      bench.reduce((sum, { count }) => sum + count, 0),
    );
  }
});
