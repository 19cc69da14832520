import { describe, expect, it } from "vitest";
import { bodies } from "../../src/facts/bodies.ts";
import { factOf } from "../../src/facts/fact.ts";
import { footing } from "../../src/facts/footing.ts";
import { frequencies } from "../../src/facts/frequencies.ts";
import { gathered, masses } from "../../src/facts/mass.ts";
import { massedModel } from "../../src/facts/massed-model.ts";
import { modeLine } from "../../src/facts/mode-line.ts";
import { panelShares } from "../../src/facts/panel-shares.ts";
import { sectionOf } from "../../src/facts/sections.ts";
import { solverModel } from "../../src/facts/solver-model.ts";
import { structure } from "../../src/facts/structure.ts";
import type { Frame } from "../../src/model/frame.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { referenceCheck } from "../references/load-reference.ts";
import { portal, testedBracket } from "../rules/portal.ts";
import { shakenPortal, swaysByHand } from "../rules/shaken-portal.ts";
import { frameFrom, table } from "../rules/table.ts";
import { one } from "./known.ts";

const GIVEN = (name: string, inputs: Readonly<Record<string, { readonly value: unknown }>>): number =>
  Number(one(inputs[name], name).value);

/** Rayleigh: a bar held at its ends by hinges with a mass in its middle, Hz (SI). */
function withMidMass(EI: number, L: number, M: number, mu: number): number {
  return Math.sqrt((48 * EI) / L ** 3 / (M + (17 / 35) * mu * L)) / (2 * Math.PI);
}

function massed(frame: Frame) {
  const [known, all, shares] = [factOf(structure, frame), factOf(bodies, frame), factOf(panelShares, frame)];
  const bare = solverModel(known, all, factOf(footing, frame), frame.stock, "typical", "held", []);
  return massedModel(frame, known, all, shares, bare);
}

/** Mass of a model: its members over their lengths, and what its nodes carry, kg. */
function total({ model }: ReturnType<typeof massed>): number {
  let sum = 0;
  for (const { from, to, massPerLength } of model.members) {
    const [a, b] = [one(model.nodes[from]), one(model.nodes[to])];
    sum += massPerLength * Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]);
  }
  for (const { mass } of model.masses ?? []) sum += mass;
  return sum;
}

describe("masses on the model", () => {
  const heavy = (edit: (file: FrameFile) => void): FrameFile => {
    const file = table();
    edit(file);
    return file;
  };
  it.each([
    ["a table with its top", heavy(() => undefined)],
    [
      "a box in the middle of the top",
      heavy((file) => {
        file.masses = [{ id: "oven", mass: 40, centre: [100, 50, 1000], box: [300, 200, 300], on: ["top"] }];
      }),
    ],
    [
      "a thing that hangs out over one side and would lift the other",
      heavy((file) => {
        file.masses = [{ id: "oven", mass: 40, centre: [100, -900, 1000], on: ["front", "back"] }];
      }),
    ],
  ])("add up to those of all parts: %s", (_, file) => {
    const frame = frameFrom(file);
    const { own, fixed, removable } = factOf(masses, frame);
    const all = gathered([...own, ...fixed, ...removable]).mass;
    const model = massed(frame);
    expect(total(model) / all).toBeCloseTo(1, 3);
    for (const { mass } of model.model.masses ?? []) expect(mass).toBeGreaterThanOrEqual(0);
  });

  it("sit where they rest: a bar is cut in its middle for a mass there", () => {
    const model = massed(frameFrom(shakenPortal(), testedBracket("tested", 8e3)));
    const at = [...model.carrying.values()].flat().map((node) => one(model.model.nodes[node]));
    expect(at).toHaveLength(2);
    for (const [i, x] of [1.48, 0.02].entries())
      for (const [j, c] of [x, 0.375, 0.84].entries()) expect(at[i]?.[j]).toBeCloseTo(c, 9);
  });
});

