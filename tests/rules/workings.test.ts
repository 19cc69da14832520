import { readdirSync, readFileSync } from "node:fs";
import { evaluate } from "mathjs";
import { describe, expect, it } from "vitest";
import { knownOf } from "../../src/facts/fact.ts";
import type { HouseInForce } from "../../src/house/house-in-force.ts";
import { noSettings } from "../../src/house/settings.ts";
import { givenFor } from "../../src/inspection/given-for.ts";
import { Limits } from "../../src/inspection/limits.ts";
import type { Frame } from "../../src/model/frame.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { readFrame } from "../../src/model/read-frame.ts";
import { builtinStock } from "../../src/model/stock/builtin-stock.ts";
import { builtInRules } from "../../src/rules/index.generated.ts";
import { type Judgement, sayFor } from "../../src/rules/shape/judgement.ts";
import type { AnyRule } from "../../src/rules/shape/rule.ts";
import { fault as knocked } from "../defects/faults/joint.turns.knocked.ts";

const house: HouseInForce = { ...noSettings("2000-01-01"), rules: builtInRules };
const rules = builtInRules.filter((rule) => Object.values(rule.messages).some(({ working }) => working?.figures));
const pages = new URL("../../docs/rules/", import.meta.url);
const demo = new URL("../../docs/demo/", import.meta.url);

function frameOf(bytes: Uint8Array): Frame {
  const { frame, problems } = readFrame({ file: "x.frame.json", bytes, stock: builtinStock() });
  if (!frame) throw new Error(JSON.stringify(problems));
  return frame;
}

const read = (file: URL): Frame => frameOf(readFileSync(file));

/** A frame with a bracket of one screw where trolleys knock. */
function knockable(): Frame {
  const file = JSON.parse(readFileSync("tests/defects/frames/pot-rack.frame.json", "utf8")) as FrameFile;
  knocked.plant(file, "front", 1000, "pot-rack");
  return frameOf(new TextEncoder().encode(JSON.stringify(file)));
}

function judgements(rule: AnyRule, frame: Frame): readonly Judgement[] {
  const given = givenFor(rule, new Limits(frame, house));
  const known = knownOf(rule.needs, frame);
  return [...rule.inspect(known as never, given as never, sayFor(rule.messages) as never)];
}

/** The figures in SI units, worked out by a general mathematics library. */
function worked(figures: string, values: object): number {
  const given = new Map(Object.entries(values));
  const text = figures
    .replace(/\{(\w+):\w+\}/g, (_, name: string) => `(${String(given.get(name))})`)
    .replaceAll("×", "*")
    .replaceAll("−", "-")
    .replaceAll("²", "^2")
    .replaceAll("√", "sqrt")
    .replaceAll("arctan", "atan");
  return Number(evaluate(text));
}

/** Judgements with figures, met or not, that the rule makes of these frames. */
function compared(rule: AnyRule, frames: Iterable<Frame>): number {
  let seen = 0;
  for (const frame of frames)
    for (const judgement of judgements(rule, frame)) {
      if (judgement.kind !== "measured" || !Number.isFinite(judgement.m.measured)) continue;
      const { measured } = judgement.m;
      const figures = rule.messages[judgement.key]?.working?.figures;
      if (figures === undefined || measured === Number.MAX_VALUE) continue;
      const found = worked(figures, judgement.values);
      expect(Math.abs(found - measured), `${rule.id} at ${judgement.at.id}: ${figures}`).toBeLessThanOrEqual(
        1e-9 + 1e-6 * Math.abs(measured),
      );
      seen += 1;
    }
  return seen;
}

describe("the figures of a working give the value that is measured (mathjs)", () => {
  const benches = ["potting-bench", "tray-rack-faulty", "sack-cart-faulty"].map((name) =>
    read(new URL(`${name}.frame.json`, demo)),
  );
  it.each(rules.map((rule) => [rule.id, rule] as const))("%s", (id, rule) => {
    const own = readdirSync(pages)
      .filter((name) => name === `${id}.fault.frame.json`)
      .map((name) => read(new URL(name, pages)));
    expect(own).toHaveLength(1);
    expect(compared(rule, [...own, ...benches, knockable()])).toBeGreaterThan(0);
  });

  it("is tried of eleven rules at least", () => {
    expect(rules.length).toBeGreaterThanOrEqual(11);
  });
});
