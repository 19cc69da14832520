import { expect, it } from "vitest";
import { faultOfPattern, fitsPattern } from "../../src/house/frame-pattern.ts";

it.each([
  ["a.frame.json", "*.frame.json", true],
  ["guards/a.frame.json", "*.frame.json", false],
  ["guards/a.frame.json", "guards/**", true],
  ["guards/old/deep/a.frame.json", "guards/**", true],
  ["guards/a.frame.json", "**/*.frame.json", true],
  ["a.frame.json", "**/*.frame.json", true],
  ["guards/old/a.frame.json", "guards/*/a.frame.json", true],
  ["guards/a.frame.json", "guards/*/a.frame.json", false],
  ["x/guards/y/a.frame.json", "**/guards/**/a.*", true],
  ["bench-1.frame.json", "./bench-?.frame.json", true],
  ["bench-12.frame.json", "bench-?.frame.json", false],
  ["a+b(1).json", "a+b(1).json", true],
  ["../a.frame.json", "*", false],
])("%s against %s: %s", (path, pattern, fits) => {
  expect(fitsPattern(path, pattern)).toBe(fits);
});

it("takes no longer for a pattern made to backtrack", () => {
  const path = "a".repeat(2000);
  const begun = performance.now();
  expect(fitsPattern(path, `${"a*".repeat(500)}b`)).toBe(false);
  expect(fitsPattern("a/".repeat(500), `${"**/a/".repeat(300)}b`)).toBe(false);
  expect(performance.now() - begun).toBeLessThan(2000);
});

it.each(["", "[", "a[bc].json", "{a,b}/*", "/abs/*", "C:/x/*", "a\\\\b", "a**/b", "guards/"])(
  "is refused: %j",
  (pattern) => {
    expect(faultOfPattern(pattern)).toBeDefined();
  },
);

it.each(["*", "**", "guards/**", "./a/*.frame.json", "**/a?.frame.json", "../b/*"])("is sound: %s", (pattern) => {
  expect(faultOfPattern(pattern)).toBeUndefined();
});
