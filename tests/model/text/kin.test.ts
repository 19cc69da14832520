import { expect, it } from "vitest";
import { kinOf } from "../../../src/model/text/kin.ts";

const NAMES = ["20x20-5", "40x40-8-light", "40x40-8", "40x80-8", "45x45-10", "1.5x1.5-5/16"];

it.each([
  ["4040", ["40x40-8-light", "40x40-8"]],
  ["8", ["40x40-8-light", "40x40-8", "40x80-8"]],
  ["light", ["40x40-8-light"]],
  ["40 x 80", ["40x80-8"]],
  ["nope", []],
  ["", []],
])('"%s" has kin', (word, kin) => {
  expect(kinOf(word, NAMES, 9)).toEqual(kin);
});

it("names no more than asked for", () => {
  expect(kinOf("8", NAMES, 2)).toEqual(["40x40-8-light", "40x40-8"]);
});
