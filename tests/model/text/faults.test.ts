import { expect, test } from "vitest";
import { PROBLEM_COUNT } from "../../../src/model/text/limits.ts";
import { codesOf, open } from "./open.ts";

const told = (text: string): readonly string[] =>
  open(text).problems.map(({ code, place, found, mend }) =>
    [`${place.line}:${place.column}`, code, found, ...(mend === undefined ? [] : [mend])].join(" | "),
  );

test("every syntax error of a file is told, each once, in the order of the text", () => {
  const text = `{
  units: "mm-N-kg",
  "bars": [
    {"id": 'leg-1', "length": 01},
    {"id": "leg-2" "length": .5,}, // short one
    {"id": "leg-3", "length": NaN}
  ],
}
`;
  expect(told(text)).toEqual([
    '2:3 | key-without-quotes | units | write "units"',
    "4:12 | single-quotes | 'leg-1' | write \" instead of '",
    "4:31 | malformed-number | 01 | write 1",
    '5:20 | missing-comma | "length" | put a comma between the two',
    "5:30 | malformed-number | .5 | write 0.5",
    "5:33 | trailing-comma | } | remove the comma before it",
    '5:36 | comment | the comment // short one | remove it, or keep it as text under a key that holds remarks (a frame has "notes")',
    "6:31 | not-a-number | NaN",
    "8:1 | trailing-comma | } | remove the comma before it",
  ]);
});

test("a repeated key is told with both positions and its pointer", () => {
  const [problem] = open('{"bars": [{"id": "a",\n  "profile": 1, "i\\u0064": "b"}]}').problems;
  expect(problem).toMatchObject({
    code: "duplicate-key",
    place: { pointer: "/bars/0/id", line: 2, column: 17, endColumn: 26 },
    found: 'the key "id" again',
    expected: "each key once; it first stands at line 1, column 12",
  });
});

test("keys of one object do not clash with those of its neighbours, children or earlier siblings", () => {
  expect(codesOf(open('{"a":{"a":[{"a":1},{"a":2}]},"b":{"a":{"b":1}}}'))).toEqual([]);
});

test.each([
  ["30mm", 'write "30 mm"'],
  ["+4", "write 4"],
  ["-.5", "write -0.5"],
  ["007", "write 7"],
  ["1.", "write 1"],
  ["True", "write true"],
  ["None", "write null"],
  ["rail", 'write "rail"'],
])("for %s the mend is: %s", (word, mend) => {
  expect(open(`[${word}]`).problems[0]?.mend).toBe(mend);
});

test("no more than the offending token is repeated, 40 characters at most, nothing hidden in it", () => {
  const secret = "s".repeat(500);
  for (const text of [
    `{"token": "${secret}" x`,
    `[${secret}]`,
    `{"${secret}":1,"${secret}":2}`,
    `["${secret}`,
    `[1 //${secret}`,
  ]) {
    for (const problem of open(text).problems) {
      expect(JSON.stringify([problem.found, problem.expected, problem.mend])).not.toContain("s".repeat(41));
    }
  }
  const [hidden] = open("[\u202eevil\u001b[31m]").problems;
  expect(hidden?.found).toBe("\\u202e");
  for (const problem of open('{"a\u202e\u001b":1, "a\u202e\u001b":2}').problems) {
    // biome-ignore lint/suspicious/noControlCharactersInRegex: that there are none is the point
    expect(problem.found).not.toMatch(/[\u0000-\u001f\u202e]/);
  }
});

test(`listing ends after ${PROBLEM_COUNT} problems, and the last one says so`, () => {
  const { problems } = open(`[${"NaN,".repeat(PROBLEM_COUNT + 5)}1]`);
  expect(problems.length).toBe(PROBLEM_COUNT);
  expect(problems.at(-1)).toMatchObject({ code: "too-many-problems", weight: "error" });
  expect(codesOf(open(`[${"NaN,".repeat(PROBLEM_COUNT - 1)}1]`))).not.toContain("too-many-problems");
});

test("warnings alone do not refuse a file, however few; too many do", () => {
  expect(open(`[${"-0,".repeat(10)}1]`).document?.value).toEqual([...new Array(10).fill(0), 1]);
  expect(open(`[${"-0,".repeat(PROBLEM_COUNT)}1]`).document).toBeUndefined();
});
