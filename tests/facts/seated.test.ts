import { describe, expect, it } from "vitest";
import { factOf } from "../../src/facts/fact.ts";
import { jointForces } from "../../src/facts/joint-forces.ts";
import { response } from "../../src/facts/response.ts";
import { NEAR, seatsInstead } from "../../src/facts/seat-instead.ts";
import { seated } from "../../src/facts/seated.ts";
import { stockInForce } from "../../src/inspection/stock-in-force.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { readFrame } from "../../src/model/read-frame.ts";
import { si } from "../../src/model/units/quantity.ts";
import { barData, testedBrackets } from "../rules/gantry.ts";
import { hungRails, RAIL } from "../rules/hung-rails.ts";
import { one } from "./known.ts";

/** Brackets that turn like hinges, so that statics alone says what the ends of a rail bear. */
const HINGED = stockInForce([testedBrackets(40, 1)]).stock;
const COMBINATION = "1.35 self-weight + 1.5 goods";
const P = 500;
/** From the left leg's face to the load, and from face to axis of a leg, m. */
const [A, HALF] = [0.24, 0.02];

/** Both rails with one force a quarter of the way along; each weighs its own. */
const file: FrameFile = {
  ...hungRails(0, 820),
  loads: [{ case: "goods", on: ["front", "back"], force: P, at: 1000 * (HALF + A) }],
};
const { frame } = readFrame({
  file: "seats.frame.json",
  bytes: new TextEncoder().encode(JSON.stringify(file)),
  stock: HINGED,
});
const weight = (1.35 * barData("40x40-8").weight * RAIL) / 2;

describe("a rail that hangs between posts", () => {
  const all = ["front.from", "front.to", "back.from", "back.to"];
  const sitting = factOf(seated, one(frame)).together(all);
  const vertical = (joint: string): number => {
    const found = factOf(response, one(frame));
    if (found.kind !== "solved") throw new Error(found.kind);
    const of = one(factOf(jointForces, one(frame)).find(({ link }) => link.joint.id === joint));
    const view = one(
      found.views.find(({ combination, bound }) => combination.name === COMBINATION && bound === "typical"),
    );
    return view.link(of.index)[1];
  };

  it("passes P (c − a)/c at the faces of the posts where it hangs", () => {
    expect(vertical("front.from")).toBeCloseTo((1.5 * P * (RAIL - A)) / RAIL + weight, 1);
    expect(vertical("front.to")).toBeCloseTo((1.5 * P * A) / RAIL + weight, 1);
  });

  it("bears P (c + h/2 − a)/(c + h) on the axes of the posts where it sits", () => {
    const push = (joint: string): number => one(sitting(joint, COMBINATION)).push;
    const [span, from] = [RAIL + 2 * HALF, A + HALF];
    expect(push("front.from")).toBeCloseTo((1.5 * P * (span - from)) / span + weight, 1);
    expect(push("front.to")).toBeCloseTo((1.5 * P * from) / span + weight, 1);
    expect(push("back.to")).toBeCloseTo(push("front.to"), 1);
  });

  it("leaves no weight to the screws it is seated beside, and all of it to those it is not", () => {
    const { view } = one(sitting("front.from", COMBINATION));
    const alone = factOf(seated, one(frame)).together(["front.from"]);
    for (const joint of factOf(jointForces, one(frame)).filter(({ link }) => all.includes(link.joint.id))) {
      const borne = (from: typeof view): number => Math.max(...joint.borne(from, "weight").clamps.map((c) => c.shear));
      expect(borne(view)).toBeLessThan(1e-6);
      const { view: other } = one(alone("front.from", COMBINATION));
      if (joint.link.joint.id === "back.from") expect(borne(other)).toBeCloseTo(vertical("back.from"), 1);
    }
  });

  it("is not seated where it cannot be, nor where no load is known by that name", () => {
    expect(factOf(seated, one(frame)).together(["cross-1.from"])("cross-1.from", COMBINATION)).toBeUndefined();
    expect(sitting("front.from", "3 goods")).toBeUndefined();
  });
});

it("joints are compared with their seats from near their limit on, the nearest first", () => {
  const asked: string[][] = [];
  const hung = (joint: string, measured: number) => ({
    joint,
    borne: { borne: () => ({ clamps: [] }) },
    friction: { value: 0.15, factor: 1.25, divided: 1 },
    governed: { measured: si(measured, "ratio"), under: { combination: COMBINATION, bound: "typical" } as const },
    allowed: 0.6,
  });
  const together = (joints: readonly string[]) => {
    asked.push([...joints]);
    return () => undefined;
  };
  seatsInstead({ together }, [hung("far", 0.99 * NEAR * 0.6), hung("near", NEAR * 0.6), hung("beyond", 0.7)]);
  seatsInstead({ together }, [hung("far", 0.1)]);
  expect(asked).toEqual([["beyond", "near"]]);
});
