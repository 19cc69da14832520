import { expect, test } from "vitest";
import { keysOf, pointerTo } from "../../../src/model/text/pointer.ts";
import { open } from "./open.ts";

const TEXT = `{
  "title": "Bench",
  "bars": [
    {"id": "leg-1", "from": [0, 0, 0]},
    {"id": "le\\u0067-2", "a/b~c": {"": true}}
  ]
}`;

function documentOf(text: string) {
  const { document } = open(text);
  if (document === undefined) throw new Error("the text was meant to be sound");
  return document;
}

test.each([
  ["", 1, 1, 7, 2],
  ["/title", 2, 12, 2, 19],
  ["/bars", 3, 11, 6, 4],
  ["/bars/0", 4, 5, 4, 39],
  ["/bars/0/from/2", 4, 36, 4, 37],
  ["/bars/1/id", 5, 12, 5, 24],
  ["/bars/1/a~1b~0c/", 5, 40, 5, 44],
])("the value at %j stands at %d:%d to %d:%d", (pointer, line, column, endLine, endColumn) => {
  expect(documentOf(TEXT).place(pointer)).toEqual({ file: "a.json", pointer, line, column, endLine, endColumn });
});

test("a key stands before its value; a list entry has none", () => {
  const document = documentOf(TEXT);
  expect(document.keyPlace("/bars/1/a~1b~0c")).toMatchObject({ line: 5, column: 26, endColumn: 33 });
  expect(document.keyPlace("/bars/0")).toEqual(document.place("/bars/0"));
});

test.each([
  ["/bars/7/id", "/bars"],
  ["/bars/0/from/3", "/bars/0/from"],
  ["/nothing", ""],
  ["/title/0", "/title"],
  ["/bars/00", "/bars"],
  ["no pointer", ""],
])("a pointer to nothing, %j, gets the place of %j and keeps its name", (pointer, ancestor) => {
  const document = documentOf(TEXT);
  expect(document.place(pointer)).toEqual({ ...document.place(ancestor), pointer });
});

test("many places in one pass are the same as one by one", () => {
  const pointers = ["/bars/1", "/title", "", "/bars/0/from/1", "/bars/9", "/title"];
  const together = documentOf(TEXT).places(pointers);
  const apart = documentOf(TEXT);
  expect([...together]).toEqual([...new Set(pointers)].map((pointer) => [pointer, apart.place(pointer)]));
});

test("LF, CR and CRLF give the same lines", () => {
  for (const end of ["\n", "\r", "\r\n"]) {
    expect(documentOf(TEXT.replaceAll("\n", end)).place("/bars/1/id")).toMatchObject({ line: 5, column: 12 });
  }
});

test("columns count UTF-16 units", () => {
  expect(documentOf('["𝄞", 1]').place("/1")).toMatchObject({ column: 8, endColumn: 9 });
});

test("spans cut the very text of a value", () => {
  const document = documentOf(TEXT);
  const { start, end } = document.span("/bars/0/from");
  expect(document.text.slice(start, end)).toBe("[0, 0, 0]");
});

test("keys called like parts of every object are keys like any other", () => {
  const document = documentOf('{"__proto__": {"constructor": 1}, "toString": 2}');
  expect(document.place("/__proto__/constructor")).toMatchObject({ column: 31 });
  expect(document.place("/toString")).toMatchObject({ column: 47 });
  expect(document.place("/valueOf")).toMatchObject({ column: 1 });
});

test("pointers are split and joined after RFC 6901, section 5", () => {
  for (const [pointer, keys] of [
    ["", []],
    ["/", [""]],
    ["/a~1b", ["a/b"]],
    ["/m~0n", ["m~n"]],
    ["/~01", ["~1"]],
    ["/foo/0", ["foo", "0"]],
  ] as const) {
    expect(keysOf(pointer)).toEqual(keys);
    expect(pointerTo("", ...keys)).toBe(pointer);
  }
});
