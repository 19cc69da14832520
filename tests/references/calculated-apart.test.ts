/**
 * Numbers calculated apart from this program, by a plane frame and a Monte Carlo of screw slip: each has to come out here within 10 %.
 * The sway of the bench is in tests/rules/frame.sways.test.ts, the scatter of one screw in tests/mechanics/fasteners.test.ts, and the
 * two feet across the corner that bear half the weight each in tests/facts/odd-floors.test.ts.
 */
import { describe, expect, it } from "vitest";
import { slipFactor } from "../../src/criteria/slip-factor.ts";
import { bodies } from "../../src/facts/bodies.ts";
import { clamping } from "../../src/facts/clamping.ts";
import { factOf } from "../../src/facts/fact.ts";
import { footing } from "../../src/facts/footing.ts";
import { jointForces } from "../../src/facts/joint-forces.ts";
import { response } from "../../src/facts/response.ts";
import { growthOf } from "../../src/facts/sheet-growth.ts";
import { weightUse } from "../../src/facts/slip-use.ts";
import { solverModel } from "../../src/facts/solver-model.ts";
import { structure } from "../../src/facts/structure.ts";
import { prepareFrame } from "../../src/mechanics/frame.ts";
import { naturalModes } from "../../src/mechanics/stability/frequency.ts";
import { builtinStock } from "../../src/model/stock/builtin-stock.ts";
import { forceFor, hungRails } from "../rules/hung-rails.ts";
import { portal, testedBracket } from "../rules/portal.ts";
import { frameFrom } from "../rules/table.ts";

const WITHIN = 0.1;
const near = (found: number, calculated: number): void => {
  expect(Math.abs(found / calculated - 1), `${found} against ${calculated}`).toBeLessThan(WITHIN);
};

const FRICTION = { value: 0.15, factor: 1.25, divided: 1 };

describe("calculated apart: 2D bench frame, Monte Carlo of screw slip", () => {
  it.each([
    { what: "1.5 kPa on a bench, 0.77 kN a rail end, one bracket", shear: 770, brackets: 1, calculated: 0.92 },
    { what: "the same, two brackets", shear: 770, brackets: 2, calculated: 0.46 },
    { what: "5 kPa, 2.18 kN a rail end, two brackets", shear: 2180, brackets: 2, calculated: 1.3 },
  ])("$what: $calculated of the 5 % slip load over 1.25, by weight alone", ({ shear, brackets, calculated }) => {
    expect(slipFactor.standard).toBe(String(FRICTION.factor));
    const file = hungRails(forceFor(shear));
    if (brackets === 2) file.kits?.rail?.push({ connector: "inside-bracket-40", on: "above", torque: "20 N·m" });
    const frame = frameFrom(file);
    const found = factOf(response, frame);
    if (found.kind !== "solved") throw new Error(found.kind);
    const joints = factOf(jointForces, frame).filter(({ link }) => /^(front|back)\./.test(link.joint.id));
    expect(joints).toHaveLength(4);
    for (const joint of joints) near(weightUse(found.views, joint, FRICTION)?.measured ?? 0, calculated);
  });

  it("one M8 at 5 to 8 kN holds a turn of 6 to 12 N·m: µ F r, 8 to 10 mm under its head", () => {
    const radii = ["inside-bracket-40", "gusset-bracket-40"].flatMap((connector) =>
      factOf(clamping, frameFrom(portal(connector))).all.map(({ radius }) => radius),
    );
    expect(radii.length).toBeGreaterThan(0);
    const turn = (preload: number, radius: number): number => FRICTION.value * preload * radius;
    for (const radius of radii) {
      expect(turn(5e3, radius)).toBeGreaterThan((1 - WITHIN) * 6);
      expect(turn(8e3, radius)).toBeLessThan((1 + WITHIN) * 12);
    }
    near(turn(5e3, Math.min(...radii)), 6);
  });

  it("1 m of polycarbonate grows by 1.3 mm more than aluminium in 30 K: (68 − 23.5)e-6 × 1 m × 30 K", () => {
    const sheet = builtinStock().sheets.get("polycarbonate-5");
    if (!sheet) throw new Error("no such sheet");
    const C = 273.15;
    const site = { place: "indoors", temperature: [20 + C, 50 + C], vibration: "none", reach: "trained" } as const;
    near(growthOf(sheet, 23.5e-6, site).most * 1, 1.3e-3);
  });

  /** First frequencies of the bench of 1500 x 750 x 860 with this much on its top rails, feet held by friction, Hz. */
  function slowest(kg: number, stiffness: number, shelf: boolean): number {
    const frame = frameFrom(portal("tested", shelf), testedBracket("tested", stiffness));
    const [known, all] = [factOf(structure, frame), factOf(bodies, frame)];
    const bare = solverModel(known, all, factOf(footing, frame), frame.stock, "typical", "held", []);
    const tops = known.nodes.flatMap(({ bar }, node) => (/^top-/.test(bar) ? [node] : []));
    const masses = tops.map((node) => ({ node, mass: kg / tops.length }));
    const found = naturalModes(prepareFrame({ ...bare, masses }), 1);
    if (found.kind !== "modes") throw new Error(found.kind);
    return found.modes[0]?.frequency ?? 0;
  }

  it("loaded benches swing at 2 to 4 Hz", () => {
    const kg = (1.5e3 * 1.5 * 0.75) / 9.80665; // 1.5 kPa
    const found = [5e3, 10e3, 20e3].map((stiffness) => slowest(kg, stiffness, true));
    for (const frequency of found) {
      expect(frequency).toBeGreaterThan((1 - WITHIN) * 2);
      expect(frequency).toBeLessThan((1 + WITHIN) * 4);
    }
  });
});
