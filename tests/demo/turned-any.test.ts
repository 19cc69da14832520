import { describe, expect, it } from "vitest";
import type { Finding, Report } from "../../src/inspection/report.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { inspectText, textOf } from "./inspect-demo.ts";
import { turnedAny } from "./turned-any.ts";

/** The first bench, its brackets on faces counted by the bar: of legs A and C look along x, of level bars B and D sideways. */
function bench(): FrameFile {
  const file = JSON.parse(textOf("first-bench")) as FrameFile;
  const bracket = (on: "A" | "B" | "C" | "D") => ({ connector: "gusset-bracket-40", on });
  file.kits = { ...file.kits, post: [bracket("A"), bracket("C")], cross: [bracket("B"), bracket("D")] };
  for (const joint of file.joints ?? []) {
    if (joint.bars.includes("cross-1") || joint.bars.includes("shelf-3")) joint.by = "cross";
  }
  return file;
}

/** Solving again in other coordinates. */
const ROUNDING = 1e-5;

interface Said {
  readonly words: unknown;
  /** Measured values and utilisations, by what they are of. */
  readonly values: ReadonlyMap<string, number>;
}

const named = ({ rule, key, level, at, related }: Finding): string =>
  [rule, key, level, at.id, ...related.map((other) => other.at.id).sort()].join(" ");

function said({ verdict, complete, problems, counts, findings, undecided, tallies }: Report): Said {
  const values = new Map<string, number>();
  const measure = (name: string, value: number | undefined): void => {
    // Below a billionth a value is the rounding of a zero.
    if (value === undefined || value < 1e-9) return;
    values.set(name, value);
  };
  for (const finding of findings) measure(named(finding), finding.measure?.measured);
  for (const { rule, closest } of tallies) measure(rule, closest?.utilisation);
  const words = {
    verdict,
    complete,
    problems,
    counts,
    findings: findings.map(named).sort(),
    undecided: undecided.map(({ rules, holds }) => ({ rules, holds })),
    tallies: tallies.map(({ rule, closest, ...counted }) => ({ rule, ...counted })),
  };
  return { words, values };
}

function same(again: Said, first: Said): void {
  expect(again.words).toEqual(first.words);
  expect([...again.values.keys()].sort()).toEqual([...first.values.keys()].sort());
  for (const [name, value] of first.values) {
    const off = Math.abs((again.values.get(name) ?? Number.NaN) - value);
    expect(off, `${name}: ${value}`).toBeLessThanOrEqual(ROUNDING * value);
  }
}

const report = (file: FrameFile): Report => inspectText("first-bench", JSON.stringify(file));

/** A thinner top under more load, so that there is something to find: its sheet bends, its beams sag. */
function faulty(): FrameFile {
  const file = bench();
  for (const panel of file.panels ?? []) panel.sheet = "plywood-6";
  for (const load of file.loads ?? []) load.pressure = 4;
  return file;
}

describe("the first bench, its faces counted by the bar,", () => {
  it("says the same as with faces that look along the drawing", () => {
    same(said(report(bench())), said(inspectText("first-bench", textOf("first-bench"))));
  });

  it.each([
    ["sound", bench],
    ["under too thin a top", faulty],
  ])("says the same turned by any angle: %s", (_, made) => {
    const first = said(report(made()));
    expect([...first.values.keys()].some((name) => name.startsWith("panel.flexes sags"))).toBe(made === faulty);
    for (const degrees of [5, 37, 90, 180]) same(said(report(turnedAny(made(), degrees))), first);
  });
});
