import { describe, expect, it } from "vitest";
import { textReporter } from "../../src/report/text/text-reporter.ts";
import { inspectText, textOf } from "../demo/inspect-demo.ts";

type Draft = { loads: { pressure?: unknown }[]; kits?: Record<string, unknown> };

function changed(edit: (draft: Draft) => void): string {
  const draft = JSON.parse(textOf("first-bench")) as Draft;
  edit(draft);
  return JSON.stringify(draft);
}

describe("a value that is read with doubt", () => {
  it("keeps a sound frame from accept, and the ticket says so", () => {
    const report = inspectText(
      "bench",
      changed(({ loads }) => {
        const load = loads.find(({ pressure }) => pressure !== undefined);
        if (load) load.pressure = "1.5 Pa"; // 1.5 kPa was meant
      }),
    );
    expect(report.problems.map(({ code }) => code)).toEqual(["doubtful-value"]);
    expect(report.findings).toEqual([]);
    expect(report).toMatchObject({ verdict: "hold", complete: true });
    expect([...textReporter().frame(report)].join("")).toContain(
      "doubtful in the file, in 1 place; keeps the frame from accept:",
    );
  });

  it("differs from a warning that no number hangs on", () => {
    const report = inspectText(
      "bench",
      changed((draft) => {
        draft.kits = { ...draft.kits, spare: [{ connector: "inside-bracket-40", on: "below" }] };
      }),
    );
    expect(report.problems.map(({ code }) => code)).toEqual(["unused-kit"]);
    expect(report.verdict).toBe("accept");
    expect([...textReporter().frame(report)].join("")).not.toContain("keeps the frame from accept");
  });
});
