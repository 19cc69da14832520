import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { EXIT } from "../../src/cli/exit-code.ts";

it("the page of exit codes has one row for each code, in their order", () => {
  const rows = Array.from(readFileSync("docs/reports.md", "utf8").matchAll(/^\| (\d) \|/gm), ([, code]) =>
    Number(code),
  );
  expect(rows).toEqual(Object.values(EXIT));
});
