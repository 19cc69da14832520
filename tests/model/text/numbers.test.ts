import { expect, test } from "vitest";
import { mendedNumber, numberFault } from "../../../src/model/text/numbers.ts";

test.each([
  "0",
  "0.1",
  "-0.5",
  "123456789012345",
  "9007199254740992",
  "-9007199254740992",
  "0.1000000000000000055511151231257827", // the exact value of the double nearest to 0.1 begins so
  "3.14159265358979323846264338327950288",
  "1e23", // no double, but the nearest differs by 8e-17 of it
  "5e-324",
  "2.2250738585072014e-308",
  "1.7976931348623157e308",
  "0e999",
])("%s passes", (literal) => {
  expect(numberFault(literal)).toBeUndefined();
});

test.each([
  ["9007199254740993", "number-loses-digits", "it is read as 9007199254740992"],
  ["-9007199254740993", "number-loses-digits", "it is read as -9007199254740992"],
  ["100000000000000000001", "number-loses-digits", "it is read as 100000000000000000000"],
  ["3e-324", "number-loses-digits", "it is read as 5e-324"],
  ["1.23456789e-320", "number-loses-digits", "it is read as 1.2347e-320"],
  ["1e-324", "number-too-small", "write 0; it is read as 0"],
  ["-0.0", "minus-zero", "write 0; it is read as 0"],
  ["1.8e308", "number-too-large", undefined],
])("%s gives %s", (literal, code, mend) => {
  expect(numberFault(literal)).toMatchObject(mend === undefined ? { code } : { code, mend });
});

test("a hostile literal costs no time that grows with its square", () => {
  const start = performance.now();
  expect(mendedNumber(`${"0".repeat(1_000_000)}x`)).toBeUndefined();
  expect(numberFault(`0.${"0".repeat(1_000_000)}1`)?.code).toBe("number-too-small");
  expect(numberFault(`0.${"1".repeat(1_000_000)}`)).toBeUndefined();
  expect(performance.now() - start).toBeLessThan(2000);
});
