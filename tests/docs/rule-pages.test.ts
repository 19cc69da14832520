import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { sceneOf } from "../../src/drawing/scene.ts";
import { picturesFor } from "../../src/report/sheet/pictures.ts";
import { builtInRules } from "../../src/rules/index.generated.ts";
import { inspectText, inspectWhole } from "../demo/inspect-demo.ts";

const folder = "docs/rules";
/**
 * Their check is of parts as such: which they are is all there is to see, and those stand out in the frame. A new rule is listed here until
 * its check has a picture.
 */
const OF_PARTS: readonly string[] = ["bar.adrift", "build.deadlock", "build.too-heavy"];
/** Rules of which the sheet shows only where in the frame a finding is, as the tests below come to them. */
const shownWhole = new Set<string>();
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
    const { report, frame } = inspectWhole(id, text(`${id}.fault.frame.json`));
    if (report.verdict === "unread") throw new Error(JSON.stringify(report.problems));
    const found = report.findings.filter(({ rule }) => rule === id).map(({ key, at }) => `${key} at ${at.id}`);
    expect([...new Set(found)].sort()).toEqual([...named].sort());
    expect(found.length).toBeGreaterThan(0);
    const rest = report.findings.filter(({ rule, level }) => rule !== id && level !== "note").map(({ rule }) => rule);
    expect([...new Set(rest)].sort()).toEqual(others);
    const picture = frame && picturesFor(frame, sceneOf(frame));
    for (const finding of report.findings.filter(({ rule }) => rule === id)) {
      const shown = picture?.(finding)?.markup ?? "";
      expect(shown, finding.text).toMatch(/<svg|<table/);
      if (shown.includes('data-seen="whole"')) shownWhole.add(id);
    }
  });

  it("shows a frame that no rule holds or rejects", () => {
    const report = inspectText(id, text(`${id}.sound.frame.json`));
    expect(report.verdict).toBe("accept");
  });
});

it("on the sheet a finding of every rule has a picture of its own check, but for rules about parts as such", () => {
  expect([...shownWhole].sort()).toEqual(OF_PARTS);
});
