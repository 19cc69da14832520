import { describe, expect, it } from "vitest";
import { defineCriterion } from "../../src/criteria/criterion.ts";
import { keeps } from "../../src/criteria/keeps.ts";
import type { HouseInForce } from "../../src/house/house-in-force.ts";
import { noSettings } from "../../src/house/settings.ts";
import { inspectFile } from "../../src/inspection/inspect-file.ts";
import { fill } from "../../src/inspection/sentence.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { ref } from "../../src/model/ref.ts";
import { si } from "../../src/model/units/quantity.ts";
import { rule as loadNone } from "../../src/rules/load.none.ts";
import { undecided } from "../../src/rules/shape/judgement.ts";
import { type AnyRule, defineRule } from "../../src/rules/shape/rule.ts";
import { barOf, tee } from "../rules/base-frames.ts";

const depth = defineCriterion({ name: "depth", quantity: "length", standard: "1 mm", about: "x", basis: "standard" });

/** Measures 5 mm on the rail against a limit of its own. */
const measures = defineRule({
  id: "acme:bar.deep",
  title: "t",
  group: "bars",
  level: "reject",
  basis: ["b"],
  needs: {},
  criteria: { depth },
  messages: { deep: { text: "is {d:length} deep", measures: "length" } },
  *inspect(_, given, say) {
    const d = si(0.005, "length");
    yield say.deep(ref("bar", "rail"), { d }, { measured: d, limit: given.depth.at(ref("bar", "rail")) });
  },
});

function yielding(id: string, inspect: () => Iterable<unknown>): AnyRule {
  return { ...measures, id, inspect: inspect as unknown as AnyRule["inspect"] };
}

const house = (rules: readonly AnyRule[], more: Partial<HouseInForce> = {}): HouseInForce => ({
  ...noSettings("2026-06-01"),
  rules,
  ...more,
});
const inspect = (file: FrameFile, inForce: HouseInForce, indent = 0) =>
  inspectFile({
    file: "e.frame.json",
    bytes: new TextEncoder().encode(JSON.stringify(file, undefined, indent)),
    stock: [],
    house: inForce,
  });

it("keeps: forgives rounding and no more", () => {
  expect(keeps(1 + 1e-10, 1, "at most")).toBe(true);
  expect(keeps(1 + 1e-8, 1, "at most")).toBe(false);
  expect(keeps(1 - 1e-10, 1, "at least")).toBe(true);
  expect(keeps(1 - 1e-8, 1, "at least")).toBe(false);
});

it("limits: part before frame before house before standard", () => {
  const limitOf = (file: FrameFile, inForce: HouseInForce) => {
    const measure = inspect(file, inForce).findings[0]?.measure;
    return [measure?.limit, measure?.from];
  };
  const file = tee();
  expect(limitOf(file, house([measures]))).toEqual([0.001, "default"]);
  const set = house([measures], { criteria: new Map([["depth", { value: "2 mm", from: "house", said: "h" }]]) });
  expect(limitOf(file, set)).toEqual([0.002, "house"]);
  file.criteria = { depth: "3 mm" };
  expect(limitOf(file, set)).toEqual([0.003, "frame"]);
  barOf(file, "rail").criteria = { depth: "4 mm" };
  expect(limitOf(file, set)).toEqual([0.004, "part"]);
});

it.each([
  ["1 kg", 'depth set to "1 kg", which is a mass'],
  ["span / 300", 'depth set to "span / 300", but it has no span'],
  [-1, "depth set to -1"],
])("limits: what frame or part cannot mean refuses the frame at its place: %s", (depth, found) => {
  const file = tee();
  file.criteria = { depth };
  barOf(file, "rail").criteria = { depth: { value: depth, basis: "b" } };
  const { verdict, problems, failures } = inspect(file, house([measures]));
  expect([verdict, failures]).toEqual(["unread", []]);
  const rail = file.bars.findIndex(({ id }) => id === "rail");
  expect(problems.map((one) => [one.place.pointer, one.found])).toEqual(
    [
      ["/criteria/depth", found],
      [`/bars/${rail}/criteria/depth`, found],
    ].sort(),
  );
});

it.each([
  ["frame", ["depth set for a single part"]],
  ["panels", ["depth set for a bar, where it limits nothing"]],
  ["bars", []],
] as const)("limits: tells the author of a bar that sets what is judged of %s, and reads the frame", (of, found) => {
  const all = { ...measures, criteria: { depth: { ...depth, of } } };
  const told = (place: (file: FrameFile) => void): readonly string[] => {
    const file = tee();
    place(file);
    return inspect(file, house([all])).problems.map((one) => `${one.weight} ${one.code}: ${one.found}`);
  };
  const depths = { depth: "4 mm" };
  const words = found.map((one) => `warning idle-criterion: ${one}`);
  expect(told((file) => Object.assign(barOf(file, "rail"), { criteria: depths }))).toEqual(words);
  expect(told((file) => Object.assign(file, { criteria: depths }))).toEqual([]);
});

