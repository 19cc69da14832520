import { describe, expect, it } from "vitest";
import { checkNames } from "../../src/house/check-names.ts";
import type { House, HouseSource } from "../../src/house/house.ts";
import { readConcessions, readHouse } from "../../src/house/read-house.ts";
import { noSettings, settingsFor } from "../../src/house/settings.ts";
import { cards } from "../report/sample-report.ts";

const TODAY = "2027-03-31";

function bytes(value: unknown): Uint8Array {
  return new TextEncoder().encode(typeof value === "string" ? value : JSON.stringify(value));
}

function source(path: string, value: object, concessions?: object): HouseSource {
  const read = readHouse(path.slice(1), bytes({ format: 1, ...value }));
  if ("problems" in read) throw new Error(JSON.stringify(read.problems));
  if (concessions === undefined) return { path, name: path.slice(1), ...read };
  const conceded = readConcessions("concessions.json", bytes({ format: 1, concessions }));
  if ("problems" in conceded) throw new Error(JSON.stringify(conceded.problems));
  return { path, name: path.slice(1), ...read, conceded: { path: "/shop/concessions.json", ...conceded } };
}

const granted = {
  rule: "bar.sags",
  at: ["rail-3"],
  measured: "8.1 mm",
  reason: "load is short",
  who: "M. Sand",
  until: "2027-06-30",
};

const base = source("/house.json", {
  strictness: { "end.bare": "note", "joint.slips": "off" },
  criteria: { sag: "span / 200" },
});
const shop = source(
  "/shop/trysquare.house.json",
  {
    strictness: { "end.bare": "hold" },
    criteria: { sag: { value: "span / 500", basis: "customer drawing" } },
    areas: [
      { frames: ["guards/**"], strictness: { "end.bare": "reject" } },
      { frames: ["guards/old/*"], criteria: { sag: "span / 100" } },
    ],
  },
  [granted, { ...granted, at: ["rail-9"], message: "sag", frames: ["guards/*"] }],
);
const house: House = { sources: [base, shop] };

describe("the settings of a house", () => {
  it("choose the method of strength, an area over its house and a house over its base, and say which file spoke", () => {
    const first = source("/first.house.json", { method: "allowable-stress" });
    const second = source("/shop/second.house.json", {
      areas: [{ frames: ["old/**"], method: "partial-factors" }],
    });
    const of = (frame: string) => settingsFor({ sources: [first, second] }, frame, TODAY);
    expect(of("/shop/a.frame.json")).toMatchObject({ method: "allowable-stress", methodSaid: "first.house.json" });
    expect(of("/shop/old/a.frame.json")).toMatchObject({
      method: "partial-factors",
      methodSaid: "shop/second.house.json, area old/**",
    });
    expect(settingsFor(house, "/shop/a.frame.json", TODAY).method).toBeUndefined();
  });

  it("let a house win over what it is based on, and say which file spoke", () => {
    const { criteria, strictness, strictnessSaid } = settingsFor(house, "/shop/bench.frame.json", TODAY);
    expect(criteria.get("sag")).toEqual({
      value: "span / 500",
      basis: "customer drawing",
      from: "house",
      said: "shop/trysquare.house.json",
    });
    expect([...strictness]).toEqual([
      ["end.bare", "hold"],
      ["joint.slips", "off"],
    ]);
    expect(strictnessSaid.get("joint.slips")).toBe("house.json");
  });

  it("let areas win over the rest, the later over the earlier, for the frames they name", () => {
    const settings = settingsFor(house, "/shop/guards/old/a.frame.json", TODAY);
    expect(settings.strictness.get("end.bare")).toBe("reject");
    expect(settings.criteria.get("sag")?.value).toBe("span / 100");
    expect(settingsFor(house, "/guards/a.frame.json", TODAY).strictness.get("end.bare")).toBe("hold");
  });

  it("take only the concessions that are for the frame, with their places", () => {
    const [one, ...others] = settingsFor(house, "/shop/bench.frame.json", TODAY).concessions;
    expect(others).toEqual([]);
    expect(one).toMatchObject({ ...granted, place: { file: "concessions.json", line: 1, pointer: "/concessions/0" } });
    const both = settingsFor(house, "/shop/guards/a.frame.json", TODAY).concessions;
    expect(both.map(({ at, key }) => [at[0], key])).toEqual([
      ["rail-3", undefined],
      ["rail-9", "sag"],
    ]);
  });

  it("are empty without a house", () => {
    const { criteria, strictness, concessions, today } = noSettings(TODAY);
    expect([criteria.size, strictness.size, concessions.length, today]).toEqual([0, 0, 0, TODAY]);
  });

  it("take names like __proto__ and constructor as names", () => {
    const odd = source("/odd.json", JSON.parse('{"criteria":{"__proto__":"1 mm","constructor":"2 mm"}}') as object);
    const { criteria } = settingsFor({ sources: [odd] }, "/a", TODAY);
    expect(criteria.get("constructor")?.value).toBe("2 mm");
  });
});

