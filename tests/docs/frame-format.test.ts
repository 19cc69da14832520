import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { noSettings } from "../../src/house/settings.ts";
import { inspectFile } from "../../src/inspection/inspect-file.ts";
import { builtInRules } from "../../src/rules/index.generated.ts";

const page = readFileSync("docs/frame-format.md", "utf8");
const examples = [...page.matchAll(/<!-- example -->\s+```json\n([\s\S]*?)```/g)].map(([, text = ""]) => text);

describe("the page on the frame file", () => {
  it("has examples", () => {
    expect(examples.length).toBeGreaterThan(0);
  });
  it.each(examples)("shows frames that are read and come out accept", (text) => {
    const house = { ...noSettings("2000-01-01"), rules: builtInRules };
    const report = inspectFile({ file: "example.frame.json", bytes: new TextEncoder().encode(text), stock: [], house });
    expect(report.problems).toEqual([]);
    expect(report.findings.map((finding) => `${finding.rule} ${finding.at.id}: ${finding.text}`)).toEqual([]);
    expect(report.verdict).toBe("accept");
  });
});
