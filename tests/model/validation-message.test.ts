import { Ajv2020 } from "ajv/dist/2020.js";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { SchemaNode } from "../../src/model/validation/schema-nodes.ts";
import { type Beginning, explainErrors } from "../../src/model/validation-message.ts";
import { open } from "./text/open.ts";

/** Validates as the generated validators do and explains; the value is written with one blank of indent. */
function explain(schema: SchemaNode, value: unknown, beginning?: Beginning) {
  const ajv = new Ajv2020({
    allErrors: true,
    discriminator: true,
    inlineRefs: false,
    strict: false,
    keywords: ["x-expected"],
  });
  const { document } = open(JSON.stringify(value, null, 1));
  if (document === undefined) throw new Error("the value was meant to be plain JSON");
  const validate = ajv.compile(schema);
  validate(document.value);
  return explainErrors(validate.errors ?? [], document, schema, beginning);
}

const lines = (schema: SchemaNode, value: unknown): readonly string[] =>
  explain(schema, value).map(({ code, place, found, expected, mend }) =>
    [place.pointer, code, found, expected, ...(mend === undefined ? [] : [mend])].join(" | "),
  );

const BAR: SchemaNode = {
  type: "object",
  required: ["id", "profile"],
  additionalProperties: false,
  properties: {
    id: { $ref: "#/$defs/id" },
    profile: { type: "string", description: "Name of a profile in stock." },
    tall: { $ref: "#/$defs/direction" },
    from: { $ref: "#/$defs/point" },
    holes: { type: "integer", minimum: 0, maximum: 20 },
    cut: { enum: ["butt", "mitre", "as-drawn"] },
  },
};

const SCHEMA: SchemaNode = {
  type: "object",
  required: ["bars"],
  properties: {
    bars: { type: "array", items: { $ref: "#/$defs/bar" }, minItems: 1 },
    ends: { $ref: "#/$defs/end" },
    kits: { type: "object", propertyNames: { $ref: "#/$defs/id" }, additionalProperties: { type: "array" } },
    loads: { type: "array", items: { $ref: "#/$defs/load" } },
    on: { anyOf: [{ type: "string" }, { type: "array", items: { type: "string" }, minItems: 2 }] },
    tags: { type: "array", uniqueItems: true },
  },
  $defs: {
    id: { type: "string", pattern: "^[^\\s]+$", maxLength: 8, description: "A name without spaces." },
    point: { type: "array", prefixItems: [{ type: "number" }, { type: "number" }], items: false, minItems: 2 },
    direction: {
      anyOf: [{ enum: ["+x", "-x", "+y", "-y"] }, { $ref: "#/$defs/point" }],
      "x-expected": "one of +x, -x, +y, -y, or a vector",
    },
    end: {
      anyOf: [
        { type: "object", required: ["butt"], properties: { butt: { type: "string" } }, additionalProperties: false },
        {
          type: "object",
          required: ["angle"],
          properties: { angle: { type: "number", minimum: 1 }, about: { enum: ["+x", "+y"] } },
          additionalProperties: false,
        },
      ],
    },
    load: {
      type: "object",
      discriminator: { propertyName: "kind" },
      required: ["kind"],
      oneOf: [
        { properties: { kind: { const: "force" }, size: { type: "number" } }, required: ["size"] },
        { properties: { kind: { const: "pressure" }, on: { type: "string" } }, required: ["on"] },
      ],
    },
    bar: BAR,
  },
};

const sound = { bars: [{ id: "a", profile: "p" }] };

