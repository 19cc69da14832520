import { expect, it } from "vitest";
import { count, listed, percent, shareOfLimit } from "../../src/report/count.ts";

it("counts with the right form of the word", () => {
  expect([count(0, "bar"), count(1, "bar"), count(22, "bar")]).toEqual(["no bars", "1 bar", "22 bars"]);
});

it("lists names, and says how many are left out", () => {
  expect(listed(["a"])).toBe("a");
  expect(listed(["a", "b", "c"])).toBe("a, b and c");
  expect(listed(["a", "b", "c", "d"], 2)).toBe("a, b and 2 more");
});

it.each([
  [1.653, "165 %"],
  [10040, "more than 100-fold"],
  [100, "100-fold"],
  [33.13, "33-fold"],
  [10, "10-fold"],
  [10 - 1e-12, "10-fold"],
  [9.99, "999 %"],
  [1, "100 %"],
  [1.0004, "100.04 %"],
  [0.9996, "99.96 %"],
  [1 + 1e-12, "just over 100 %"],
  [1 - 1e-12, "just under 100 %"],
])("never rounds %f onto the limit", (share, text) => {
  expect(percent(share)).toBe(text);
});

it("tells how much there is of what is needed, and how much is used of what is allowed", () => {
  // 8 mm where 12.3 mm are needed are 65 % of it; 12.3 mm where 8 mm are allowed are 154 %.
  expect(shareOfLimit(12.3 / 8, "at least")).toBe("65 % of it");
  expect(shareOfLimit(12.3 / 8, "at most")).toBe("154 %");
  expect(shareOfLimit(0, "at least")).toBe("beyond any share");
});
