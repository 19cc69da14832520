import { expect, test } from "vitest";
import { stockNamedBy } from "../../../src/model/stock-named.ts";
import { openDocument } from "../../../src/model/text/document.ts";
import { bench } from "./bench-text.ts";
import { read, told } from "./read.ts";

test.each([
  ["a list", "[]"],
  ["a number", "7"],
  ["nothing", "null"],
])("%s is no frame", (_what, text) => {
  expect(read(text).problems.map((problem) => problem.code)).toEqual(["wrong-type"]);
});

test("a text that is no JSON is told by its own problems, without a document", () => {
  const { document, frame, problems } = read('{"format": 1,');
  expect(document).toBeUndefined();
  expect(frame).toBeUndefined();
  expect(problems.length).toBeGreaterThan(0);
});

test("an empty object lacks all four keys", () => {
  const { problems } = read("{}");
  expect(problems.map((problem) => problem.expected.slice(0, 14))).toEqual([
    'the key "bars"',
    'the key "forma',
    'the key "title',
    'the key "units',
  ]);
});

test("faults of all lists and of the file around them are told together, in the order of the text", () => {
  const text = `{
  "format": 1, "title": "", "units": "mm-N-kg",
  "loads": [{"on": "a", "force": 1}],
  "bars": [
    {"id": "a", "profile": "40x40-8", "from": [0, 0, 0], "to": [1, 0, 0]},
    {"id": "b c", "profile": "40x40-8", "from": [0, 0, 0]}
  ],
  "joints": {}
}`;
  const places = read(text).problems.map(({ code, place }) => `${place.line}:${place.column} ${code}`);
  expect(places).toEqual([
    "2:25 wrong-length",
    "3:13 missing-key",
    "6:5 missing-key",
    "6:12 wrong-form",
    "8:13 wrong-type",
  ]);
});

test("beside a fault of form, a name is told wrong unless it may mean what was left out", () => {
  const faults = (text: string, ...edits: readonly (readonly [string, string])[]): readonly string[] =>
    told(edits.reduce((before, [piece, by]) => before.replace(piece, () => by), text));
  const misspelt = ['"pressure": 1.5', '"presure": 1.5'] as const;
  const unknown = '13:25 unknown-part: "rail-3"; expected the id of a bar (did you mean "rail-1" or "rail-2"?)';
  const [form] = faults(bench, misspelt);
  expect(form).toContain("unknown-key");
  expect(faults(bench, misspelt, ['"rail-2"], "by"', '"rail-3"], "by"'])).toEqual([unknown, form]);
  // The bar that is left out for its own fault is named rightly.
  const [own, ...others] = faults(bench, ['"rail-2", "profile"', '"rail-2", "profil"']);
  expect(own).toContain("unknown-key");
  expect(others.every((words) => !words.includes("rail-2"))).toBe(true);
});

test("warnings of the text stay beside what the frame is told", () => {
  const text =
    '{"format": 1, "title": "t", "units": "mm-N-kg", "bars": [{"id": "a", "profile": "40x40", "from": [-0, 0, 0], "to": [500, 0, 0]}]}';
  expect(told(text)).toEqual([
    '1:81 unknown-stock: profile "40x40"; expected a profile of the stock (did you mean "40x40-8"?)',
    "1:99 warning minus-zero: -0; expected 0 (write 0; it is read as 0)",
  ]);
});

test("stock files are found by the host whatever else is wrong", () => {
  const named = (value: unknown) => {
    const { document } = openDocument("a.frame.json", new TextEncoder().encode(JSON.stringify(value)));
    return document === undefined ? [] : stockNamedBy(document).map(({ path, place }) => `${path} ${place.column}`);
  };
  expect(named({ stock: ["./a.stock.json", 7, "", "b.stock.json"] })).toEqual(["./a.stock.json 11", "b.stock.json 33"]);
  expect(named({ stock: "a.stock.json" })).toEqual([]);
  expect(named([])).toEqual([]);
  expect(named(null)).toEqual([]);
});
