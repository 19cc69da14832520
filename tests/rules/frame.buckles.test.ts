import { describe, expect, it } from "vitest";
import { GRAVITY } from "../../src/facts/acting.ts";
import { factOf } from "../../src/facts/fact.ts";
import { gathered, masses } from "../../src/facts/mass.ts";
import { response } from "../../src/facts/response.ts";
import { sectionOf } from "../../src/facts/sections.ts";
import { stability } from "../../src/facts/stability.ts";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/frame.buckles.ts";
import { referenceCheck } from "../references/load-reference.ts";
import { OWN, PARTIAL } from "./hung-rails.ts";
import { PORTAL, portal, testedBracket } from "./portal.ts";
import { frameFrom } from "./table.ts";

/** Least x > 0 with x tan x = c, by bisection below π/2. */
function xTanX(c: number): number {
  let [low, high] = [0, Math.PI / 2];
  for (let i = 0; i < 60; i += 1) {
    const x = (low + high) / 2;
    if (x * Math.tan(x) < c) low = x;
    else high = x;
  }
  return low;
}

/** Load on the rails, N/mm, that presses: 1.5 times it is the strength combination. */
function loaded(connector: string, line: number) {
  const file = portal(connector);
  for (const load of file.loads ?? []) load.line = line;
  return file;
}

/** α_cr of the portals by hand: critical force of a leg over what 1.35 weight + 1.5 load puts on it. */
function byHand(stiffness: number, line: number, [G, Q] = PARTIAL): number {
  const frame = frameFrom(loaded("tested", line), testedBracket("tested", stiffness));
  const EI = (name: string): number => {
    const profile = frame.stock.profiles.get(name);
    if (!profile) throw new Error(name);
    return 70e9 * sectionOf(profile).Iz;
  };
  const { height: h, span: b } = PORTAL;
  const corner = 1 / (b / (6 * EI("40x80-8")) + 1 / stiffness);
  const x = xTanX((corner * h) / EI("40x40-8"));
  const railLength = 1.42; // between the faces of the legs
  const weight = G * gathered(factOf(masses, frame).own).mass * GRAVITY + Q * 2 * line * 1e3 * railLength;
  return (EI("40x40-8") * (x / h) ** 2) / (weight / 4);
}

