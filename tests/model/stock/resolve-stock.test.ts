import { describe, expect, test } from "vitest";
import type { StockFile } from "../../../src/model/generated/stock-file.generated.ts";
import { builtinStock } from "../../../src/model/stock/builtin-stock.ts";
import { EMPTY_STOCK, resolveStock } from "../../../src/model/stock/resolve-stock.ts";
import type { Stock } from "../../../src/model/stock/stock.ts";
import { areaOf } from "./measure.ts";

type Parts = Omit<StockFile, "format" | "units" | "title">;

function resolve(parts: Parts, units: StockFile["units"] = "mm-N-kg", base: Stock = builtinStock()) {
  const place = (pointer: string) => ({
    file: "shop.stock.json",
    pointer,
    line: 1,
    column: 1,
    endLine: 1,
    endColumn: 1,
  });
  return resolveStock([{ value: { format: 1, units, title: "Shop", ...parts }, place }], base);
}

function told(parts: Parts, base?: Stock): readonly string[] {
  const { problems } = resolve(parts, "mm-N-kg", base ?? builtinStock());
  return problems.map(({ code, place, expected, mend }) =>
    [code, place.pointer, expected, mend].filter(Boolean).join(" | "),
  );
}

type Drawn = Extract<NonNullable<StockFile["profiles"]>[number], { kind: "drawn" }>;
type Generated = Extract<NonNullable<StockFile["profiles"]>[number], { kind: "generated" }>;
type Series = NonNullable<StockFile["series"]>[number];

/** S40 drawn by hand: a 40 mm square with one slot of 8 x 4 and 16 x 6 in each face. */
const QUARTER: readonly (readonly [number, number])[] = [
  [20, -4],
  [16, -4],
  [16, -8],
  [10, -8],
  [10, 8],
  [16, 8],
  [16, 4],
  [20, 4],
  [20, 20],
];
const turned = (turns: number) =>
  QUARTER.map(([y, z]): [number, number] =>
    turns === 0 ? [y, z] : turns === 1 ? [-z, y] : turns === 2 ? [-y, -z] : [z, -y],
  );
const OUTLINE = [0, 1, 2, 3].flatMap(turned) as Drawn["outline"];

const S40: Drawn = {
  kind: "drawn",
  name: "s40",
  pitch: 40,
  slotSize: "8",
  weight: "heavy",
  material: "6060-T66",
  stockLength: 6000,
  lipRating: 7000,
  lipSource: "test 12",
  outline: OUTLINE,
  slots: (["A", "B", "C", "D"] as const).map((face) => ({
    face,
    across: 0,
    opening: 8,
    lip: 4,
    depth: 10,
    cavity: 16,
  })),
};

const SERIES: Series = {
  name: "shop",
  pitch: 40,
  slotSize: "8",
  weight: "heavy",
  material: "6060-T66",
  stockLength: 6000,
  slot: { opening: 8, lip: 4, cavity: 16, depth: 10 },
  ratedNut: [20, 12],
};
const SINGLE: Generated = { kind: "generated", name: "shop-40", series: "shop", columns: 1, rows: 1 };

