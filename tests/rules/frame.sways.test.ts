import { describe, expect, it } from "vitest";
import { GRAVITY } from "../../src/facts/acting.ts";
import { factOf } from "../../src/facts/fact.ts";
import type { Bound } from "../../src/facts/joint-stiffness.ts";
import { gathered, masses } from "../../src/facts/mass.ts";
import { sectionOf } from "../../src/facts/sections.ts";
import { type Solved, soundAbove, stiffnessAt } from "../../src/facts/sound-above.ts";
import { sways } from "../../src/facts/sway.ts";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/frame.sways.ts";
import { PORTAL, portal, testedBracket } from "./portal.ts";
import { frameFrom } from "./table.ts";

const PUSH = 150;

/** Largest sway along x, m, of portals whose brackets have this stiffness, N·m/rad. */
function swayWith(stiffness: number, shelf: boolean): number {
  const frame = frameFrom(portal("tested", shelf), testedBracket("tested", stiffness));
  const along = factOf(sways, frame).filter((sway) => sway.axis === 0);
  expect(along.length).toBeGreaterThan(0);
  return along.reduce((most, { amount }) => Math.max(most, amount), 0);
}

/**
 * Two-hinged portal pushed at its head, four legs sharing: the leg bends as a cantilever from the corner, the corner turns
 * with the half rail and its spring. Slope-deflection, shear left out.
 */
function byHand(
  stiffness: number,
  EIleg: number,
  EIrail: number,
  { span: b, push } = { span: PORTAL.span, push: PUSH },
): number {
  const { height: h } = PORTAL;
  const leg = push / 4;
  return (leg * h ** 3) / (3 * EIleg) + leg * h ** 2 * (b / (6 * EIrail) + 1 / stiffness);
}

