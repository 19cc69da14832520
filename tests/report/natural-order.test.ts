import { expect, it } from "vitest";
import { compareNaturally } from "../../src/report/natural-order.ts";

it("orders names as people count", () => {
  const names = ["b10", "b2", "b02", "a", "b", "b2/c", "sh-b.from/2/b1", "sh-b.from/1/b1"];
  expect([...names].sort(compareNaturally)).toEqual([
    "a",
    "b",
    "b02",
    "b2",
    "b2/c",
    "b10",
    "sh-b.from/1/b1",
    "sh-b.from/2/b1",
  ]);
  for (const a of names)
    for (const b of names) expect(Math.sign(compareNaturally(a, b))).toBe(-Math.sign(compareNaturally(b, a)) + 0);
});
