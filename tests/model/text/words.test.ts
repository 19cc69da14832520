import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { editDistance, nearest } from "../../../src/model/text/nearest.ts";
import { quote, showHidden } from "../../../src/model/text/quote.ts";

describe("nearest", () => {
  const KEYS = ["id", "profile", "from", "to", "tall", "roll", "ends", "holes"];
  test.each([
    ["profil", "profile"],
    ["porfile", "profile"],
    ["Profile", "profile"],
    ["form", "from"],
    ["hole", "holes"],
    ["prof", "profile"],
    ["weight", undefined],
    ["x", undefined],
    ["rxll", "roll"],
    ["", undefined],
    ["p".repeat(1000), undefined],
  ])("%j is %j", (word, meant) => {
    expect(nearest(word, KEYS)).toBe(meant);
  });

  test("hyphens and underscores do not count", () => {
    expect(nearest("leg_1", ["rail-1", "leg-1"])).toBe("leg-1");
  });

  test("in a short word that could be several, none is suggested", () => {
    expect(nearest("+w", ["+x", "+y", "+z"])).toBeUndefined();
  });

  test("edit distances known by hand: kitten to sitting 3, a swap 1, ca to abc 3 (restricted)", () => {
    expect(editDistance("kitten", "sitting")).toBe(3);
    expect(editDistance("from", "form")).toBe(1);
    expect(editDistance("ca", "abc")).toBe(3);
    expect(editDistance("", "abc")).toBe(3);
    expect(editDistance("abcdef", "uvwxyz", 2)).toBe(3);
  });

  test("the distance is symmetric and zero only for equals", () => {
    const word = fc.string({ maxLength: 8, unit: fc.constantFrom("a", "b", "c") });
    fc.assert(
      fc.property(word, word, (a, b) => {
        expect(editDistance(a, b)).toBe(editDistance(b, a));
        expect(editDistance(a, b) === 0).toBe(a === b);
      }),
    );
  });
});

describe("quote", () => {
  test("controls, bidi, zero-width, blanks that are no spaces and lone surrogates show as escapes", () => {
    expect(showHidden("a\u0000\u001b\u007f\u0085\u00a0\u00ad\u200b\u202e\u2028\u2066\ufeff\ud800é €𝄞")).toBe(
      "a\\u0000\\u001b\\u007f\\u0085\\u00a0\\u00ad\\u200b\\u202e\\u2028\\u2066\\ufeff\\ud800é €𝄞",
    );
    expect(showHidden("\u{e0041}")).toBe("\\udb40\\udc41");
  });

  test("40 code points stay whole, 41 are cut, no pair is split", () => {
    expect(quote("x".repeat(40))).toBe("x".repeat(40));
    expect(quote("x".repeat(41))).toBe(`${"x".repeat(39)}…`);
    expect(quote("𝄞".repeat(50))).toBe(`${"𝄞".repeat(39)}…`);
  });
});