describe("profiles", () => {
  test("S40 drawn corner by corner and S40 generated are one: 1088 mm² (torsion-and-sections.sec.S40)", () => {
    const { stock, problems } = resolve({ series: [SERIES], profiles: [SINGLE, S40] });
    expect(problems).toEqual([]);
    const [drawn, generated] = [stock.profiles.get("s40"), stock.profiles.get("shop-40")];
    for (const profile of [drawn, generated]) expect(profile && areaOf(profile.region)).toBeCloseTo(1088e-6, 12);
    expect(drawn).toMatchObject({ height: 0.04, width: 0.04, lipRating: 7000, lipSource: "test 12" });
    expect(drawn?.slots).toEqual(generated?.slots);
    expect(drawn?.region.outer.length).toBe(36);
  });

  test("an outline drawn the other way round is turned", () => {
    const outline = [...OUTLINE].reverse() as Drawn["outline"];
    const { stock } = resolve({ profiles: [{ ...S40, outline }] });
    const forward = resolve({ profiles: [S40] }).stock;
    const sorted = (one: Stock) => [...(one.profiles.get("s40")?.region.outer ?? [])].map(String).sort();
    expect(sorted(stock)).toEqual(sorted(forward));
    expect(stock.profiles.get("s40")?.region.outer).not.toEqual([]);
  });

  test("slots of a face are numbered along it whatever the order of the file", () => {
    const slots: Drawn["slots"] = [10, -10].map((across) => ({
      face: "A",
      across,
      opening: 2,
      lip: 1,
      depth: 3,
      cavity: 4,
    }));
    const { stock } = resolve({ profiles: [{ ...S40, slots }] });
    expect(stock.profiles.get("s40")?.slots.map(({ number, across }) => [number, across])).toEqual([
      [1, -0.01],
      [2, 0.01],
    ]);
  });

  test("polygons that cross, stray or stand off centre are refused", () => {
    const hole = (...points: [number, number][]) => points as unknown as NonNullable<Drawn["holes"]>[number];
    const square = (y: number, size: number) => hole([y, -size], [y + size, -size], [y + size, size], [y, size]);
    expect(told({ profiles: [{ ...S40, outline: hole([-20, -20], [20, 20], [20, -20], [-20, 20]) }] })).toEqual([
      "impossible-section | /profiles/0/outline | polygons that cross neither themselves nor each other",
    ]);
    expect(told({ profiles: [{ ...S40, holes: [square(0, 3), square(30, 3)] }] })).toEqual([
      "impossible-section | /profiles/0/holes/1 | holes inside the outline",
    ]);
    expect(told({ profiles: [{ ...S40, holes: [square(0, 3), square(2, 3)] }] })[0]).toMatch(
      /^impossible-section .* cross/,
    );
    expect(told({ profiles: [{ ...S40, outline: hole([0, -20], [40, -20], [40, 20], [0, 20]) }] })).toEqual([
      "impossible-section | /profiles/0/outline | corners measured from the middle of the envelope",
    ]);
    expect(told({ profiles: [{ ...S40, outline: hole([1, 1], [1, 1], [1, 1]) }] })).toEqual([
      "impossible-section | /profiles/0/outline | a polygon with an area",
    ]);
  });

  test("a cell that cannot be extruded is refused, and what is made of it is not told again", () => {
    const series = { ...SERIES, slot: { ...SERIES.slot, lip: 11 } };
    const cap = { name: "shop-cap", profiles: ["shop-40"] as [string], thickness: 4, mass: 0.01 };
    expect(told({ series: [series], profiles: [SINGLE], caps: [cap] })).toEqual([
      "impossible-section | /series/0/slot/lip | thinner than the depth at which the cavity starts to taper",
    ]);
  });

  test("closed faces need a skin", () => {
    const closed: Generated = { ...SINGLE, closed: ["A"] };
    expect(told({ series: [SERIES], profiles: [closed] })).toEqual([
      "impossible-section | /profiles/0/closed | a series with closedWall",
    ]);
    expect(told({ series: [{ ...SERIES, closedWall: 2 }], profiles: [closed] })).toEqual([]);
  });

  test("a lip rating is stated or computed, not guessed", () => {
    const { ratedNut, ...bare } = SERIES;
    expect(told({ series: [bare] })[0]).toMatch(/^lip-rating-missing \| \/series\/0/);
    expect(resolve({ series: [{ ...bare, lipRating: "6 kN" }] }).stock.series.get("shop")?.lipRating).toBeCloseTo(
      6000,
      9,
    );
    expect(ratedNut).toEqual([20, 12]);
    expect(told({ series: [{ ...bare, ratedNut: [20, 17] }] })[0]).toMatch(/^nut-does-not-fit/);
  });
});

test("inches and inch text come out in metres", () => {
  const series: Series = {
    ...SERIES,
    pitch: 1.5,
    stockLength: "10 ft",
    slot: { opening: "5/16 in", lip: 0.15, cavity: 0.6, depth: 0.4 },
    ratedNut: [0.8, 0.5],
  };
  const { stock, problems } = resolve({ series: [series] }, "in-lbf-lb");
  expect(problems).toEqual([]);
  expect(stock.series.get("shop")).toMatchObject({ stockLength: 3.048, cell: { pitch: 0.0381 } });
  expect(stock.series.get("shop")?.cell.slot.opening).toBeCloseTo(0.0079375, 12);
});

test("a part replaces the built-in one of its name and leaves the built-in stock as it was", () => {
  const before = builtinStock().nuts.get("nut-8-M8");
  const nut = {
    name: "nut-8-M8",
    kind: "end-load",
    slotSize: "8",
    thread: "M8",
    length: 22,
    width: 17,
    thickness: 6,
    engagement: 6,
  } as const;
  const { stock, problems } = resolve({ nuts: [nut] });
  expect(problems).toEqual([]);
  expect(stock.nuts.get("nut-8-M8")?.length).toBeCloseTo(0.022, 12);
  expect(stock.nuts.size).toBe(builtinStock().nuts.size);
  expect(builtinStock().nuts.get("nut-8-M8")).toBe(before);
});

const SCREW: NonNullable<StockFile["screws"]>[number] = {
  name: "S{length}",
  thread: "M8",
  diameter: 8,
  pitch: 1.25,
  head: "cap",
  headDiameter: 13,
  headHeight: 8,
  key: 6,
  socketDepth: 4,
  propertyClass: "8.8",
  torque: 20,
  lengths: [16, "5/8 in"],
  source: "shop",
};
const TIE = { kind: "side-tie", name: "shop-tie", slotSize: "8", mass: 0.01, screw: "S16" } as const;

