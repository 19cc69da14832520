import { expect, it } from "vitest";
import { type Terminal, wantsColour, widthOf } from "../../src/cli/terminal.ts";

function terminal(tty: boolean, env: Readonly<Record<string, string>> = {}, columns = 80): Terminal {
  const stdout = { isTTY: tty, columns } as NodeJS.WriteStream;
  return { stdout, stderr: stdout, env };
}

it.each([
  ["a terminal", true, {}, true],
  ["no terminal", false, {}, false],
  ["a dumb terminal", true, { TERM: "dumb" }, false],
  ["NO_COLOR", true, { NO_COLOR: "1" }, false],
  ["an empty NO_COLOR, which does not count", true, { NO_COLOR: "" }, true],
  ["FORCE_COLOR without a terminal", false, { FORCE_COLOR: "1" }, true],
  ["FORCE_COLOR 0", true, { FORCE_COLOR: "0" }, false],
  ["NO_COLOR before FORCE_COLOR", true, { NO_COLOR: "1", FORCE_COLOR: "1" }, false],
])("colours by itself as wished with %s", (_, tty, env, coloured) => {
  expect(wantsColour("auto", terminal(tty, env))).toBe(coloured);
});

it("does as it is told whatever the surroundings", () => {
  expect(wantsColour("always", terminal(false, { NO_COLOR: "1" }))).toBe(true);
  expect(wantsColour("never", terminal(true, { FORCE_COLOR: "1" }))).toBe(false);
});

it.each([
  [false, 60, 100],
  [true, 60, 60],
  [true, 300, 100],
  [true, 10, 40],
])("sets lines on a terminal (%s) of %i columns to %i", (tty, columns, width) => {
  expect(widthOf(terminal(tty, {}, columns))).toBe(width);
});
