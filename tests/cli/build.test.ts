import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildSheetOf } from "../../src/cli/build-sheet-of.ts";
import { noSettings } from "../../src/house/settings.ts";
import { buildJson } from "../../src/report/build/json.ts";
import { buildSvg } from "../../src/report/build/svg.ts";
import { buildText } from "../../src/report/build/text.ts";
import { inspectText } from "../demo/inspect-demo.ts";
import { frameOf } from "../facts/known.ts";
import { makePlace, type Place } from "./run.ts";

let place: Place;
beforeAll(async () => {
  place = await makePlace("real");
});
afterAll(() => place.remove());

async function build(...args: readonly string[]): Promise<string> {
  const { code, stdout, stderr } = await place.run(["build", ...args], { cwd: process.cwd() });
  expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
  return stdout;
}

interface Piece {
  readonly id: string;
  readonly bars: readonly string[];
  readonly nuts: readonly { readonly bar: string; readonly count: number; readonly spare: number }[];
  readonly steps: readonly {
    readonly number: number;
    readonly what: string;
    readonly tightens: readonly { count: number }[];
  }[];
}

const BENCH = "docs/demo/potting-bench.frame.json";
const SOUND = "docs/rules/bar.adrift.sound.frame.json";

/** As the command makes it of the sound bench, in which nothing was found. */
const sheet = buildSheetOf(BENCH, frameOf(JSON.parse(readFileSync(BENCH, "utf8"))), noSettings("2027-03-31"));

describe("trysquare build", () => {
  it("counts as many nuts and screws as the bench has holes in its brackets, in steps numbered through", () => {
    const { pieces } = JSON.parse([...buildJson(sheet)].join("")) as { readonly pieces: readonly Piece[] };
    const nuts = pieces.flatMap((piece) => piece.nuts.map((one) => one.count)).reduce((a, b) => a + b, 0);
    const screws = pieces
      .flatMap((piece) => piece.steps.flatMap((step) => step.tightens.map((one) => one.count)))
      .reduce((a, b) => a + b, 0);
    // Ends: 6 legs at the top, 4 crosses, 3 sides and 4 shelf bars at both ends, 2 uprights at both: 32, two brackets each.
    expect([nuts, screws]).toEqual([32 * 2 * 2, 32 * 2 * 2]);
    const numbers = pieces.flatMap((piece) => piece.steps.map((step) => step.number));
    expect(numbers).toEqual(numbers.map((_, i) => i + 1));
  });

  it("reads out the steps in an order a person follows", async () => {
    const text = await build(BENCH);
    expect(text).toBe([...buildText(sheet)].join(""));
    const places = [
      "flat on a table",
      "Lay into the slots, and count them:",
      "Square it",
      "Screw the feet or casters on while it lies",
      "The frame\n",
      "Hold or clamp both, so that nothing falls over",
      "cross-1, cross-2, cross-3 and cross-4, from above",
      "Put in top, from above",
      "Push caps on",
      "Check the torques again",
    ].map((words) => text.indexOf(words));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places[0]).toBeGreaterThan(0);
  });

  it("draws each step: one picture for runs of like steps, what goes on brought out", () => {
    const svg = [...buildSvg(sheet)].join("");
    // 31 steps, of which 2-3, 4-5, 10-11, 15-17, 18-19, 23-26 and 28-29 are told together.
    expect(svg.match(/font-weight="bold">/g)).toHaveLength(31 - (1 + 1 + 1 + 2 + 1 + 3 + 1));
    expect(svg).toContain(">23–26<");
    expect(svg).not.toMatch(/<script|href=|NaN|undefined/);
  });

  it("says first what rejects a frame, and nothing of the kind of a sound one", async () => {
    const faulty = "docs/rules/bar.adrift.fault.frame.json";
    const { mendFirst } = JSON.parse(await build(faulty, "--as", "json")) as {
      readonly mendFirst: readonly { readonly rule: string; readonly at: { readonly id: string } }[];
    };
    const rejects = inspectText("bench", readFileSync(faulty, "utf8")).findings.filter(
      ({ level }) => level === "reject",
    );
    expect(rejects).toHaveLength(1);
    expect(mendFirst.map(({ rule }) => rule).sort()).toEqual(rejects.map(({ rule }) => rule).sort());
    const [, line = ""] = (await build(faulty)).split("\n\n");
    expect(line).toMatch(/^Do not build it yet: 1 finding rejects it .*bar\.adrift at rail/);
    expect(await build(SOUND)).not.toContain("Do not build");
  });
});
