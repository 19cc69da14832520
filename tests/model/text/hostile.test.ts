import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { openDocument } from "../../../src/model/text/document.ts";
import { codesOf, open, parses } from "./open.ts";

/** Refused on purpose although the grammar allows them. */
const OURS = new Set(["duplicate-key", "number-too-large", "half-a-character", "nested-too-deep", "string-too-long"]);

const SEED = `{"format": 1, "title": "B\\u00fcnch \\"A\\"", "units": "mm-N-kg",
 "bars": [{"id": "leg-1", "from": [0, -0.5, 1e3], "to": [0, 0, 800.25], "tall": null}, {"id": "leg-2", "on": true}],
 "kits": {"corner": [{}, []], "": {"a": {"b": [[[1]]]}}}}`;

/** The reader and JSON.parse agree, save for what is refused on purpose; and what is read has the same value. */
function agrees(text: string): void {
  const opened = open(text);
  const errors = opened.problems.filter((problem) => problem.weight === "error");
  const sound = parses(text);
  if (!sound) expect(errors.length).toBeGreaterThan(0);
  else for (const { code } of errors) expect(OURS).toContain(code);
  expect(opened.document === undefined).toBe(errors.length > 0);
  if (opened.document !== undefined)
    expect(JSON.stringify(opened.document.value)).toBe(JSON.stringify(JSON.parse(text)));
  for (const { place, found, expected } of opened.problems) {
    expect(place.line).toBeGreaterThanOrEqual(1);
    expect(place.column).toBeGreaterThanOrEqual(1);
    expect(place.endLine > place.line || place.endColumn >= place.column).toBe(true);
    expect(found).not.toBe("");
    expect(expected).not.toBe("");
  }
}

describe("whatever the bytes", () => {
  test("mutations of a sound text: never an exception, and one mind with JSON.parse", () => {
    const piece = fc.constantFrom(
      ..."{}[]:,\"'\\/#*-+.0123eEnulltrfa \n\r\t\u0000\u00a0\u202e\ud800é",
      "NaN",
      "\\u",
      "//",
      "/*",
      "1e999",
      "-0",
      '"a"',
    );
    const mutation = fc.record({
      at: fc.nat(SEED.length),
      remove: fc.nat(6),
      insert: fc.array(piece, { maxLength: 3 }),
    });
    fc.assert(
      fc.property(fc.array(mutation, { minLength: 1, maxLength: 4 }), (mutations) => {
        let text = SEED;
        for (const { at, remove, insert } of mutations)
          text = text.slice(0, at) + insert.join("") + text.slice(at + remove);
        agrees(new TextDecoder().decode(new TextEncoder().encode(text)));
      }),
      { numRuns: 2000 },
    );
  });

  test("soup of tokens", () => {
    const token = fc.constantFrom(
      "{",
      "}",
      "[",
      "]",
      ":",
      ",",
      '"a"',
      '"b"',
      "1",
      "-0",
      "true",
      "x",
      "'s'",
      " ",
      "\n",
      '"',
      "//c\n",
      "/*",
      "01",
    );
    fc.assert(
      fc.property(fc.array(token, { maxLength: 14 }), (tokens) => agrees(tokens.join(""))),
      { numRuns: 2000 },
    );
  });

  test("random bytes never throw", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (input) => {
        const { document, problems } = openDocument("a.json", input);
        expect(document === undefined).toBe(problems.some((problem) => problem.weight === "error"));
      }),
      { numRuns: 1500 },
    );
  });

  test("any JSON value is read back as it was, and every pointer into it finds its text", () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 4 }), fc.nat(2), (text, space) => {
        const spaced = JSON.stringify(JSON.parse(text), null, space).replaceAll("-0", "0");
        const { document } = open(spaced);
        if (document === undefined) return;
        expect(document.value).toEqual(JSON.parse(spaced));
        for (const [key, value] of Object.entries(Object(document.value) as object)) {
          if (typeof document.value === "string") break;
          const { start, end } = document.span(`/${key.replaceAll("~", "~0").replaceAll("/", "~1")}`);
          expect(JSON.parse(spaced.slice(start, end))).toEqual(value);
        }
      }),
      { numRuns: 1000 },
    );
  });
});

describe("size", () => {
  test.each([
    ["lists", "["],
    ["objects", '{"a":'],
    ["both", '[{"a":'],
  ])("100,000 levels of %s are one clear problem", (_name, opening) => {
    const opened = open(opening.repeat(100_000));
    expect(codesOf(opened)).toEqual(["nested-too-deep"]);
    expect(opened.problems[0]?.expected).toBe("at most 64 levels of objects and lists");
  });

  test("a closed nest of 100,000 levels likewise", () => {
    expect(codesOf(open("[".repeat(100_000) + "]".repeat(100_000)))).toEqual(["nested-too-deep"]);
  });

  test("20 MB are read, and places in them found, in seconds", () => {
    const bar = (i: number): string =>
      `{"id":"bar-${i}","from":[${i}.5,0,${i * 3}],"to":[0,12.25,800],"profile":"40x40-8"}`;
    const text = `[${Array.from({ length: 240_000 }, (_, i) => bar(i)).join(",\n")}]`;
    expect(text.length).toBeGreaterThan(20e6);
    const start = performance.now();
    const { document, problems } = open(text);
    expect(problems).toEqual([]);
    const pointers = Array.from({ length: 1000 }, (_, i) => `/${i * 240}/to/1`);
    const places = document?.places(pointers);
    expect(performance.now() - start).toBeLessThan(15_000);
    expect(places?.get("/239760/to/1")).toMatchObject({ line: 239_761 });
  });

  test("20 MB of one error after another stay well-behaved", () => {
    const start = performance.now();
    for (const piece of ["x ", '"\\q"', "'", "\u0001", ",", "}", "/", '{"a"', "0x"]) {
      const { document, problems } = open(`[${piece.repeat(4e6 / piece.length)}`);
      expect(document).toBeUndefined();
      expect(problems.length).toBeLessThanOrEqual(1000);
    }
    expect(performance.now() - start).toBeLessThan(30_000);
  });
});
