import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { builtinStock } from "../../../src/model/stock/builtin-stock.ts";
import { type Cell, impossible } from "../../../src/model/stock/cell.ts";
import { crossSection } from "../../../src/model/stock/cross-section.ts";
import type { FaceName } from "../../../src/model/stock/stock.ts";
import { referenceCheck } from "../../references/load-reference.ts";
import { areaOf, fromFace, inMaterial, isSimple, secondMomentOf, stretch } from "./measure.ts";

const MM = 1e-3;
const NONE: ReadonlySet<FaceName> = new Set();

/** The synthetic section S40 of the reference values. */
function s40(): Cell {
  const { inputs } = referenceCheck("torsion-and-sections", "torsion-and-sections.sec.S40");
  const size = (name: string) => Number(inputs[name]?.value) * MM;
  const lip = size("lip");
  return {
    pitch: size("side"),
    slot: { opening: size("opening"), lip, cavity: size("cavity_width"), depth: lip + size("cavity_depth"), web: 0 },
    cornerRadius: 0,
    chordError: 1e-5,
  };
}

describe("generated from the parameters of S40", () => {
  const { value } = referenceCheck("torsion-and-sections", "torsion-and-sections.sec.S40").expected as {
    value: { A: number; I: number };
  };
  const single = crossSection(s40(), 1, 1, NONE);

  test("area and second moment are those of torsion-and-sections.sec.S40", () => {
    expect(areaOf(single)).toBeCloseTo(value.A * MM ** 2, 12);
    expect(secondMomentOf(single) / (value.I * MM ** 4)).toBeCloseTo(1, 5);
  });

  test("mass per metre is that of materials.ex.mass-per-metre", () => {
    const density = builtinStock().materials.get("6060-T66")?.density ?? Number.NaN;
    const expected = Number(referenceCheck("materials", "materials.ex.mass-per-metre").expected.value);
    expect(areaOf(single) * density).toBeCloseTo(expected, 3);
  });

  test("a double without hollows is 80 x 40 less six slots of 128 mm²", () => {
    const double = crossSection(s40(), 1, 2, NONE);
    expect(areaOf(double)).toBeCloseTo((3200 - 6 * 128) * MM ** 2, 12);
  });

  test("a double with 2 mm cell walls loses 20 x 36 mm² more; a quad loses four of 20 x 26 and one of 20 x 20", () => {
    const hollow: Cell = { ...s40(), cellWall: 2 * MM };
    expect(areaOf(crossSection(hollow, 1, 2, NONE))).toBeCloseTo((3200 - 6 * 128 - 20 * 36) * MM ** 2, 12);
    const quad = (6400 - 8 * 128 - 4 * 20 * 26 - 20 * 20) * MM ** 2;
    expect(areaOf(crossSection(hollow, 2, 2, NONE))).toBeCloseTo(quad, 12);
  });

  test("a closed face puts a 2 mm skin over its slot: the opening fills, the cavity grows by 16 x 2", () => {
    const closed = crossSection({ ...s40(), closedWall: 2 * MM }, 1, 1, new Set<FaceName>(["B"]));
    expect(areaOf(closed)).toBeCloseTo((1088 + 8 * 4 - 16 * 2) * MM ** 2, 12);
    expect(closed.slots.map(({ face, closed }) => [face, closed])).toEqual([
      ["A", false],
      ["B", true],
      ["C", false],
      ["D", false],
    ]);
  });

  test("rounds lie within the chord error: bore and corners against π r²", () => {
    const [radius, bore] = [4 * MM, 6.8 * MM];
    const round = crossSection({ ...s40(), cornerRadius: radius, bore: { diameter: bore, thread: "M8" } }, 1, 1, NONE);
    const removed = areaOf(single) - areaOf(round);
    const exact = (4 - Math.PI) * radius ** 2 + (Math.PI * bore ** 2) / 4;
    expect(Math.abs(removed - exact)).toBeLessThan(2 * Math.PI * (radius + bore / 2) * 1e-5);
  });
});

