import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inReadingOrder } from "../../src/inspection/order.ts";
import type { Finding, Measure } from "../../src/inspection/report.ts";
import { ref } from "../../src/model/ref.ts";

interface Sketch {
  readonly where: string;
  readonly line: number;
  readonly level: Finding["level"];
  readonly utilisation?: number;
  readonly conceded?: boolean;
  readonly rule?: string;
  readonly key?: string;
  readonly print?: string;
  readonly text?: string;
}

function finding({
  where,
  line,
  level,
  utilisation,
  conceded,
  rule = "bar.sags",
  key = "sags",
  print = "p",
  text = "sags",
}: Sketch): Finding {
  const measure: Measure | undefined =
    utilisation === undefined
      ? undefined
      : {
          quantity: "length",
          measured: utilisation,
          limit: 1,
          sense: "at most",
          shown: { measured: `${utilisation} m`, limit: "1 m" },
          from: "default",
          basis: "b",
          utilisation,
          hangsOnStiffness: false,
        };
  return {
    rule,
    key,
    level,
    at: ref("bar", where),
    where,
    text,
    shown: {},
    amounts: {},
    related: [],
    ...(measure ? { measure } : {}),
    place: { file: "a.frame.json", pointer: "/bars/0", line, column: 1, endLine: line, endColumn: 2 },
    print,
    ...(conceded ? { conceded: { reason: "r", who: "w", until: "2100-01-01" } } : {}),
    cures: [],
  };
}
const order = (...sketches: readonly Sketch[]) =>
  inReadingOrder(sketches.map(finding)).map(({ where, place }) => `${where} ${place.line}`);

describe("the order of findings", () => {
  it("worst part first, with all that is said of it, worst first", () => {
    expect(
      order(
        { where: "leg", line: 1, level: "hold" },
        { where: "rail", line: 3, level: "note" },
        { where: "rail", line: 4, level: "reject" },
      ),
    ).toEqual(["rail 4", "rail 3", "leg 1"]);
  });

  it("of one level the furthest beyond its limit; never beyond the next level", () => {
    expect(
      order(
        { where: "a", line: 1, level: "hold", utilisation: 1.2 },
        { where: "b", line: 2, level: "hold", utilisation: 1e12 },
        { where: "c", line: 3, level: "reject" },
      ),
    ).toEqual(["c 3", "b 2", "a 1"]);
  });

  it("what is conceded goes last", () => {
    expect(
      order({ where: "a", line: 1, level: "reject", conceded: true }, { where: "b", line: 2, level: "note" }),
    ).toEqual(["b 2", "a 1"]);
  });

  it("equal parts stay whole, the one that comes first in the file leading", () => {
    const sketches: Sketch[] = [
      { where: "a", line: 1, level: "note" },
      { where: "b", line: 2, level: "hold" },
      { where: "a", line: 3, level: "hold" },
    ];
    const expected = ["a 3", "a 1", "b 2"];
    for (const [i, j, k] of [
      [0, 1, 2],
      [0, 2, 1],
      [1, 0, 2],
      [1, 2, 0],
      [2, 0, 1],
      [2, 1, 0],
    ] as const) {
      const shuffled = [sketches[i], sketches[j], sketches[k]].filter((sketch) => sketch !== undefined);
      expect(order(...shuffled)).toEqual(expected);
    }
  });

  it("is the same whatever order the findings came in, and keeps what is said of a part together", () => {
    const sketch = fc.record({
      where: fc.constantFrom("a", "b", "c"),
      line: fc.integer({ min: 1, max: 4 }),
      level: fc.constantFrom("note", "hold", "reject") as fc.Arbitrary<Finding["level"]>,
      utilisation: fc.constantFrom(0.5, 1.5, 3),
      conceded: fc.boolean(),
      rule: fc.constantFrom("bar.sags", "bar.twists"),
      key: fc.constantFrom("k", "l"),
      print: fc.constantFrom("p", "q"),
      text: fc.constantFrom("s", "t"),
    });
    fc.assert(
      fc.property(fc.array(sketch, { maxLength: 10 }), fc.integer(), (sketches, seed) => {
        const ordered = inReadingOrder(sketches.map(finding));
        const mixed = sketches
          .map((one, i) => ({ one, rank: Math.imul(i + 1, seed | 1) }))
          .sort((p, q) => p.rank - q.rank)
          .map(({ one }) => finding(one));
        expect(inReadingOrder(mixed)).toEqual(ordered);
        const runs = ordered.filter((found, i) => found.where !== ordered[i - 1]?.where);
        expect(runs).toHaveLength(new Set(ordered.map((found) => found.where)).size);
      }),
      { numRuns: 500 },
    );
  });
});
