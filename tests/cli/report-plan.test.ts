import { Command } from "commander";
import { describe, expect, it } from "vitest";
import { type PlannedReport, promisedForm, reportPlan } from "../../src/cli/report-plan.ts";

function planOf(words: string): readonly PlannedReport[] {
  const plan = reportPlan();
  const command = new Command().exitOverride();
  for (const option of plan.options) command.addOption(option);
  command.parse(words.split(" ").filter(Boolean), { from: "user" });
  return plan.reports();
}

describe("the reports of a run", () => {
  it.each([
    ["", [{ as: "text" }]],
    ["--as json", [{ as: "json" }]],
    ["--to t.txt", [{ as: "text", to: "t.txt" }]],
    ["--as sarif --to a", [{ as: "text" }, { as: "sarif", to: "a" }]],
    ["--as sarif --to a --as json", [{ as: "sarif", to: "a" }, { as: "json" }]],
    [
      "--as=sarif --to=a --as=text --to=b",
      [
        { as: "sarif", to: "a" },
        { as: "text", to: "b" },
      ],
    ],
  ])("with %s are as planned", (words, reports) => {
    expect(planOf(words)).toEqual(reports);
  });

  it.each([
    ["--as json --as sarif", "two reports for standard output"],
    ["--as json --to a --as sarif --to a", "two reports for a"],
    ["--as json --to a --to b", "--to b has no --as of its own"],
  ])("with %s are refused", (words, why) => {
    expect(() => planOf(words)).toThrow(why);
  });
});

describe("the form standard output was promised", () => {
  it.each([
    [["--as", "json"], "json"],
    [["x", "--as=sarif", "--what"], "sarif"],
    [["--as", "json", "--to", "a"], undefined],
    [["--as", "json", "--as", "sarif", "--to", "a"], "json"],
    [["--as", "text"], undefined],
    [["--as", "yaml"], undefined],
    [["--as"], undefined],
    [["--", "--as", "json"], undefined],
  ])("in %j is %s", (argv, form) => {
    expect(promisedForm(argv)).toBe(form);
  });
});
