import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { factOf } from "../../src/facts/fact.ts";
import { footing } from "../../src/facts/footing.ts";
import { response } from "../../src/facts/response.ts";
import { sectionOf } from "../../src/facts/sections.ts";
import { warmth } from "../../src/facts/warmth.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { builtinStock } from "../../src/model/stock/builtin-stock.ts";
import { barOf } from "../rules/base-frames.ts";
import { gantry } from "../rules/gantry.ts";
import { frameFrom } from "../rules/table.ts";
import { known, one } from "./known.ts";

const [SPAN, DEPTH, HEIGHT] = [4, 0.5, 0.6];
const [COLD, WARM] = [-30, 45];

/** The built-in stock, to take a profile from. */
const metric = JSON.parse(readFileSync("src/model/stock/builtin/profiles-metric.stock.json", "utf8")) as {
  readonly series: readonly { readonly name: string }[];
  readonly profiles: readonly { readonly name: string }[];
};

function standing(hold: "anchored" | "rest", temperature: [number, number] = [COLD, WARM], span = SPAN): FrameFile {
  const file = gantry(span * 1000, { depth: DEPTH * 1000, height: HEIGHT * 1000 });
  const stands = (file.stands ?? []).map((stand) => ({ ...stand, hold }));
  return { ...file, stands, site: { place: "outdoors", temperature } };
}

/** Names of the strength combinations in which the weather acts. */
const weather = (file: FrameFile): readonly string[] => {
  const found = known(response, file);
  if (found.kind !== "solved") throw new Error(found.kind);
  return found.views.map(({ combination: { name } }) => name).filter((name) => / (warmth|cold) of /.test(name));
};

describe("a frame that cannot grow", () => {
  const file = standing("anchored");
  const found = known(response, file);
  if (found.kind !== "solved") throw new Error(found.kind);
  const feet = known(footing, file);
  const thrust = (name: string): number => {
    const view = one(found.views.find(({ combination, bound }) => combination.name === name && bound === "typical"));
    return view.reaction(feet.findIndex(({ ref }) => ref.id.startsWith("leg-1"))).force[0];
  };

  it.each([
    ["cold", COLD],
    ["warmth", WARM],
  ] as const)("is bent by %s as a portal on two hinges whose beam grows (slope-deflection)", (word, at) => {
    // EN 1999-1-1, 3.2.5: 23e-6; concrete, EN 1992-1-1, 3.1.3: 10e-6 1/K; from 20 °C; a millimetre of play between the outermost anchors.
    const strain = 13e-6 * (at - 20);
    const felt = strain * (1 - 1e-3 / (Math.abs(strain) * Math.hypot(SPAN, DEPTH)));
    const profile = one(builtinStock().profiles.get("40x40-8"));
    const EI = 7e10 * sectionOf(profile).Iy;
    // Two plain brackets in the plane, 8 kN·m/rad each; both posts go the way of half the growth.
    const k = 2 * 8e3;
    const [h, reach] = [HEIGHT, HEIGHT - 0.02];
    const H = ((felt * SPAN) / 2) * (1 / (reach ** 3 / (3 * EI) + reach ** 2 / k + (h ** 2 * SPAN) / (2 * EI)));
    const found = thrust(`1.35 self-weight + 1.5 ${word} of ${at} °C`) - thrust("1.35 self-weight");
    expect(found / (1.5 * H)).toBeCloseTo(1, 1);
    expect(Math.abs(found / (1.5 * H) - 1)).toBeLessThan(0.03);
  });

  it("is one that is anchored at two feet or more, and would outgrow them by more than a millimetre", () => {
    expect(weather(file)).toHaveLength(6);
    expect(weather(standing("rest"))).toEqual([]);
    expect(weather(standing("anchored", [5, 35]))).toEqual([]);
    expect(weather(standing("anchored", [20, 45], 2))).toEqual([]);
  });

  it("or one of bars that grow unalike, where it rests as well", () => {
    const steel = {
      format: 1,
      units: "mm-N-kg",
      title: "profiles of steel",
      materials: [
        {
          name: "mild",
          elasticModulus: 210000,
          shearModulus: 81000,
          density: 7850,
          expansion: 12e-6,
          proof: 235,
          ultimate: 360,
          bucklingClass: "A",
          source: "EN 1993-1-1:2005, 3.2.6 (from memory)",
        },
      ],
      series: [{ ...one(metric.series.find(({ name }) => name === "40-8")), name: "40-8-steel", material: "mild" }],
      profiles: [
        { ...one(metric.profiles.find(({ name }) => name === "40x40-8")), name: "tube", series: "40-8-steel" },
      ],
    };
    const mixed = standing("rest");
    barOf(mixed, "front").profile = "tube";
    const frame = frameFrom(mixed, steel);
    const cold = one(factOf(warmth, frame).find(({ name }) => name === `cold of ${COLD} °C`));
    const strains = (cold.loads.members ?? []).map((load) => (load.kind === "strain" ? (load.axial ?? 0) : 0));
    // Tube and bars part by (23 − 12)e-6 × 50 K × 4.04 m = 2.22 mm, of which the first is play.
    const length = SPAN + 0.04;
    const felt = 1 - 1e-3 / (11e-6 * (20 - COLD) * length);
    expect((Math.max(...strains) - Math.min(...strains)) / (11e-6 * (20 - COLD) * felt)).toBeCloseTo(1, 6);
  });
});