describe("stability of the whole frame", () => {
  it("columns.portal.sway-pinned.g1: the equation used here gives the reference (Timoshenko and Gere, ch. 2)", () => {
    const { expected } = referenceCheck("columns", "columns.portal.sway-pinned.g1");
    const { P_h2_EI } = expected.value as { P_h2_EI: number };
    expect(xTanX(6) ** 2).toBeCloseTo(P_h2_EI, 4);
  });

  it.each([2.5e3, 8e3, 25e3, 1e8])(
    "is that of a portal free to sway with corner springs of %d N·m/rad (Timoshenko and Gere, ch. 2)",
    (k) => {
      const frame = frameFrom(loaded("tested", 4), testedBracket("tested", k));
      const { governing } = factOf(stability, frame);
      expect(governing?.mode.factor).toBeDefined();
      expect(Math.abs((governing?.mode.factor ?? 0) / byHand(k, 4) - 1)).toBeLessThan(0.06);
    },
  );

  it("amplifies sway by 1/(1 − 1/α) between 3 and 10, and not from 10 on", () => {
    const of = (line: number, method: NonNullable<FrameFile["method"]> = "partial-factors") => {
      const frame = frameFrom({ ...loaded("tested", line), method }, testedBracket("tested", 8e3));
      const known = factOf(stability, frame);
      const found = factOf(response, frame);
      const view = known.governing?.view;
      if (found.kind !== "solved" || !view || !known.governing) throw new Error("not solved");
      return { factor: known.governing.mode.factor, grown: known.amplification(view.combination) };
    };
    const heavy = of(4);
    expect(heavy.factor).toBeLessThan(10);
    expect(heavy.grown).toBeCloseTo(heavy.factor / (heavy.factor - 1), 12);
    const light = of(0.5);
    expect(light.factor).toBeGreaterThan(10);
    expect(light.grown).toBe(1);
    // As if the loads were 1.5 times as large, in the manner of AISC 360-16, C2.1(4) (from memory).
    const own = of(4, "allowable-stress");
    expect(own.factor / heavy.factor).toBeCloseTo(1.5, 1);
    expect(own.grown).toBeCloseTo(1 / (1 - 1.5 / own.factor), 12);
  });

  it("looks at the heaviest load also where every foot is anchored, whatever the order of the cases", () => {
    const file = loaded("tested", 4);
    const legs = ["leg-1", "leg-2", "leg-3", "leg-4"] as const;
    for (const bar of file.bars)
      if (legs.some((id) => id === bar.id)) bar.from = [bar.from[0], bar.from[1], 45] as typeof bar.from;
    file.stands = [{ part: "foot-40-M8", bars: [...legs], hold: "anchored" }];
    const light = (["dust", "label", "lamp"] as const).map((id) => ({ case: id, on: "top-1", line: 0.001 }) as const);
    file.loads = [...light, ...(file.loads ?? [])] as NonNullable<FrameFile["loads"]>;
    const { governing } = factOf(stability, frameFrom(file, testedBracket("tested", 8e3)));
    expect(governing?.view.combination.name).toContain("1.5 goods");
    // Legs shorter by the foot, anchored feet that turn hardly less than the bare floor lets them.
    expect(governing?.mode.factor).toBeGreaterThan(byHand(8e3, 4));
    expect(governing?.mode.factor).toBeLessThan(1.5 * byHand(8e3, 4));
  });

  it("finds the lighter of cases that exclude each other where that presses a mast", () => {
    const file = portal();
    file.bars.push({ id: "mast", profile: "40x40-8", from: [750, 20, 840], to: [750, 20, 2600] });
    file.joints?.push({
      bars: ["mast/from"],
      by: [
        { connector: "inside-bracket-40", on: "+x" },
        { connector: "inside-bracket-40", on: "-x" },
      ],
    });
    const heavy = ["sacks", "drums", "crates"];
    // Each alone: none of these acts with another.
    file.cases = ["flag", ...heavy].map((id, i, all) => ({ id, excludes: all.slice(i + 1) }));
    file.loads = [
      ...heavy.map((id) => ({ case: id, on: ["top-1", "top-3"], line: 1 })),
      { case: "flag", on: "mast", force: 900, at: 1700 },
    ] as NonNullable<FrameFile["loads"]>;
    const frame = frameFrom(file);
    const { governing } = factOf(stability, frame);
    expect(governing?.view.combination.name).toContain("1.5 flag");
    // A mast clamped at its foot would bear π² EI / 4 L² (Euler); its brackets and the rail under it give.
    const profile = frame.stock.profiles.get("40x40-8");
    if (!profile) throw new Error("no such profile");
    const clamped = (Math.PI ** 2 * 70e9 * sectionOf(profile).Iz) / (4 * 1.7 ** 2) / (1.5 * 900);
    expect(governing?.mode.factor).toBeLessThan(clamped);
  });

  it("proves the rule", () => {
    // By proportion of the load: where 1.5 q dominates, α = 3 at q = 4 α(4) / 3.
    const critical = (4 * byHand(8e3, 4)) / 3;
    const lighter = (1.08 * 4 * byHand(8e3, 4, OWN)) / 6;
    const put = (line: number) => (file: ReturnType<typeof portal>) => {
      for (const load of file.loads ?? []) load.line = line;
    };
    const stock = [testedBracket("tested", 8e3)];
    const wrong = proveRule(
      rule,
      loaded("tested", 1),
      [
        { title: "a little less than the load at which α_cr is 3", edit: put(0.98 * critical), finds: [] },
        {
          title: "a little more than the load at which α_cr is 3",
          edit: put(1.08 * critical),
          finds: [{ at: "frame", key: "buckles", measured: byHand(8e3, 1.08 * critical), within: 0.06 }],
        },
        {
          title: "by allowable stress, safety factor 2: loads at their own size against 6",
          edit: (file) => {
            put(lighter)(file);
            file.method = "allowable-stress";
            file.criteria = { "safety-factor": 2 };
          },
          finds: [{ at: "frame", key: "buckles", measured: byHand(8e3, lighter, OWN), within: 0.06 }],
        },
        {
          title: "that load where the house is content with 2",
          edit: (file) => {
            put(1.08 * critical)(file);
            file.criteria = { "critical-factor": 2 };
          },
          finds: [],
        },
      ],
      stock.map((value, i) => ({ file: `${i}.stock.json`, bytes: new TextEncoder().encode(JSON.stringify(value)) })),
    );
    expect(wrong).toEqual([]);
  });
});