describe("names in a house", () => {
  const problemsOf = (value: object, concessions?: object) =>
    checkNames({ sources: [source("/h.json", value, concessions)] }, cards);

  it("must be known, also in areas and concessions; the nearest is suggested", () => {
    const problems = problemsOf(
      {
        strictness: { "bar.sgas": "off" },
        criteria: { sga: "1 mm" },
        areas: [{ frames: ["*"], strictness: { "no.such": "off" } }],
      },
      [{ ...granted, rule: "bar.saggs" }],
    );
    expect(problems.map(({ code, mend, place }) => [code, mend, place.pointer])).toEqual([
      ["unknown-rule", 'write "bar.sags"', "/strictness/bar.sgas"],
      ["unknown-criterion", 'write "sag"', "/criteria/sga"],
      ["unknown-rule", undefined, "/areas/0/strictness/no.such"],
      ["unknown-rule", 'write "bar.sags"', "/concessions/0"],
    ]);
  });

  it("must give areas by patterns that can fit a frame", () => {
    const problems = problemsOf({ areas: [{ frames: ["ok/**", "["], strictness: {} }] });
    expect(problems.map(({ code, place }) => [code, place.pointer])).toEqual([
      ["unreadable-pattern", "/areas/0/frames/1"],
    ]);
  });

  it("must give limits with a unit: frames of one house may be in different units", () => {
    expect(problemsOf({ criteria: { sag: 3 } }).map(({ code }) => code)).toEqual(["missing-unit"]);
    expect(problemsOf({ criteria: { sag: "3 mm" } })).toEqual([]);
  });

  it.each(["1 kg", "span / 0", "span / -5", "-1 mm", "1e99 m"])("must give limits that can be meant: not %s", (sag) => {
    const [problem, ...others] = problemsOf({
      criteria: { sag: { value: sag, basis: "b" } },
      areas: [{ frames: ["*"], criteria: { sag } }],
    });
    expect(problem).toMatchObject({
      code: "unreadable-criterion",
      place: { file: "h.json", pointer: "/criteria/sag" },
    });
    expect(problem?.found).toContain(`"${sag}"`);
    expect(others.map(({ place }) => place.pointer)).toEqual(["/areas/0/criteria/sag"]);
  });
});

describe("a house or concessions file that is none", () => {
  it.each([
    ["another format", { format: 2 }, "/format"],
    ["an unknown key", { format: 1, ruels: [] }, "/ruels"],
    ["an unknown strictness", { format: 1, strictness: { "bar.sags": "loud" } }, "/strictness/bar.sags"],
    ["nothing", "null", ""],
    ["a list", "[]", ""],
    ["a torn text", '{"format": 1,', ""],
  ])("is refused with its place: %s", (_, value, pointer) => {
    const read = readHouse("h.json", bytes(value));
    expect("problems" in read && read.problems.map((problem) => problem.place.pointer)).toEqual([pointer]);
  });

  it.each([
    ["no reason", { reason: undefined }],
    ["no end date", { until: undefined }],
    ["a date that is none", { until: "2027-13-01" }],
    ["an empty name", { who: "" }],
  ])("is refused when a concession has %s", (_, change) => {
    const read = readConcessions("c.json", bytes({ format: 1, concessions: [{ ...granted, ...change }] }));
    expect("problems" in read && read.problems.length).toBe(1);
  });
});