describe("one fault, one message", () => {
  test.each<[string, unknown, readonly string[]]>([
    ["nothing wrong", sound, []],
    ["key missing", {}, [' | missing-key | an empty object | the key "bars"']],
    [
      "key missing that the schema describes",
      { bars: [{ id: "a" }] },
      ['/bars/0 | missing-key | an object without "profile" | the key "profile": name of a profile in stock'],
    ],
    [
      "misspelled key: no second message that it is missing",
      { bars: [{ id: "a", proflie: "p" }] },
      [
        '/bars/0/proflie | unknown-key | the key "proflie" | one of id, profile, tall, from, holes, cut | write "profile"',
      ],
    ],
    [
      "unknown key like no other",
      { bars: [{ id: "a", profile: "p", colour: 1 }] },
      ['/bars/0/colour | unknown-key | the key "colour" | one of id, profile, tall, from, holes, cut'],
    ],
    [
      "wrong type",
      { bars: [{ id: "a", profile: 40 }] },
      ["/bars/0/profile | wrong-type | 40 | text; name of a profile in stock"],
    ],
    ["wrong type of a list entry", { bars: [7] }, ["/bars/0 | wrong-type | 7 | an object"]],
    [
      "word not allowed",
      { bars: [{ id: "a", profile: "p", cut: "mitr" }] },
      ['/bars/0/cut | value-not-allowed | "mitr" | one of butt, mitre, as-drawn | write "mitre"'],
    ],
    [
      "pattern in the schema's words",
      { bars: [{ id: "a b", profile: "p" }] },
      ['/bars/0/id | wrong-form | "a b" | a name without spaces'],
    ],
    [
      "too long",
      { bars: [{ id: "abcdefghi", profile: "p" }] },
      ["/bars/0/id | wrong-length | text of 9 characters | text of at most 8 characters; a name without spaces"],
    ],
    [
      "out of range",
      { bars: [{ id: "a", profile: "p", holes: -1 }] },
      ["/bars/0/holes | out-of-range | -1 | a number at least 0"],
    ],
    [
      "no integer",
      { bars: [{ id: "a", profile: "p", holes: 1.5 }] },
      ["/bars/0/holes | wrong-type | 1.5 | a whole number"],
    ],
    ["empty list", { bars: [] }, ["/bars | wrong-count | an empty list | a list of at least 1"]],
    [
      "tuple too long",
      { bars: [{ id: "a", profile: "p", from: [1, 2, 3] }] },
      ["/bars/0/from | wrong-count | a list of 3 | a list of at most 2"],
    ],
    [
      "key of a map",
      { ...sound, kits: { "a b": [] } },
      ['/kits/a b | wrong-key | the key "a b" | a name without spaces'],
    ],
    [
      "entry twice",
      { ...sound, tags: ["x", "y", "x"] },
      ['/tags | repeated-entry | "x" twice, as entries 0 and 2 | each entry once'],
    ],
  ])("%s", (_about, value, expected) => {
    expect(lines(SCHEMA, value)).toEqual(expected);
  });
});

describe("choices come down to the branch that was meant", () => {
  const end = (value: unknown): readonly string[] => lines(SCHEMA, { ...sound, ends: value });
  const tall = (value: unknown): readonly string[] => lines(SCHEMA, { bars: [{ id: "a", profile: "p", tall: value }] });

  test("a word near one of the allowed", () => {
    expect(tall("+X")).toEqual([
      '/bars/0/tall | value-not-allowed | "+X" | one of +x, -x, +y, -y, or a vector | write "+x"',
    ]);
  });

  test("a list goes to the branch of lists", () => {
    expect(tall([1, "b"])).toEqual(['/bars/0/tall/1 | wrong-type | "b" | a number']);
    expect(lines(SCHEMA, { ...sound, on: ["a"] })).toEqual(["/on | wrong-count | a list of 1 | a list of at least 2"]);
  });

  test("a value of no branch's type: the forms, once", () => {
    expect(tall(5)).toEqual(["/bars/0/tall | value-not-allowed | 5 | one of +x, -x, +y, -y, or a vector"]);
    expect(lines(SCHEMA, { ...sound, on: 5 })).toEqual(["/on | value-not-allowed | 5 | text, or a list"]);
  });

  test("a known key tells the branch", () => {
    expect(end({ angle: 30, abuot: "+x" })).toEqual([
      '/ends/abuot | unknown-key | the key "abuot" | one of angle, about | write "about"',
    ]);
    expect(end({ angle: 0 })).toEqual(["/ends/angle | out-of-range | 0 | a number at least 1"]);
  });

  test("a key nearly known tells the branch too", () => {
    expect(end({ but: "leg-1" })).toEqual(['/ends/but | unknown-key | the key "but" | butt | write "butt"']);
  });

  test("nothing tells the branch: the forms", () => {
    expect(end({})).toEqual([
      "/ends | value-not-allowed | an empty object | an object with butt, or an object with angle",
    ]);
  });

  test("a tag tells the branch; a wrong one is answered with those that exist", () => {
    const load = (value: unknown): readonly string[] => lines(SCHEMA, { ...sound, loads: [value] });
    expect(load({ kind: "force" })).toEqual(['/loads/0 | missing-key | an object without "size" | the key "size"']);
    expect(load({ kind: "presure" })).toEqual([
      '/loads/0/kind | value-not-allowed | "presure" | one of force, pressure | write "pressure"',
    ]);
    expect(load({}).join()).toContain('the key "kind"');
  });

  test("a value that fits several forms of a oneOf", () => {
    const schema = { oneOf: [{ type: "number" }, { type: "integer" }], description: "A number or a count." };
    expect(lines(schema, 3)).toEqual([" | value-not-allowed | 3, which fits several forms | a number or a count"]);
  });
});