test("a family becomes one part for each length, named as the length is written", () => {
  const { stock } = resolve({ screws: [SCREW] }, "mm-N-kg", EMPTY_STOCK);
  expect([...stock.screws.keys()]).toEqual(["S16", "S5/8-in"]);
  expect(stock.screws.get("S5/8-in")?.length).toBeCloseTo(0.015875, 12);
});

test("names may stand before what they name, and a wrong one is told with the nearest", () => {
  expect(told({ connectors: [TIE], screws: [SCREW] })).toEqual([]);
  expect(told({ connectors: [{ ...TIE, screw: "M8x60-buton" }] })).toEqual([
    'unknown-stock | /connectors/0/screw | a screw of the stock | did you mean "M8x60-button"?',
  ]);
  expect(told({ profiles: [{ ...SINGLE, series: "40-9" }] })).toEqual([
    'unknown-stock | /profiles/0/series | a series of the stock | did you mean "40-8"?',
  ]);
});

test("one name twice in a list is refused", () => {
  expect(told({ connectors: [TIE, TIE], screws: [SCREW] })[0]).toMatch(/^duplicate-name \| \/connectors\/1\/name/);
});

test("values that cannot be are refused where they stand; what names the part is not told again", () => {
  expect(told({ screws: [{ ...SCREW, torque: "20 kg" }], connectors: [TIE] }).map((line) => line.slice(0, 33))).toEqual(
    ["wrong-quantity | /screws/0/torque"],
  );
  expect(told({ screws: [{ ...SCREW, key: 0 }] })).toEqual(["not-positive | /screws/0/key | more than 0"]);
  expect(told({ connectors: [{ ...TIE, screw: "M8x16", mass: -1 }] })).toEqual([
    "negative | /connectors/0/mass | 0 or more",
  ]);
  const gasket = { name: "g", slotSize: "8", sheet: [6, 4] as [number, number], depth: 10 };
  expect(told({ gaskets: [gasket] })).toEqual(["upside-down | /gaskets/0/sheet | the lesser value first"]);
});

test("a slip in a unit is doubted, five times at most, and refuses nothing", () => {
  const { stock, problems } = resolve({ screws: [{ ...SCREW, lengths: [1600, 1601, 1602, 1603, 1604, 1605] }] });
  expect(problems.map(({ code, weight }) => [code, weight])).toEqual(
    Array.from({ length: 5 }, () => ["doubtful-value", "warning"]),
  );
  expect(stock.screws.get("S1605")?.length).toBeCloseTo(1.605, 12);
});

test("of thousands of problems 200 are told and the rest counted", () => {
  const connectors = Array.from({ length: 3000 }, (_, i) => ({ ...TIE, name: `t${i}`, screw: "no such screw" }));
  const { problems } = resolve({ connectors });
  expect(problems.length).toBe(201);
  expect(problems[200]).toMatchObject({ code: "more-problems", found: "2800 more problems", weight: "error" });
});

test("names of the language's own are names like others", () => {
  const { stock, problems } = resolve({ connectors: [{ ...TIE, name: "__proto__", screw: "M8x16" }] });
  expect(problems).toEqual([]);
  expect(stock.connectors.get("__proto__")?.slotSize).toBe("8");
  expect(told({ connectors: [{ ...TIE, screw: "constructor" }] })[0]).toMatch(/^unknown-stock/);
});

type Open = { [key: string]: Open } & Open[] & Map<string, unknown>;

test("nobody can change the stock for the next frame", () => {
  const stock = builtinStock();
  // As a rule in plain JavaScript sees it.
  const open = stock as unknown as { readonly [K in keyof Stock]: Map<string, Open> };
  const profile = open.profiles.get("40x80-8") as Open;
  const attempts: readonly (() => unknown)[] = [
    () => open.profiles.clear(),
    () => open.profiles.delete("40x80-8"),
    () => open.profiles.set("40x80-8", profile),
    () => open.series.get("40-8")?.torques?.set("M8", 1),
    () => Object.assign(stock, { profiles: new Map() }),
    () => Object.assign(profile, { width: 1 }),
    () => Object.assign(profile, { region: { outer: [], holes: [] } }),
    () => Object.assign(profile.slots?.[0] ?? {}, { lip: 1 }),
    () => profile.region?.outer?.pop(),
    () => profile.region?.outer?.[0]?.pop(),
    () => open.connectors.get("inside-bracket-40")?.legs?.a?.holes?.pop(),
  ];
  for (const attempt of attempts) expect(attempt).toThrow(TypeError);
  expect(stock.profiles.size).toBeGreaterThan(50);
});
