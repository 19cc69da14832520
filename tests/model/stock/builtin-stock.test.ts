import { expect, test } from "vitest";
import { whole } from "../../../src/model/generated/stock-check.generated.js";
import { BUILTIN_FILES, builtinStock } from "../../../src/model/stock/builtin-stock.ts";
import { crossing } from "../../../src/model/stock/crossing.ts";
import { nutFor } from "../../../src/model/stock/nut-for.ts";

test.each([...BUILTIN_FILES])("the built-in file %s is valid against the schema", (_name, value) => {
  expect(whole(value), JSON.stringify(whole.errors)).toBe(true);
});

test("built-in stock is made once and holds every kind of part", () => {
  const stock = builtinStock();
  expect(builtinStock()).toBe(stock);
  for (const parts of Object.values(stock)) expect(parts.size).toBeGreaterThan(0);
  expect(stock.profiles.get("40x80-8")).toMatchObject({ height: 0.08, width: 0.04, slotSize: "8" });
});

test.each([...builtinStock().profiles.values()])("the polygons of $name cross nothing", ({ region }) => {
  expect(crossing([region.outer, ...region.holes])).toBeUndefined();
});

test.each([...builtinStock().connectors.values()])(
  "$name has a screw, and a nut of each kind takes it",
  (connector) => {
    const stock = builtinStock();
    const screw = stock.screws.get(connector.screw);
    expect(screw).toBeDefined();
    if (connector.kind === "end-screw" || screw === undefined) return;
    expect(nutFor(stock, connector.slotSize, screw.thread, "end-load")).toBeDefined();
    expect(nutFor(stock, connector.slotSize, screw.thread, "drop-in")).toBeDefined();
  },
);
