import { describe, expect, it } from "vitest";
import { bodies } from "../../src/facts/bodies.ts";
import { type PanelShare, panelShares } from "../../src/facts/panel-shares.ts";
import { sheets } from "../../src/facts/sheets.ts";
import { add, along, scale, type Vec3 } from "../../src/geometry/vector.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { gantry } from "../rules/gantry.ts";
import { known, one } from "./known.ts";

interface Shared {
  readonly share: PanelShare;
  /** m² by bar, and Σ area × place, m³. */
  readonly by: ReadonlyMap<string, number>;
  readonly total: number;
  readonly first: Vec3;
}

function shared(file: FrameFile): Shared {
  const share = one(known(panelShares, file).get("top"), "share");
  const all = known(bodies, file);
  const by = new Map<string, number>();
  let [total, first]: [number, Vec3] = [0, [0, 0, 0]];
  for (const { bar, from, to, areaPerLength } of share.strips) {
    const body = one(all.get(bar));
    const area = areaPerLength * (to - from);
    by.set(bar, (by.get(bar) ?? 0) + area);
    total += area;
    first = add(first, scale(along(body.bar.from, body.axes.x, (from + to) / 2), area));
  }
  return { share, by, total, first };
}

function topped(
  span: number,
  depth: number,
  bars: readonly string[],
  overhang?: [number, number, number, number],
): FrameFile {
  const file = gantry(span, { depth });
  file.panels = [
    { id: "top", sheet: "plywood-18", held: "laid", bars: [...bars], ...(overhang ? { overhang } : {}) },
  ] as NonNullable<FrameFile["panels"]>;
  return file;
}

describe("shares of a laid panel", () => {
  it("are all of it, half for each of two bars where it spans one way", () => {
    const { by, total, share } = shared(topped(1000, 500, ["front", "back"]));
    expect(total).toBeCloseTo(share.area, 12);
    expect(by.get("front")).toBeCloseTo(share.area / 2, 12);
    expect(by.get("back")).toBeCloseTo(share.area / 2, 12);
  });

  it("are about a quarter for each side of a square of four bars: the beams run through and have the rim", () => {
    const { by, total, share } = shared(topped(600, 600, ["front", "back", "cross-1", "cross-2"]));
    expect(total).toBeCloseTo(share.area, 12);
    for (const part of by.values()) expect(Math.abs(part / share.area - 0.25)).toBeLessThan(0.045);
    expect(by.get("front")).toBeCloseTo(by.get("back") ?? 0, 12);
    expect(by.get("cross-1")).toBeCloseTo(by.get("cross-2") ?? 0, 12);
  });

  it("of an oblong go across the short way: b⁴ : a⁴ (Rankine and Grashof)", () => {
    const { by, share } = shared(topped(1500, 500, ["front", "back", "cross-1", "cross-2"]));
    const short = ((by.get("front") ?? 0) + (by.get("back") ?? 0)) / share.area;
    // Over the inner field the spans stand 1500 : 500, so 81/82 go across.
    expect(short).toBeGreaterThan(0.95);
  });

  it("give a bar in the middle half of what it parts", () => {
    const file = topped(1000, 500, ["cross-1", "cross-2", "middle"]);
    file.bars.push({ id: "middle", profile: "40x40-8", from: [500, 0, 600], to: [500, 500, 600] });
    const { by, total, share } = shared(file);
    expect(total).toBeCloseTo(share.area, 12);
    // The top reaches 20 mm past the outer axes (width 1040): each outer bar has a quarter of 1000 and its edge.
    expect((by.get("middle") ?? 0) / total).toBeGreaterThan(0.45);
    expect(by.get("cross-1")).toBeCloseTo(by.get("cross-2") ?? 0, 9);
  });

  it.each([
    ["between two bars", topped(1000, 500, ["front", "back"])],
    ["on four bars", topped(900, 700, ["front", "back", "cross-1", "cross-2"])],
    ["past one bar", topped(1000, 500, ["front", "back"], [0, 0, 0, 150])],
    ["past the other", topped(1000, 500, ["front", "back"], [0, 0, 120, 0])],
    ["past the ends of two bars", topped(1000, 500, ["front", "back"], [300, 0, 0, 0])],
    ["past a corner of two", topped(1000, 500, ["front", "back"], [120, 0, 0, 150])],
    ["past a corner of four", topped(900, 700, ["front", "back", "cross-1", "cross-2"], [120, 0, 90, 0])],
    ["past four corners", topped(900, 700, ["front", "back", "cross-1", "cross-2"], [120, 40, 90, 10])],
  ])("keep the moment of the load: %s", (_, file) => {
    const { share, total, first } = shared(file);
    expect(total).toBeCloseTo(share.area, 12);
    const corners = one(known(sheets, file)[0]).corners;
    for (const i of [0, 1] as const)
      expect(first[i] / total).toBeCloseTo(corners.reduce((sum, corner) => sum + corner[i], 0) / 4, 9);
  });
});

