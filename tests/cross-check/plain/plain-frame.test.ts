import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { checkedFrames } from "../frames/all.ts";
import { ourAnswers } from "../our-answers.ts";
import { readResults } from "../stored.ts";
import { runPlain, scipyVersion } from "./run-plain.ts";

const RESULTS = fileURLToPath(new URL("buckling.json", import.meta.url));
/** Factors with the axial forces of the bars alone, and with their moments and shears too. */
interface Factors {
  readonly axial: readonly number[];
  readonly moments: readonly number[];
}
type Answers = Readonly<Record<string, Factors>>;

const scipy = scipyVersion();
const pressed = checkedFrames.filter(({ analysis }) => analysis.kind === "buckling");
const run = (): Answers => runPlain("run_buckling.py", pressed) as Answers;

// RECORD_CROSS_CHECK=1 npx vitest run tests/cross-check stores what the scipy of this machine says.
if (process.env.RECORD_CROSS_CHECK) {
  if (!scipy) throw new Error("python3 with scipy is not on the PATH");
  writeFileSync(RESULTS, `${JSON.stringify({ scipy, frames: run() }, undefined, 1)}\n`);
}
const stored = JSON.parse(readFileSync(RESULTS, "utf8")) as { readonly scipy: string; readonly frames: Answers };
const ccx = readResults();

/** Twelve cubic pieces a bar, constant in shear; found: 4e-4 in a higher mode, 1e-4 in the first. */
const AXIAL = 5e-4;
/** The same, and how a solid bar carries shear and torque; found: 3e-3 in a higher mode, 3e-4 in the first. */
const WITH_MOMENTS = 4e-3;
const LIVE = 1e-6;

function worst(found: readonly number[], expected: readonly number[]): number {
  expect(found.length).toBe(expected.length);
  return Math.max(...found.map((value, i) => Math.abs(value / (expected[i] ?? Number.NaN) - 1)));
}

describe.each(pressed)("$id, by a plain solver with scipy.linalg.eigh: $title", (checked) => {
  const known = stored.frames[checked.id];
  if (!known) throw new Error(`no stored factors for ${checked.id}`);

  test("ours are its factors with axial forces alone", () => {
    expect(worst(ourAnswers(checked).factors, known.axial)).toBeLessThan(AXIAL);
  });

  test("those of CalculiX are its factors with moments too", () => {
    expect(worst(ccx.frames[checked.id]?.answers.factors ?? [], known.moments)).toBeLessThan(WITH_MOMENTS);
  });
});

test("scipy, run now, says what is stored", (context) => {
  if (!scipy) return context.skip("python3 with scipy is not on the PATH: stored results are used");
  for (const [id, { axial, moments }] of Object.entries(run())) {
    expect(worst(axial, stored.frames[id]?.axial ?? []), id).toBeLessThan(LIVE);
    expect(worst(moments, stored.frames[id]?.moments ?? []), id).toBeLessThan(LIVE);
  }
});
