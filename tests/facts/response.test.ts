import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { acting, GRAVITY } from "../../src/facts/acting.ts";
import { combinations } from "../../src/facts/combinations.ts";
import { factOf } from "../../src/facts/fact.ts";
import { footing } from "../../src/facts/footing.ts";
import { appliedLoads, sumOf } from "../../src/facts/free-body.ts";
import { masses } from "../../src/facts/mass.ts";
import { response } from "../../src/facts/response.ts";
import { sags as bent } from "../../src/facts/sag.ts";
import { regionKey, sectionOf } from "../../src/facts/sections.ts";
import { spans } from "../../src/facts/spans.ts";
import { spreadForce } from "../../src/facts/spread-force.ts";
import { structure } from "../../src/facts/structure.ts";
import { add, cross, length, subtract, type Vec3 } from "../../src/geometry/vector.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { builtinStock } from "../../src/model/stock/builtin-stock.ts";
import { sectionProperties } from "../../src/section/section-properties.ts";
import { gantry, load } from "../rules/gantry.ts";
import { frameOf, known, one } from "./known.ts";

const demos = ["first-bench", "potting-bench", "mixer-guard", "sack-cart", "tray-rack"] as const;
const fileOf = (demo: string): FrameFile =>
  JSON.parse(readFileSync(`docs/demo/${demo}.frame.json`, "utf8")) as FrameFile;

describe.each(demos)("%s", (demo) => {
  const frame = frameOf(fileOf(demo));

  it("weighs what its bars, panels, connectors and fixed things weigh", () => {
    const { own, fixed } = factOf(masses, frame);
    // Feet and casters stand on the floor by themselves.
    const carried = [...own, ...fixed].filter((weight) => weight.ref.kind !== "stand");
    const weight = carried.reduce((sum, part) => sum + part.mass, 0) * GRAVITY;
    const self = one(factOf(acting, frame).cases.find((c) => c.kind === "permanent"));
    const { force } = sumOf(appliedLoads(factOf(structure, frame), [self.loads], [1]));
    expect(-force[2] / weight).toBeCloseTo(1, 9);
  });

  it("rests: loads and feet of every combination sum to nothing", () => {
    const found = factOf(response, frame);
    if (found.kind !== "solved") throw new Error(found.kind);
    const feet = factOf(footing, frame);
    const { cases } = factOf(combinations, frame);
    const bodies = factOf(structure, frame);
    for (const view of found.views) {
      const all = [...appliedLoads(bodies, cases, view.combination.factors), ...feet.map((_, i) => view.reaction(i))];
      const sum = sumOf(all);
      expect(length(sum.force) / sum.forces, view.combination.name).toBeLessThan(1e-9);
      expect(length(sum.moment) / sum.moments, view.combination.name).toBeLessThan(1e-9);
    }
  });
});

describe("the response", () => {
  const sags = (file: FrameFile, bar: string): readonly number[] => {
    const found = known(response, file);
    if (found.kind !== "solved") throw new Error(found.kind);
    const [span] = known(spans, file).get(bar) ?? [];
    return found.views.map((view) => known(bent, file).of(view, bar, one(span)) ?? Number.NaN);
  };
  const loaded = (): FrameFile => {
    const file = gantry();
    load(file, { line: 0.5 });
    return file;
  };

  it("of a symmetric frame is symmetric", () => {
    const file = loaded();
    const front = sags(file, "front");
    const back = sags(file, "back");
    // Pushes along +y and −y change places.
    const service = front.map((value, i) => [value, back[i] ?? 0] as const).filter(([a]) => a > 0);
    expect(service.length).toBeGreaterThan(0);
    expect(Math.max(...front)).toBeCloseTo(Math.max(...back), 12);
    expect(front[0]).toBeCloseTo(one(back[0]), 12);
  });

  it("turned by 90° about the upright is the same", () => {
    const turned = loaded();
    for (const bar of turned.bars) {
      const turn = ([x, y, z]: readonly unknown[]) => [-Number(y), x, z];
      bar.from = turn(bar.from) as typeof bar.from;
      bar.to = turn(bar.to) as typeof bar.to;
    }
    for (const kit of Object.values(turned.kits ?? {}))
      for (const item of kit ?? []) item.on = item.on === "+x" ? "+y" : "-y";
    const before = [...sags(loaded(), "front")].sort((a, b) => a - b);
    const after = [...sags(turned, "front")].sort((a, b) => a - b);
    expect(after).toHaveLength(before.length);
    for (const [i, value] of after.entries()) expect(value / one(before[i])).toBeCloseTo(1, 6);
  });
});

describe("spans", () => {
  it("of a beam over three posts are two, and its long end an overhang", () => {
    const file = gantry(1000, { past: 300 });
    file.bars.push({ id: "middle", profile: "40x40-8", from: [500, 0, 50], to: [500, 0, 600] });
    file.joints?.push({ bars: ["middle"], ends: "to", by: "post" });
    file.stands?.push({ part: "foot-40-M8", bars: ["middle"] });
    const found = known(spans, file).get("front") ?? [];
    expect(found.map((span) => [span.kind, Math.round(span.length * 1000)])).toEqual([
      ["between", 500],
      ["between", 500],
      ["overhang", 300],
    ]);
  });
});

describe("a force shared among points", () => {
  const sum = (forces: readonly Vec3[], at: readonly Vec3[], about: Vec3) => ({
    force: forces.reduce(add, [0, 0, 0] as Vec3),
    moment: forces.reduce((m, f, i) => add(m, cross(subtract(one(at[i]), about), f)), [0, 0, 0] as Vec3),
  });

  it("keeps force and moment", () => {
    const points: Vec3[] = [
      [0, 0, 0],
      [1, 0, 0],
      [1, 2, 0],
      [0, 2, 0.5],
    ];
    const at: Vec3 = [0.3, 0.4, 1];
    const { force, moment } = sum(spreadForce([10, -20, -300], at, points), points, at);
    for (const [i, expected] of [10, -20, -300].entries()) expect(force[i]).toBeCloseTo(expected, 9);
    for (const m of moment) expect(m).toBeCloseTo(0, 9);
  });

  it("goes by the lever between two points in one line", () => {
    // 100 N a quarter of the way: 75 and 25.
    const forces = spreadForce(
      [0, 0, -100],
      [0.25, 0, 0],
      [
        [0, 0, 0],
        [1, 0, 0],
      ],
    );
    expect(forces.map((f) => f[2])).toEqual([expect.closeTo(-75, 9), expect.closeTo(-25, 9)]);
  });
});

describe("stored sections", () => {
  it.each(["20x20-5", "40x40-8-one-closed"])("of %s are what is computed afresh", (name) => {
    const profile = one(builtinStock().profiles.get(name));
    const fresh = sectionProperties(profile.region);
    expect(sectionOf(profile).A).toBe(fresh.A);
    expect(sectionOf(profile).J / fresh.J).toBeCloseTo(1, 9);
    expect(sectionOf(profile).Wt / fresh.Wt).toBeCloseTo(1, 9);
  });

  it("are told apart by their polygon, to a nanometre", () => {
    const profile = one(builtinStock().profiles.get("40x40-8"));
    const [[y = 0, z = 0] = [], ...rest] = profile.region.outer;
    const moved = { ...profile, region: { ...profile.region, outer: [[y + 2e-9, z] as const, ...rest] } };
    expect(regionKey(moved)).not.toBe(regionKey(profile));
  });
});