describe("natural frequencies next to a shaking", () => {
  it("beams.freq.ss-midmass: the equation used here gives the reference (Rayleigh, 17/35)", () => {
    const { inputs, expected } = referenceCheck("beams", "beams.freq.ss-midmass");
    const [E, I, L] = [GIVEN("E", inputs), GIVEN("I", inputs), GIVEN("L", inputs)];
    const got = withMidMass(E * I * 1e-6, L / 1e3, GIVEN("M", inputs), GIVEN("mu", inputs));
    expect(got / Number(expected.value)).toBeCloseTo(1, 3);
  });

  it("include that of a rail with a mass in its middle, as good as hinged at its ends (Rayleigh, 17/35)", () => {
    // Very soft brackets let the rail turn at its ends; between the faces of the legs it is 1420 mm long.
    const [M, L] = [40, 1.42];
    const file = portal("tested");
    const put = (shakes: number): FrameFile => ({
      ...file,
      masses: [{ id: "pump", mass: M, centre: [750, 20, 840], on: ["top-1"], shakes }],
    });
    const frame = frameFrom(put(1), testedBracket("tested", 200));
    const profile = one(frame.stock.profiles.get("40x80-8"));
    const section = sectionOf(profile);
    const density = one(frame.stock.materials.get(profile.material)).density;
    const byHand = withMidMass(70e9 * section.Iz, L, M, density * section.A);
    const shaken = frameFrom(put(0.9 * byHand), testedBracket("tested", 200));
    const above = one(factOf(frequencies, shaken)[0]).next.get("typical")?.above;
    expect(Math.abs((above ?? 0) / byHand - 1)).toBeLessThan(0.05);
  });

  it("come with the way the bar moves: with a heavy mass in its middle as a point load there bends it", () => {
    const frame = frameFrom(
      { ...portal("tested"), masses: [{ id: "pump", mass: 400, centre: [750, 20, 840], on: ["top-1"], shakes: 1 }] },
      testedBracket("tested", 200),
    );
    const way = one(one(factOf(frequencies, frame)[0]).next.get("typical")?.ways.above);
    const line = one(modeLine(way, factOf(structure, frame), one(factOf(bodies, frame).get("top-1")), 9));
    const down = line.moved.map(([, , z]) => z - (line.moved[0]?.[2] ?? 0));
    // Hinged, from x = 0 to its middle: v = P x (3 L² − 4 x²) / 48 E I, so 11/16 of the most at a quarter (Gere and Timoshenko, app. G).
    expect((down[2] ?? 0) / (down[4] ?? 0)).toBeCloseTo(11 / 16, 1);
    expect((down[6] ?? 0) / (down[4] ?? 0)).toBeCloseTo(11 / 16, 1);
    expect(Math.abs((down[8] ?? 0) / (down[4] ?? 0))).toBeLessThan(0.01);
  });

  it.each([2.5e3, 8e3, 25e3])(
    "include the sway of a portal with a mass at its head, corner springs of %d N·m/rad (single degree of freedom)",
    (k) => {
      const { x, y, turn } = swaysByHand(k);
      const of = (shakes: number) => {
        const [found] = factOf(frequencies, frameFrom(shakenPortal(shakes), testedBracket("tested", k)));
        return one(found?.next.get("typical"));
      };
      const lowest = of(0.5 * x);
      expect(lowest.below).toBeUndefined();
      expect(Math.abs(one(lowest.above) / Math.min(x, y, turn) - 1)).toBeLessThan(0.05);
      const over = of(1.5 * turn);
      expect(Math.abs(one(over.below) / Math.max(x, y, turn) - 1)).toBeLessThan(0.05);
    },
  );

  it("are lower with soft joints than with stiff ones", () => {
    const file = shakenPortal(0.1);
    for (const joint of file.joints ?? []) joint.by = [{ connector: "inside-bracket-40", on: "below" }];
    const { next } = one(factOf(frequencies, frameFrom(file))[0]);
    const of = (bound: "soft" | "typical" | "stiff"): number => one(next.get(bound)?.above);
    expect(of("soft")).toBeLessThan(of("typical"));
    expect(of("typical")).toBeLessThan(of("stiff"));
  });

  it("are none where nothing shakes", () => {
    expect(factOf(frequencies, frameFrom(shakenPortal(), testedBracket("tested", 8e3)))).toEqual([]);
  });
});