describe("shares of a panel in slots", () => {
  // Two posts 1000 mm high, rails between them on z = 100, 500 and 900: an upper and a lower sheet, each 560 by 360 between the faces.
  const bar = (id: string, from: readonly number[], to: readonly number[]) => ({ id, profile: "40x40-8", from, to });
  const wall = {
    format: 1,
    title: "two sheets between two posts",
    units: "mm-N-kg",
    kits: { corner: [{ connector: "end-fastener-8", on: "-y" }] },
    bars: [
      bar("left", [0, 0, 0], [0, 0, 1000]),
      bar("right", [600, 0, 0], [600, 0, 1000]),
      ...[100, 500, 900].map((z) => bar(`rail-${z}`, [0, 0, z], [600, 0, z])),
    ],
    joints: [{ bars: ["rail-100", "rail-500", "rail-900"], by: "corner" }],
    panels: [
      {
        id: "top",
        sheet: "polycarbonate-5",
        held: "in-slot",
        edges: ["left", "rail-900", "right", "rail-500"].map((id) => ({ bar: id })),
      },
    ],
  } as unknown as FrameFile;

  it("are those of the sheet down to the slot floors, less 1 mm all round, though the posts run on past it", () => {
    const { share, by, total, first } = shared(wall);
    const depth = one(one(known(bodies, wall).get("left")).bar.profile.slots[0]).depth;
    const area = (0.56 + 2 * depth - 0.002) * (0.36 + 2 * depth - 0.002);
    expect(share.area).toBeCloseTo(area, 12);
    expect(total).toBeCloseTo(area, 12);
    expect(first.map((c) => c / total)).toEqual([0.3, 0, 0.7].map((c) => expect.closeTo(c, 9)));
    expect(by.get("left")).toBeCloseTo(by.get("right") ?? 0, 12);
  });

  it("of bars that make no rectangle are those of the sheet they shut in, its weight and middle", () => {
    // The lower of the two rails rises by 40 mm over 600 mm: between the slot floors a trapezium, 40/600 of its width lower at one side.
    const file = structuredClone(wall);
    for (const one of file.bars) if (one.id === "rail-500") one.to = [600, 0, 540];
    const { share, total, first } = shared(file);
    const depth = one(one(known(bodies, file).get("left")).bar.profile.slots[0]).depth;
    const [width, slope] = [0.56 + 2 * depth - 0.002, 40 / 600];
    // Slots of the sloping rail are square to it: their floor lies 1/cos further along z.
    const low = (z: number): number => z + (0.02 - depth + 0.001) * Math.hypot(1, slope);
    const top = 0.9 - 0.02 + depth - 0.001;
    const heights = [0.3 - width / 2, 0.3 + width / 2].map((x) => top - low(0.5 + slope * x)) as [number, number];
    const area = (width * (heights[0] + heights[1])) / 2;
    expect(share.area).toBeCloseTo(area, 9);
    expect(total).toBeCloseTo(area, 9);
    // The middle of a trapezium with parallel sides a and b: (a + 2b)/3(a + b) of its width (Gieck); cells that it covers in part count at their middles.
    const [a, b] = heights;
    expect((first[0] / total - (0.3 - width / 2)) / ((width * (a + 2 * b)) / (3 * (a + b)))).toBeCloseTo(1, 2);
  });
});
