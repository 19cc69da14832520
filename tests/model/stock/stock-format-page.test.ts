import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { readStockFile } from "../../../src/model/read-stock.ts";
import { builtinStock } from "../../../src/model/stock/builtin-stock.ts";
import { resolveStock } from "../../../src/model/stock/resolve-stock.ts";
import type { Stock } from "../../../src/model/stock/stock.ts";
import { areaOf } from "./measure.ts";

const page = readFileSync(new URL("../../../docs/stock-format.md", import.meta.url), "utf8");
const example = /```json stock\n([\s\S]*?)```/.exec(page)?.[1] ?? "";

test("the file shown in docs/stock-format.md is read without a problem", () => {
  const { source, problems } = readStockFile("workshop.stock.json", new TextEncoder().encode(example));
  expect(problems).toEqual([]);
  const resolved = resolveStock(source === undefined ? [] : [source], builtinStock());
  expect(resolved.problems).toEqual([]);
  const { profiles, screws, connectors } = resolved.stock;
  expect(profiles.get("rack-40x80")).toMatchObject({ height: 0.08, width: 0.04, stockLength: 5.6 });
  // 12 x 30 less the slot, 6.2 x 2 and 12 x 4, by hand.
  const strip = profiles.get("edge-strip");
  expect(strip && areaOf(strip.region)).toBeCloseTo((360 - 12.4 - 48) * 1e-6, 12);
  expect(screws.has("M8x20-stainless")).toBe(true);
  expect(connectors.get("cast-corner-40")?.tested?.slip).toBeCloseTo(1900, 9);
});

const LISTS: readonly (keyof Stock)[] = [
  "profiles",
  "connectors",
  "screws",
  "nuts",
  "caps",
  "stands",
  "sheets",
  "gaskets",
  "tools",
  "materials",
];

test("every name the page lists for built-in stock is there", () => {
  const stock = builtinStock();
  const list = page.slice(page.indexOf("Names:"), page.indexOf("A family"));
  const names = [...list.matchAll(/`([^`]+)`/g)].flatMap(([, name = ""]) =>
    name.startsWith("-") ? [`40x40-8${name}`] : [name],
  );
  expect(names.length).toBeGreaterThan(30);
  expect(names.filter((name) => !LISTS.some((kind) => stock[kind].has(name)))).toEqual([]);
});

test("the table of slot sizes is that of the stock", () => {
  const stock = builtinStock();
  const rows = [...page.matchAll(/^\| ([\d/]+) \| ([\d.]+) (mm|in) \| (\S+) \| (\S+) \|/gm)];
  expect(rows.map(([, size]) => size).sort()).toEqual(
    [...new Set([...stock.profiles.values()].map(({ slotSize }) => slotSize))].sort(),
  );
  for (const [, size = "", pitch, unit, thread = "", core] of rows) {
    const profiles = [...stock.profiles.values()].filter(({ slotSize }) => slotSize === size);
    for (const profile of profiles) {
      expect(profile.pitch).toBeCloseTo(Number(pitch) * (unit === "mm" ? 1e-3 : 0.0254), 9);
      expect(profile.bores[0]?.thread).toBe(core);
    }
    const bracket = [...stock.connectors.values()].find((one) => one.kind === "bracket" && one.slotSize === size);
    expect(stock.screws.get(bracket?.screw ?? "")?.thread).toBe(thread);
  }
});
