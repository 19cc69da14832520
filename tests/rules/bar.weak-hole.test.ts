import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/bar.weak-hole.ts";
import { barData, barOf, gantry, load, testedBrackets } from "./gantry.ts";
import { OWN, PARTIAL } from "./hung-rails.ts";

const L = 1;
const HOLE = 0.012;
const { profile, section, fo, weight } = barData("40x40-8");
const STUB = 0.02;

/** What a line of the section at z has of metal, as pairs of y: even-odd rule on the drawn rings. */
function metalAt(z: number): readonly number[] {
  const cuts: number[] = [];
  for (const ring of [profile.region.outer, ...profile.region.holes]) {
    for (const [i, a] of ring.entries()) {
      const b = ring[(i + 1) % ring.length] ?? a;
      if (a[1] > z !== b[1] > z) cuts.push(a[0] + ((z - a[1]) / (b[1] - a[1])) * (b[0] - a[0]));
    }
  }
  return cuts.sort((a, b) => a - b);
}

/** ∫ f dA over what a strip as wide as the hole takes out of the middle, by 20,000 lines; `primitive` is ∫ f dy. */
function takenOut(primitive: (y: number, z: number) => number): number {
  const lines = 20_000;
  let sum = 0;
  for (let i = 0; i < lines; i += 1) {
    const z = -HOLE / 2 + ((i + 0.5) / lines) * HOLE;
    for (const [k, y] of metalAt(z).entries()) sum += (k % 2 === 0 ? -1 : 1) * primitive(y, z);
  }
  return (sum * HOLE) / lines;
}

const NET = section.Iz - takenOut((y) => y ** 3 / 3);
/** Out of plumb by 1/200 it bends about the other axis too. */
const NET_ACROSS = section.Iy - takenOut((y, z) => y * z ** 2);

function stress(line: number, [G, Q] = PARTIAL): number {
  const q = G * weight + Q * line;
  const M = (q * L ** 2) / 8 - (q * STUB ** 2) / 2;
  return M * 0.02 * (1 / NET + 1 / 200 / NET_ACROSS);
}

/** N/mm */
const lineFor = (wanted: number, factors = PARTIAL): number =>
  (wanted - stress(0, factors)) / (stress(1, factors) - stress(0, factors)) / 1000;

function drilled(file: FrameFile, at: number): void {
  barOf(file, "front").holes = [{ at, on: "+z", diameter: HOLE * 1000, through: true }];
}

it("bar.weak-hole: M c / I of the section less a strip as wide as the hole", () => {
  const limit = fo / 1.1;
  const wrong = proveRule(
    rule,
    gantry(),
    [
      {
        title: "no hole",
        edit: (file) => load(file, { line: lineFor(1.01 * limit) }),
        finds: [],
      },
      {
        title: "just within",
        edit: (file) => {
          load(file, { line: lineFor(0.99 * limit) });
          drilled(file, 520);
        },
        finds: [],
      },
      {
        title: "just beyond",
        edit: (file) => {
          load(file, { line: lineFor(1.01 * limit) });
          drilled(file, 520);
        },
        finds: [{ at: "front", key: "weak", measured: 1.01 * limit, within: 2e-3 }],
      },
      {
        title: "the same hole near a post, where the beam bends little",
        edit: (file) => {
          load(file, { line: lineFor(1.01 * limit) });
          drilled(file, 120);
        },
        finds: [],
      },
      {
        title: "a hole as wide as the beam: nothing is left, whatever it carries",
        edit: (file) => {
          barOf(file, "front").holes = [{ at: 520, on: "+z", diameter: 40, through: true }];
        },
        finds: [{ at: "front", key: "severed" }],
      },
      {
        title: "by allowable stress, safety factor 2",
        edit: (file) => {
          load(file, { line: lineFor((1.01 * limit) / 2, OWN) });
          drilled(file, 520);
          file.method = "allowable-stress";
          file.criteria = { "safety-factor": 2 };
        },
        finds: [{ at: "front", key: "weak", measured: (1.01 * limit) / 2, within: 2e-3 }],
      },
      {
        title: "a smaller factor",
        edit: (file) => {
          load(file, { line: lineFor(1.01 * limit) });
          drilled(file, 520);
          file.criteria = { "member-factor": 1.05 };
        },
        finds: [],
      },
    ],
    [testedBrackets(40, 1)],
  );
  expect(wrong).toEqual([]);
});