describe("places", () => {
  test("an unknown key is marked at the key, a missing one at the opening bracket, a value at the value", () => {
    const problems = explain(SCHEMA, { bars: [{ id: "a", colour: 1, cut: 5 }] });
    const [unknown, missing, type] = ["unknown-key", "missing-key", "value-not-allowed"].map((code) =>
      problems.find((problem) => problem.code === code),
    );
    expect(unknown?.place).toMatchObject({ line: 5, column: 4, endColumn: 12 });
    expect(missing?.place).toMatchObject({ pointer: "/bars/0", line: 3, column: 3, endLine: 3, endColumn: 4 });
    expect(type?.place).toMatchObject({ line: 6, column: 11, endColumn: 12 });
  });

  test("problems come in the order of the text and none twice", () => {
    const problems = explain(SCHEMA, { ends: 1, bars: [{ colour: 1 }, 5, { id: "a", profile: 1 }], on: 2 });
    expect(problems.map(({ place }) => place.line)).toEqual(
      [...problems.map(({ place }) => place.line)].sort((a, b) => a - b),
    );
    expect(new Set(problems.map((problem) => JSON.stringify(problem))).size).toBe(problems.length);
  });

  test("a validator of one element is put in its place", () => {
    const ajv = new Ajv2020({ allErrors: true, inlineRefs: false, strict: false, schemas: [{ ...SCHEMA, $id: "s" }] });
    const { document } = open('{"bars": [{"id": "a", "profile": "p"},\n {"id": "b", "profil": 1}]}');
    const validate = ajv.getSchema("s#/$defs/bar");
    if (document === undefined || validate === undefined) throw new Error("the test is made wrong");
    validate((document.value as { bars: unknown[] }).bars[1]);
    const beginning = { pointer: "/bars/1", definition: "#/$defs/bar" };
    expect(explainErrors(validate.errors ?? [], document, SCHEMA, beginning)).toEqual([
      {
        code: "unknown-key",
        weight: "error",
        place: { file: "a.json", pointer: "/bars/1/profil", line: 2, column: 14, endLine: 2, endColumn: 22 },
        found: 'the key "profil"',
        expected: "one of id, profile, tall, from, holes, cut",
        mend: 'write "profile"',
      },
    ]);
  });
});

test("hostile keys and values are shown harmless and short", () => {
  const problems = explain(SCHEMA, {
    bars: [{ id: "a", profile: "p", ["\u202e\u001b".repeat(99)]: 1, cut: "\u0000".repeat(99) }],
  });
  expect(problems).toHaveLength(2);
  for (const { found, expected } of problems) {
    // biome-ignore lint/suspicious/noControlCharactersInRegex: that there are none is the point
    expect(found + expected).not.toMatch(/[\u0000-\u001f\u202e]/);
    expect(found.length).toBeLessThan(300);
  }
  expect(explain(SCHEMA, { bars: [{ id: "a", profile: "p", constructor: 1, __proto__x: 2 }] })).toHaveLength(2);
});

test("500 wrong bars are explained in a second or two", () => {
  const bars = Array.from({ length: 500 }, (_, i) => ({ id: `b ${i}`, profil: 1, tall: "up", from: [1, "x"] }));
  const start = performance.now();
  const problems = explain(SCHEMA, { bars });
  expect(problems.length).toBe(500 * 4);
  expect(performance.now() - start).toBeLessThan(5000);
});

test("whatever the value: no exception, and some problem exactly when it is invalid", () => {
  const key = fc.constantFrom(
    "id",
    "profile",
    "tall",
    "from",
    "cut",
    "butt",
    "angle",
    "kind",
    "size",
    "on",
    "__proto__",
    "a b",
  );
  const leaf = fc.oneof(
    fc.constantFrom("force", "pressure", "butt", "+x", "a", "a b", null, true, -1, 0, 1.5, 40),
    fc.string(),
  );
  const { value } = fc.letrec((tie) => ({
    value: fc.oneof(
      { depthSize: "small" },
      leaf,
      fc.array(tie("value"), { maxLength: 3 }),
      fc.dictionary(key, tie("value"), { maxKeys: 4 }),
    ),
  }));
  const part = fc.record(
    {
      bars: fc.array(value, { maxLength: 2 }),
      ends: value,
      kits: value,
      loads: fc.array(value, { maxLength: 2 }),
      on: value,
    },
    { requiredKeys: [] },
  );
  const ajv = new Ajv2020({
    allErrors: true,
    discriminator: true,
    inlineRefs: false,
    strict: false,
    keywords: ["x-expected"],
  });
  const validate = ajv.compile(SCHEMA);
  fc.assert(
    fc.property(fc.oneof(part, value), (input) => {
      const { document } = open(JSON.stringify(input));
      if (document === undefined) return;
      const valid = validate(document.value);
      const problems = explainErrors(validate.errors ?? [], document, SCHEMA);
      expect(problems.length > 0).toBe(!valid);
      for (const { found, expected } of problems) expect(found !== "" && expected !== "").toBe(true);
    }),
    { numRuns: 2000 },
  );
});