describe("sway of a frame", () => {
  const frame = frameFrom(portal());
  const E = 70e9;
  const of = (name: string, axis: "Iy" | "Iz"): number => {
    const profile = frame.stock.profiles.get(name);
    if (!profile) throw new Error(name);
    return E * sectionOf(profile)[axis];
  };
  const [EIleg, EIrail] = [of("40x40-8", "Iz"), of("40x80-8", "Iz")];

  it.each([2.5e3, 5e3, 10e3, 20e3])(
    "is that of the two-hinged portal with corner springs of %d N·m/rad (slope-deflection)",
    (k) => {
      expect(swayWith(k, false) / byHand(k, EIleg, EIrail)).toBeCloseTo(1, 1);
    },
  );

  // A bench of 1500 x 750 x 860 under 250 N, worked out apart from this program as a plane frame: H over its sway.
  it.each([
    [2.5e3, true, 99],
    [5e3, true, 184],
    [10e3, true, 322],
    [20e3, true, 516],
    [1e8, true, 1292],
    [2.5e3, false, 48],
    [5e3, false, 88],
    [10e3, false, 148],
    [20e3, false, 225],
  ])(
    "with joints of %d N·m/rad and shelf rails %s is within 10 % of H/%d of a plane frame under 250 N",
    (k, shelf, divisor) => {
      const H = 0.86;
      const sway = (swayWith(k, shelf) * 250) / PUSH;
      expect(Math.abs(H / sway / divisor - 1)).toBeLessThan(0.1);
    },
  );

  it.each([
    [true, 99, 184, 322, 516, 1292],
    [false, 48, 88, 148, 225, undefined],
  ])(
    "at a stiffness between is found by the fit through three, with shelf rails %s",
    (_, soft, between, typical, stiff, rigid) => {
      const at = (stiffness: number, divisor: number): Solved => ({ stiffness, value: 1 / divisor });
      const known = { soft: at(2.5e3, soft), typical: at(10e3, typical), stiff: at(20e3, stiff) };
      expect(Math.abs((stiffnessAt(known, 1 / between) ?? 0) / 5e3 - 1)).toBeLessThan(0.01);
      if (rigid === undefined) return;
      // From rigid joints as the stiffest of three the fit finds the two between them as well.
      const fromRigid = { ...known, stiff: at(1e12, rigid) };
      expect(Math.abs((stiffnessAt(fromRigid, 1 / stiff) ?? 0) / 20e3 - 1)).toBeLessThan(0.01);
    },
  );

  it("keeps its limit at the stiffness that the finding names, solved again with brackets tested at that", () => {
    const amounts = factOf(sways, frameFrom(portal("inside-bracket-40"))).filter(({ axis }) => axis === 0);
    const most = (bound: Bound): number =>
      Math.max(...amounts.filter(({ view }) => view.bound === bound).map(({ amount }) => amount));
    const values = { soft: most("soft"), typical: most("typical"), stiff: most("stiff") };
    for (const share of [0.2, 0.5, 0.8]) {
      const limit = values.stiff + share * (values.soft - values.stiff);
      const named = soundAbove(values, limit, "at most") ?? 0;
      // Rounded up to two digits: on the safe side, by no more than a tenth.
      expect(swayWith(named, false) / limit).toBeLessThan(1.02);
      expect(swayWith(named, false) / limit).toBeGreaterThan(0.9);
    }
    expect(soundAbove(values, 2 * values.soft, "at most")).toBeUndefined();
    expect(soundAbove({ ...values, typical: 2 * values.soft }, values.soft, "at most")).toBeUndefined();
  });

  it("of a frame so light that the push would tip it is tried with nine tenths of what does", () => {
    const light = frameFrom({ ...portal("tested"), loads: [] }, testedBracket("tested", 8e3));
    const weight = gathered(factOf(masses, light).own).mass * GRAVITY;
    // The middle of the weight is 0.355 m inside the line through two legs; the push comes at 0.84 m.
    const push = (0.9 * weight * 0.355) / PORTAL.height;
    expect(push).toBeLessThan(PUSH);
    const across = factOf(sways, light).find(({ axis, view }) => axis === 1 && view.bound === "typical");
    expect(across?.view.combination.name).toBe(`self-weight + a push of ${Math.round(push)} N along +y`);
    // Rails are short beside the depth of the legs: a tenth.
    const hand = byHand(8e3, EIleg, EIrail, { span: 0.71, push });
    expect(Math.abs((across?.amount ?? 0) / hand - 1)).toBeLessThan(0.1);
  });

  it("names no stiffness where it is stiff joints that go beyond a limit", () => {
    const rising = { soft: 0.742, typical: 1.09, stiff: 1.28 };
    expect(soundAbove(rising, 1, "at most")).toBeUndefined();
    // The same values as a factor that must be reached are kept from a stiffness on between soft and typical.
    const named = soundAbove(rising, 1, "at least") ?? 0;
    expect(named).toBeGreaterThan(2.5e3);
    expect(named).toBeLessThan(8e3);
  });

  it("proves the rule", () => {
    // One plain bracket a corner: 8 kN·m/rad usually, 2.5 when soft.
    const [usual, soft] = [byHand(8e3, EIleg, EIrail), byHand(2.5e3, EIleg, EIrail)];
    const bare = (limit: number) => (file: FrameFile) => {
      Object.assign(file, portal(), { criteria: { sway: `${(1e3 * limit).toFixed(3)} mm` } });
    };
    expect(
      proveRule(rule, portal("inside-bracket-40", true), [
        {
          title: "no shelf rails, and a limit a little below what they give",
          edit: bare(0.94 * usual),
          finds: [{ at: "frame", key: "sways", measured: usual, within: 0.05 }],
        },
        {
          title: "no shelf rails, and a limit that only soft joints go beyond: a note",
          edit: bare(1.06 * usual),
          finds: [{ at: "frame", key: "sways", measured: soft, within: 0.05 }],
        },
        { title: "a limit that soft joints keep as well", edit: bare(1.1 * soft), finds: [] },
        {
          title: "h / 150 with shelf rails",
          edit: (file) => {
            file.criteria = { sway: { value: "span / 150", basis: "house practice" } };
          },
          finds: [],
        },
      ]),
    ).toEqual([]);
  });
});