describe.each([...builtinStock().profiles.values()])("$name", (profile) => {
  const { region, slots, bores } = profile;
  const solid = (face: FaceName, s: number, d: number) => inMaterial(region, fromFace(profile, face, s, d));

  test("no polygon crosses itself or another", () => {
    expect(isSimple([region.outer, ...region.holes])).toBe(true);
  });

  test("slots are where and as wide, deep and lipped as they are said to be", () => {
    for (const slot of slots) {
      const { face, across, opening, lip, cavity, depth } = slot;
      const rim = slot.closed ? cavity / 2 - 2e-4 : (opening + cavity) / 4;
      expect(solid(face, across, lip / 2)).toBe(slot.closed);
      expect(solid(face, across, depth - 1e-6)).toBe(false);
      expect(solid(face, across, depth + 1e-5)).toBe(true);
      const lipMeasured = stretch((d) => solid(face, across + rim, d), lip / 2, -1e-3, depth);
      expect(lipMeasured).toBeCloseTo(lip, 7);
      const below = lip + 1e-5;
      expect(stretch((s) => solid(face, s, below), across, across - cavity, across + cavity)).toBeCloseTo(cavity, 7);
      if (slot.closed) continue;
      expect(stretch((s) => solid(face, s, lip / 2), across, across - cavity, across + cavity)).toBeCloseTo(opening, 7);
    }
  });

  test("bores are open and round", () => {
    for (const { at, diameter } of bores) {
      expect(inMaterial(region, at)).toBe(false);
      for (let angle = 0.1; angle < 2 * Math.PI; angle += 0.5) {
        const on = (r: number): boolean =>
          inMaterial(region, [at[0] + r * Math.cos(angle), at[1] + r * Math.sin(angle)]);
        expect(on(diameter / 2 + 1e-6)).toBe(true);
        expect(on(diameter / 2 - 2.1e-5)).toBe(false);
      }
    }
  });

  test("the slots of a face are a pitch apart, in counting order, symmetric about its middle", () => {
    for (const face of ["A", "B", "C", "D"] as const) {
      const own = slots.filter((slot) => slot.face === face);
      const size = face === "A" || face === "C" ? profile.width : profile.height;
      expect(own.map((slot) => slot.number)).toEqual(own.map((_, i) => i + 1));
      own.forEach((slot, i) => {
        expect(slot.across).toBeCloseTo((i + 0.5) * profile.pitch - size / 2, 9);
      });
      expect(own.length).toBe(Math.round(size / profile.pitch));
    }
  });
});

test("every cell that is not called impossible gives polygons that cross nothing", () => {
  const size = (max: number) => fc.double({ min: 0.0002, max, noNaN: true });
  const cell: fc.Arbitrary<Cell> = fc
    .record({
      slot: fc.record({
        opening: size(0.02),
        lip: size(0.01),
        cavity: size(0.03),
        depth: size(0.02),
        web: size(0.006),
      }),
      diameter: size(0.012),
      cornerRadius: fc.double({ min: 0, max: 0.008, noNaN: true }),
      cornerWall: size(0.004),
      cellWall: size(0.005),
      closedWall: size(0.005),
    })
    .map(({ slot, diameter, ...rest }) => ({
      ...rest,
      pitch: 0.04,
      slot,
      bore: { diameter, thread: "M8" },
      chordError: 5e-5,
    }));
  let possible = 0;
  fc.assert(
    fc.property(
      cell,
      fc.integer({ min: 1, max: 2 }),
      fc.integer({ min: 1, max: 3 }),
      fc.boolean(),
      (one, columns, rows, shut) => {
        if (impossible(one) !== undefined) return;
        possible++;
        const section = crossSection(one, columns, rows, shut ? new Set<FaceName>(["A", "B"]) : NONE);
        expect(isSimple([section.outer, ...section.holes])).toBe(true);
      },
    ),
    { numRuns: 10_000, seed: 40 },
  );
  expect(possible).toBeGreaterThan(50);
});
