import { describe, expect, it } from "vitest";
import { openingRowWords } from "../../src/facts/opening-row-words.ts";
import { armDistance, BODY, legDistance, openingRow } from "../../src/facts/reach-distances.ts";
import { OUT_OF_REACH, overDistance, overDistanceWithin } from "../../src/facts/reach-over.ts";
import { loadReference, type ReferenceCheck, referenceCheck } from "../references/load-reference.ts";

const MM = 1e3;
const inMm = (metres: number | undefined): number | undefined =>
  metres === undefined ? undefined : Math.round(metres * MM * 1e6) / 1e6;
const input = (check: ReferenceCheck, name: string): number => Number(check.inputs[name]?.value);
const starting = (stem: string): readonly ReferenceCheck[] =>
  loadReference("safety").checks.filter(({ id }) => id.startsWith(stem));

describe("reach through openings", () => {
  it.each(starting("safety.iso13857.t4."))("$id ($source)", (check) => {
    const { slot, square } = check.expected.value as { slot: number; square: number };
    const width = input(check, "e_max") / MM;
    expect(inMm(armDistance("slot", width, 1))).toBe(slot);
    expect(inMm(armDistance("square", width, width))).toBe(square);
  });

  it.each([
    ["safety.iso13857.lookup.square9", "square"],
    ["safety.iso13857.lookup.slot11", "slot"],
    ["safety.iso13857.lookup.slot21", "slot"],
    ["safety.iso13857.lookup.square50", "square"],
    ["safety.iso13857.lookup.slot25short", "slot"],
  ] as const)("%s", (id, form) => {
    const check = referenceCheck("safety", id);
    const length = check.inputs.length === undefined ? 1 : input(check, "length") / MM;
    expect(inMm(armDistance(form, input(check, "e") / MM, length))).toBe(check.expected.value);
  });

  it("safety.iso13857.around: behind wider openings the whole arm counts", () => {
    const { arm } = referenceCheck("safety", "safety.iso13857.around").expected.value as { arm: number };
    expect(inMm(armDistance("slot", 0.15, 1))).toBe(arm);
  });

  it("safety.iso13857.body: widest openings that no body passes", () => {
    const { slot, square_round } = referenceCheck("safety", "safety.iso13857.body").expected.value as {
      slot: number;
      square_round: number;
    };
    expect([inMm(BODY.slot), inMm(BODY.square)]).toEqual([slot, square_round]);
  });

  it("safety.iso13857.leg-slot, and the lines above it (ISO 13857, Table 7, from memory)", () => {
    const check = referenceCheck("safety", "safety.iso13857.leg-slot");
    expect(inMm(legDistance("slot", input(check, "e") / MM))).toBe(check.expected.value);
    const lines = [5, 15, 35, 60, 80, 95].map((e) => [
      inMm(legDistance("slot", e / MM)),
      inMm(legDistance("square", e / MM)),
    ]);
    expect(lines).toEqual([
      [0, 0],
      [10, 0],
      [80, 25],
      [180, 80],
      [650, 180],
      [1100, 650],
    ]);
  });
});

describe("reach over guards", () => {
  it.each([...starting("safety.iso13857.t1-low."), ...starting("safety.iso13857.t2-high.")])("$id", (check) => {
    const risk = check.id.includes(".t1-low.") ? "low" : "high";
    for (const [guard, distance] of Object.entries(check.expected.value as Record<string, number>))
      expect(inMm(overDistance(risk, input(check, "a") / MM, Number(guard) / MM)), guard).toBe(distance);
  });

  it.each(starting("safety.iso13857.over."))("$id: the safer of neighbours", (check) => {
    const risk = check.inputs.risk?.value as "low" | "high";
    expect(inMm(overDistance(risk, input(check, "a") / MM, input(check, "b") / MM))).toBe(check.expected.value);
  });

  it("safety.iso13857.upward: what lies higher is out of reach from the floor", () => {
    const { low, high } = referenceCheck("safety", "safety.iso13857.upward").expected.value as {
      low: number;
      high: number;
    };
    expect([inMm(OUT_OF_REACH.low), inMm(OUT_OF_REACH.high)]).toEqual([low, high]);
    expect(overDistance("high", high / MM, 1)).toBe(0);
  });

  it("knows no guard lower than 1 m, and of a hazard from one height to another takes the worst", () => {
    expect(overDistance("low", 1, 0.999)).toBeUndefined();
    expect(overDistanceWithin("low", 0.5, 1.5, 0.9)).toBeUndefined();
    // Low risk behind 1.6 m: 0 at 600, 300 at 1000, 500 at 1200, 800 at 1400 and 900 at 1600 mm.
    expect(inMm(overDistanceWithin("low", 0.6, 1.6, 1.6))).toBe(900);
    expect(inMm(overDistanceWithin("low", 0.2, 0.6, 1.6))).toBe(0);
  });
});

describe("the row an opening falls under", () => {
  // Rows of ISO 13857:2019, Tables 4 and 7, as in the values above.
  it.each([
    ["a slot of 70 mm", openingRow("slot", 0.07, 1, false), 850, "slots over 40 up to 120 mm in Table 4"],
    ["a square of 9 mm", openingRow("square", 0.009, 0.009, false), 25, "squares over 8 up to 10 mm in Table 4"],
    ["a slot of 4 mm", openingRow("slot", 0.004, 1, false), 2, "slots up to 4 mm in Table 4"],
    [
      "a short slot of 25 mm",
      openingRow("slot", 0.025, 0.06, false),
      200,
      "slots over 20 up to 30 mm and no longer than 65 mm in Table 4",
    ],
    ["a slot of 70 mm at the floor", openingRow("slot", 0.07, 1, true), 850, "slots over 40 up to 120 mm in Table 4"],
    ["a slot of 90 mm at the floor", openingRow("slot", 0.09, 1, true), 1100, "slots over 80 up to 95 mm in Table 7"],
    [
      "a slot of 150 mm",
      openingRow("slot", 0.15, 1, false),
      850,
      "wider than all rows of Table 4, which end at 120 mm: the last one",
    ],
  ])("is told of %s", (_, row, distance, words) => {
    expect(row.distance * MM).toBeCloseTo(distance, 9);
    expect(openingRowWords(row)).toBe(words);
  });
});
