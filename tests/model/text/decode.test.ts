import { expect, test } from "vitest";
import { openDocument } from "../../../src/model/text/document.ts";
import { FILE_BYTES } from "../../../src/model/text/limits.ts";

const bytes = (...parts: readonly (string | readonly number[])[]): Uint8Array =>
  Uint8Array.from(
    parts.flatMap((part) => (typeof part === "string" ? [...new TextEncoder().encode(part)] : [...part])),
  );

const refusal = (input: Uint8Array) => {
  const { document, problems } = openDocument("a.json", input);
  expect(document).toBeUndefined();
  expect(problems).toHaveLength(1);
  return problems[0];
};

test("a UTF-8 byte order mark is read past, with a warning, and counts in no column", () => {
  const { document, problems } = openDocument("a.json", bytes([0xef, 0xbb, 0xbf], "[1]"));
  expect(document?.value).toEqual([1]);
  expect(document?.place("/0")).toMatchObject({ line: 1, column: 2 });
  expect(problems.map(({ code, weight }) => [code, weight])).toEqual([["byte-order-mark", "warning"]]);
});

test.each([
  ["UTF-16", "with mark, little-endian", bytes([0xff, 0xfe, 0x5b, 0, 0x5d, 0])],
  ["UTF-16", "with mark, big-endian", bytes([0xfe, 0xff, 0, 0x5b, 0, 0x5d])],
  ["UTF-16", "without mark, little-endian", bytes([0x5b, 0, 0x5d, 0])],
  ["UTF-16", "without mark, big-endian", bytes([0, 0x5b, 0, 0x5d])],
  ["UTF-32", "with mark, little-endian", bytes([0xff, 0xfe, 0, 0, 0x5b, 0, 0, 0])],
  ["UTF-32", "with mark, big-endian", bytes([0, 0, 0xfe, 0xff, 0, 0, 0, 0x5b])],
  ["UTF-32", "without mark, little-endian", bytes([0x5b, 0, 0, 0])],
  ["UTF-32", "without mark, big-endian", bytes([0, 0, 0, 0x5b])],
])("%s %s is refused by name", (name, _how, input) => {
  expect(refusal(input)).toMatchObject({ code: "not-utf-8", found: `${name} text` });
});

test.each([
  ["a Latin-1 letter", [0xe9], "a byte of another encoding, perhaps Latin-1: 0xE9 at byte offset 9"],
  ["an overlong slash", [0xc0, 0xaf], "an overlong encoding: 0xC0 at byte offset 9"],
  ["an overlong three bytes", [0xe0, 0x80, 0xaf], "an overlong encoding: 0xE0 at byte offset 9"],
  ["a surrogate half", [0xed, 0xa0, 0x80], "half of a surrogate pair: 0xED at byte offset 9"],
  ["a lone continuation byte", [0x80], "a continuation byte without its beginning: 0x80 at byte offset 9"],
  ["beyond U+10FFFF", [0xf4, 0x90, 0x80, 0x80], "no byte that Unicode text can hold: 0xF4 at byte offset 9"],
  ["byte FF", [0xff], "no byte that Unicode text can hold: 0xFF at byte offset 9"],
])("%s is refused with its byte offset and line", (_about, inside, found) => {
  // Offset 9 is character 8: the é before it takes two bytes.
  const problem = refusal(bytes('[\n"é", "', inside, '", 1]'));
  expect(problem).toMatchObject({ code: "not-utf-8", weight: "error", found, place: { line: 2, column: 7 } });
});

test("a character cut by the end of the file is told as such", () => {
  expect(refusal(bytes('"', [0xe2, 0x82]))?.found).toBe(
    "a character cut off by the end of the file: 0xE2 at byte offset 1",
  );
});

test("a file over the limit is refused before it is decoded, at the limit it is not", () => {
  expect(refusal(new Uint8Array(FILE_BYTES + 1))?.code).toBe("file-too-large");
  // A zero byte before blanks: no JSON, but the size is not what is wrong.
  expect(refusal(new Uint8Array(FILE_BYTES).fill(0x20, 1))?.code).toBe("not-utf-8");
});
