import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { builtInRules } from "../../src/rules/index.generated.ts";
import { inspectText } from "../demo/inspect-demo.ts";

const folder = "docs/rules";
const text = (name: string): string => readFileSync(`${folder}/${name}`, "utf8");

describe.each(builtInRules.map(({ id }) => id))("the page of %s", (id) => {
  it("exists, with all its sections", () => {
    expect(existsSync(`${folder}/${id}.md`)).toBe(true);
    for (const heading of ["Why it matters on the floor", "How it is computed", "Limits of validity", "Frames"])
      expect(text(`${id}.md`)).toContain(`## ${heading}\n`);
  });

  it("shows a frame that gives exactly the findings it names", () => {
    const [, frames = ""] = text(`${id}.md`).split("## Frames\n");
    const named = Array.from(frames.matchAll(/^- `([^`]+)` at `([^`]+)`$/gm), ([, key, at]) => `${key} at ${at}`);
    const [, words = ""] = /^Other rules that hold or reject it too: (.*)\.$/m.exec(frames) ?? [];
    const others = Array.from(words.matchAll(/`([^`]+)`/g), ([, other]) => other);
    const report = inspectText(id, text(`${id}.fault.frame.json`));
    if (report.verdict === "unread") throw new Error(JSON.stringify(report.problems));
    const found = report.findings.filter(({ rule }) => rule === id).map(({ key, at }) => `${key} at ${at.id}`);
    expect([...new Set(found)].sort()).toEqual([...named].sort());
    expect(found.length).toBeGreaterThan(0);
    const rest = report.findings.filter(({ rule, level }) => rule !== id && level !== "note").map(({ rule }) => rule);
    expect([...new Set(rest)].sort()).toEqual(others);
  });

  it("shows a frame that no rule holds or rejects", () => {
    const report = inspectText(id, text(`${id}.sound.frame.json`));
    expect(report.verdict).toBe("accept");
  });
});
