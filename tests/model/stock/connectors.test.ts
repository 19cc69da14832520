import { describe, expect, test } from "vitest";
import { builtinStock } from "../../../src/model/stock/builtin-stock.ts";
import { insideRing } from "../../../src/model/stock/crossing.ts";
import type { Bracket, ConnectorHole, Pair, Screw } from "../../../src/model/stock/stock.ts";
import { referenceCheck } from "../../references/load-reference.ts";
import { isSimple } from "./measure.ts";

const FLOAT = 1e-9;
const MM = 1e-3;
const stock = builtinStock();
const connectors = [...stock.connectors.values()];
/** EN 1999-1-1 Table 8.2 as bolts.en.edge has it, in hole diameters. */
const edge = referenceCheck("bolts", "bolts.en.edge").expected.value as {
  e1: number;
  e2: number;
  p1: number;
  p2: number;
};

function screwOf(name: string): Screw {
  const screw = stock.screws.get(name);
  if (screw === undefined) throw new Error(`no screw ${name}`);
  return screw;
}

function toRing([y, z]: Pair, ring: readonly Pair[]): number {
  return Math.min(
    ...ring.map(([y1, z1], i) => {
      const [y2, z2] = ring[(i + 1) % ring.length] ?? [y1, z1];
      const [dy, dz] = [y2 - y1, z2 - z1];
      const t = Math.min(1, Math.max(0, ((y - y1) * dy + (z - z1) * dz) / (dy * dy + dz * dz)));
      return Math.hypot(y1 + t * dy - y, z1 + t * dz - z);
    }),
  );
}

function expectSpaced(holes: readonly ConnectorHole[]): void {
  for (const [i, a] of holes.entries()) {
    for (const b of holes.slice(i + 1)) {
      expect(Math.hypot(a.at[0] - b.at[0], a.at[1] - b.at[1])).toBeGreaterThanOrEqual(edge.p2 * a.diameter - FLOAT);
    }
  }
}

function expectClearance(holes: readonly ConnectorHole[], screw: Screw): void {
  for (const { diameter } of holes) {
    if (screw.thread.startsWith("M")) {
      const medium = (referenceCheck("bolts", `bolts.hole.${screw.thread}`).expected.value as { medium: number })
        .medium;
      expect(diameter).toBeCloseTo(medium * MM, 9);
    } else {
      expect(diameter / screw.diameter).toBeGreaterThan(1.03);
      expect(diameter / screw.diameter).toBeLessThan(1.2);
    }
  }
}

describe.each(connectors.filter((one): one is Bracket => one.kind === "bracket"))("$name", (bracket) => {
  const screw = screwOf(bracket.screw);
  const half = bracket.width / 2;

  test("holes lie in the legs, off edges and each other by bolts.en.edge, as wide as bolts.hole medium", () => {
    for (const { length, holes } of [bracket.legs.a, bracket.legs.b]) {
      for (const { at, diameter } of holes) {
        expect(length - at[0]).toBeGreaterThanOrEqual(edge.e1 * diameter - FLOAT);
        expect(half - Math.abs(at[1])).toBeGreaterThanOrEqual(edge.e2 * diameter - FLOAT);
      }
      expectSpaced(holes);
      expectClearance(holes, screw);
    }
  });

  test("its two heads in one plane pass each other (bolts.access.corner) and the side walls", () => {
    const clear = Number(referenceCheck("bolts", "bolts.access.corner").inputs.clear?.value) * MM;
    const nearest = Math.min(...bracket.legs.a.holes.map(({ at }) => at[0]));
    const least = bracket.legs.b.thickness + screw.headHeight + screw.headDiameter / 2 + clear;
    expect(nearest).toBeGreaterThanOrEqual(least - FLOAT);
    for (const { at } of bracket.legs.a.holes) {
      const wall = bracket.gussets > 0 ? bracket.gussetThickness : 0;
      expect(half - Math.abs(at[1]) - wall).toBeGreaterThan(screw.headDiameter / 2);
    }
  });

  test("it is no wider than the bars it is for, and its rows of holes are a pitch apart", () => {
    const pitch =
      [...stock.profiles.values()].find(({ slotSize }) => slotSize === bracket.slotSize)?.pitch ?? Number.NaN;
    const rows = new Set(bracket.legs.a.holes.map(({ at }) => at[1]));
    expect(bracket.width).toBeLessThanOrEqual(rows.size * pitch);
    const [low = 0, high = 0] = [Math.min(...rows), Math.max(...rows)];
    expect(high - low).toBeCloseTo((rows.size - 1) * pitch, 9);
  });
});

describe.each(connectors.filter((one) => one.kind === "plate"))("$name", (plate) => {
  test("its outline is simple; holes lie inside it, off edges and each other by bolts.en.edge, on a grid of one pitch", () => {
    expect(isSimple([plate.outline])).toBe(true);
    const pitch = [...stock.profiles.values()].find(({ slotSize }) => slotSize === plate.slotSize)?.pitch ?? Number.NaN;
    for (const { at, diameter } of plate.holes) {
      expect(insideRing(plate.outline, at)).toBe(true);
      expect(toRing(at, plate.outline)).toBeGreaterThanOrEqual(edge.e1 * diameter - FLOAT);
      for (const coordinate of at) {
        const halves = (coordinate - (plate.holes[0]?.at[0] ?? 0)) / (pitch / 2);
        expect(Math.abs(halves - Math.round(halves))).toBeLessThan(1e-6);
      }
    }
    expectSpaced(plate.holes);
    expectClearance(plate.holes, screwOf(plate.screw));
  });
});

test("every slot size has brackets, plates, an end fastener, end screws, a tie, a pivot and a hinge", () => {
  const kinds = new Map<string, Set<string>>();
  for (const { slotSize, kind } of connectors) kinds.set(slotSize, (kinds.get(slotSize) ?? new Set()).add(kind));
  for (const { slotSize } of stock.profiles.values()) {
    expect([...(kinds.get(slotSize) ?? [])].sort()).toEqual([
      "bracket",
      "end-fastener",
      "end-screw",
      "hinge",
      "pivot",
      "plate",
      "side-tie",
    ]);
  }
});