it("sentences: names six parts and counts the rest; a missing value is a fault of the rule", () => {
  const parts = Array.from({ length: 8 }, (_, i) => ref("bar", `b${i}`));
  expect(fill("{all:parts}", { all: parts }, "mm-N-kg").text).toBe("b0, b1, b2, b3, b4, b5 and 2 more");
  expect(() => fill("{gone:word}", {}, "mm-N-kg")).toThrow("a message lacks its gone");
});

it("fingerprints outlive another order, layout and title", () => {
  const [first] = inspect(tee(), house([measures])).findings;
  const file = { ...tee(), title: "another" };
  file.bars.reverse();
  expect(inspect(file, house([measures]), 4).findings[0]?.print).toBe(first?.print);
});

describe("concessions", () => {
  const granted = {
    rule: "acme:bar.deep",
    at: ["rail"],
    measured: "5 mm",
    reason: "r",
    who: "w",
    until: "2026-06-01",
    place: { file: "c.json", pointer: "", line: 1, column: 1, endLine: 1, endColumn: 1 },
  };
  const withGrant = (more: Partial<typeof granted>) =>
    inspect(tee(), house([measures], { concessions: [{ ...granted, ...more }] }));

  it("hold to the last day, and the frame is accepted", () => {
    expect(withGrant({})).toMatchObject({ verdict: "accept", concessionRemarks: [] });
  });
  const spoilt: readonly (readonly [string, Partial<typeof granted>])[] = [
    ["ended on", { until: "2026-05-31" }],
    ["lapsed", { measured: "4.9 mm" }],
    ["matches no finding", { at: ["post"] }],
  ];
  it.each(spoilt)("are said to have %s", (words, more) => {
    const report = withGrant(more);
    expect(report.verdict).toBe("reject");
    expect(report.concessionRemarks.join()).toContain(words);
  });
});

it("verdicts: the gravest level stands; undecided in a hold rule holds", () => {
  const verdict = (level: "note" | "hold" | "reject") =>
    inspect(tee(), house([measures], { strictness: new Map([[measures.id, level]]) })).verdict;
  expect([verdict("note"), verdict("hold"), verdict("reject")]).toEqual(["accept", "hold", "reject"]);
  const open = ["acme:x.a", "acme:x.b"].map((id) => yielding(id, () => [undecided(ref("bar", "rail"), "no value")]));
  const report = inspect(tee(), house(open));
  expect(report.verdict).toBe("hold");
  expect(report.undecided).toMatchObject([{ why: "no value", rules: ["acme:x.a", "acme:x.b"], holds: true }]);
});

it.each([
  [
    "throws",
    () => {
      throw new Error("boom");
    },
  ],
  ["yields rubbish", () => [42]],
  [
    "measures NaN",
    () => [
      {
        kind: "measured",
        at: ref("bar", "rail"),
        key: "deep",
        values: {},
        m: { measured: Number.NaN, limit: { value: 1 } },
      },
    ],
  ],
] as const)("a rule that %s fails alone", (_, run) => {
  const report = inspect(tee(), house([yielding("acme:x.bad", run), loadNone]));
  expect(report.complete).toBe(false);
  expect(report.failures.map((failure) => failure.rule)).toEqual(["acme:x.bad"]);
  expect(report.findings.map((found) => found.rule)).toEqual(["load.none"]);
});

it("a rule in plain JavaScript that leaves out what a message needs is told which message", () => {
  const lacking = (run: (say: { deep: (...args: unknown[]) => unknown }) => unknown): AnyRule => ({
    ...measures,
    inspect: function* (_: never, __: never, say: never) {
      yield run(say) as never;
    },
  });
  const message = (rule: AnyRule) => inspect(tee(), house([rule])).failures[0]?.message;
  const at = ref("bar", "rail");
  expect(message(lacking((say) => say.deep(at)))).toContain("say.deep lacks its values");
  expect(message(lacking((say) => say.deep(at, {})))).toContain("say.deep lacks what was measured");
  expect(message(lacking((say) => say.deep()))).toContain("say.deep lacks the part");
  expect(message(lacking(() => 3))).toBe("it yielded something that is no judgement");
});
