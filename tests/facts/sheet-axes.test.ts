import { describe, expect, it } from "vitest";
import { panelFields } from "../../src/facts/panel-fields.ts";
import { panelShares } from "../../src/facts/panel-shares.ts";
import { sheets } from "../../src/facts/sheets.ts";
import { distance } from "../../src/geometry/vector.ts";
import type { Bar, FrameFile, Panel } from "../../src/model/generated/frame-file.generated.ts";
import { turnedAny } from "../demo/turned-any.ts";
import { known, near, one } from "./known.ts";

const bar = (id: string, from: readonly number[], to: readonly number[]): Bar =>
  ({ id, profile: "40x40-8", from, to }) as unknown as Bar;

function topped(bars: readonly Bar[], panel: Partial<Panel> = {}): FrameFile {
  return {
    format: 1,
    title: "a sheet on bars",
    units: "mm-N-kg",
    bars: [...bars],
    panels: [{ id: "top", sheet: "plywood-18", held: "laid", bars: bars.map(({ id }) => id), ...panel }],
  } as FrameFile;
}

/** Two beams 1500 mm long, their axes 710 mm apart, and two bars 710 mm long between them. */
const TABLE = [
  bar("front", [0, 20, 800], [1500, 20, 800]),
  bar("back", [0, 730, 800], [1500, 730, 800]),
  bar("cross-1", [200, 20, 800], [200, 730, 800]),
  bar("cross-2", [1300, 20, 800], [1300, 730, 800]),
];

/** What a sheet is to the frame, without where it lies. */
function measured(file: FrameFile) {
  const sheet = one(known(sheets, file)[0], "sheet");
  const [a, b, , d] = sheet.corners;
  const share = one(known(panelShares, file).get("top"), "share");
  const shares: Record<string, number> = {};
  for (const { bar, from, to, areaPerLength } of share.strips)
    shares[bar] = (shares[bar] ?? 0) + areaPerLength * (to - from);
  const field = known(panelFields, file)[0];
  return { size: sheet.size, sides: [distance(a, b), distance(a, d)], area: share.area, shares, field };
}

function close(value: unknown): unknown {
  if (typeof value === "number") return Number.isFinite(value) ? expect.closeTo(value, 9) : value;
  if (Array.isArray(value)) return value.map(close);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, close(item)]));
}

/** Of a field what does not say where it lies. */
function plain({ field, ...rest }: ReturnType<typeof measured>) {
  return { ...rest, field: field && { plate: field.field, across: field.across, overhangs: field.overhangs } };
}

describe("the sides of a sheet on bars", () => {
  it("of a table of 1500 by 750 are 1500 and 750, whichever way it is drawn", () => {
    for (const degrees of [0, 5, 37, -40, 180])
      expect(measured(turnedAny(topped(TABLE), degrees)).size).toEqual(near([1500, 750]));
    expect(measured(turnedAny(topped(TABLE), 90)).size).toEqual(near([750, 1500]));
  });

  it.each([5, 37, -30, 180])("leave field, overhangs and shares of the bars as they were, turned by %d°", (degrees) => {
    // Turned by half a turn, what hung over to the left hangs over to the right.
    const [ahead, back] = [
      [100, 200, 30, 40],
      [200, 100, 40, 30],
    ] as const;
    const first = measured(topped(TABLE, { overhang: [...ahead] }));
    const turned = turnedAny(topped(TABLE, { overhang: degrees === 180 ? [...back] : [...ahead] }), degrees);
    const again = measured(turned);
    expect(first.field?.overhangs.length).toBeGreaterThan(0);
    const sorted = (one: typeof first) => {
      const { field, ...rest } = plain(one);
      const overhangs = [...(field?.overhangs ?? [])].sort((a, b) => a.length - b.length || a.back - b.back);
      return { ...rest, field: { ...field, overhangs } };
    };
    expect(sorted(again)).toEqual(close(sorted(first)));
  });

  it("hang over at the side that is nearest to −x, +x, −y, +y", () => {
    const sheet = one(known(sheets, turnedAny(topped(TABLE, { overhang: [100, 0, 0, 0] }), 37))[0]);
    const bare = one(known(sheets, turnedAny(topped(TABLE), 37))[0]);
    expect(distance(sheet.corners[1], bare.corners[1])).toBeCloseTo(0, 12);
    const [c, s] = [Math.cos((37 * Math.PI) / 180), Math.sin((37 * Math.PI) / 180)];
    expect(sheet.corners[0][0]).toBeCloseTo(bare.corners[0][0] - 0.1 * c, 12);
    expect(sheet.corners[0][1]).toBeCloseTo(bare.corners[0][1] - 0.1 * s, 12);
  });

  it("follow the two bars that are alongside where others slant, however they are listed", () => {
    // A trapezium: 1000 mm and 600 mm, 500 mm apart; round its bars the least is 1000 by 540, alongside the two.
    const bars = [
      bar("left", [20, 0, 0], [200, 500, 0]),
      bar("long", [0, 0, 0], [1000, 0, 0]),
      bar("right", [980, 0, 0], [800, 500, 0]),
      bar("short", [200, 500, 0], [800, 500, 0]),
    ];
    for (const degrees of [0, 20])
      for (const list of [bars, bars.toReversed()]) {
        const size = one(known(sheets, turnedAny(topped(list), degrees))[0]).size;
        expect(size[1]).toBeCloseTo(0.54, 3);
        expect(size[0]).toBeCloseTo(1, 2);
      }
  });

  it("follow the sides of the sections where all bars stand: four posts 400 by 300 mm apart", () => {
    const posts = [
      [0, 0],
      [400, 0],
      [400, 300],
      [0, 300],
    ].map(([x = 0, y = 0], i) => bar(`post-${i}`, [x, y, 0], [x, y, 500]));
    for (const degrees of [0, 12, 44]) {
      const sheet = one(known(sheets, turnedAny(topped(posts), degrees))[0]);
      expect(sheet.size).toEqual(near([440, 340]));
    }
  });

  describe("on rails that slope by 10°, 1500 mm long in plan", () => {
    const rise = 1500 * Math.tan((10 * Math.PI) / 180);
    const rails = [bar("r1", [0, 20, 600], [1500, 20, 600 + rise]), bar("r2", [0, 480, 600], [1500, 480, 600 + rise])];

    it("are as long as the rails, and the sheet lies on their faces", () => {
      for (const degrees of [0, 37]) {
        const file = turnedAny(topped(rails), degrees);
        const sheet = one(known(sheets, file)[0]);
        expect(sheet.normal[2]).toBeCloseTo(Math.cos((10 * Math.PI) / 180), 12);
        expect(sheet.size[0]).toBeCloseTo(1.5 / Math.cos((10 * Math.PI) / 180), 9);
        expect(sheet.size[1]).toBeCloseTo(0.5, 9);
        expect(known(panelFields, file)[0]?.field.span).toBeCloseTo(0.42, 9);
      }
    });

    it("are as named where a bar between them is not flush, or lies level", () => {
      const low = bar("low", [400, 20, 640], [400, 480, 640]);
      expect(one(known(sheets, topped([...rails, low]))[0]).normal).toEqual([0, 0, 1]);
    });
  });

  it("of a sheet on two level rails that are both rolled by 30° lie level on their edges", () => {
    const rolled = [bar("a", [0, 0, 500], [900, 0, 500]), bar("b", [0, 400, 500], [900, 400, 500])];
    for (const one of rolled) one.roll = 30;
    expect(one(known(sheets, topped(rolled))[0]).normal).toEqual([0, 0, 1]);
  });
});
