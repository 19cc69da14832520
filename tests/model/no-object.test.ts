import { expect, it } from "vitest";
import { readHouse } from "../../src/house/read-house.ts";
import { readFrame } from "../../src/model/read-frame.ts";
import { readStockFile } from "../../src/model/read-stock.ts";
import { builtinStock } from "../../src/model/stock/builtin-stock.ts";

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const frameOf = (text: string) =>
  readFrame({ file: "a.frame.json", bytes: bytes(text), stock: builtinStock() }).problems;

it.each(["null", "[]", "3"])("a file that holds %s is told what it should hold, in a sentence", (text) => {
  const wanted = "one object { … } that holds ";
  expect(frameOf(text).map(({ expected }) => expected)).toEqual([`${wanted}one frame of T-slotted aluminium bars`]);
  const house = readHouse("h.json", bytes(text));
  expect("problems" in house && house.problems.map(({ expected }) => expected)).toEqual([`${wanted}a team's choices`]);
});

it("an empty object is asked for its format by value", () => {
  expect(frameOf("{}").map(({ expected }) => expected)).toContain('the key "format": 1');
});

it("a frame in place of a stock file is said to be one, and nothing else", () => {
  const { problems, source } = readStockFile(
    "a.frame.json",
    bytes('{"format":1,"title":"t","units":"mm-N-kg","bars":[]}'),
  );
  expect([problems.map(({ code }) => code), source]).toEqual([["wrong-file"], undefined]);
});
