import { expect, test } from "vitest";
import { bench } from "./bench-text.ts";
import { frameOf, read } from "./read.ts";

test("a sound frame has no problems and all its parts", () => {
  const { frame, problems } = read(bench);
  expect(problems).toEqual([]);
  const counts = Object.fromEntries(
    Object.entries(frame ?? {}).flatMap(([key, value]) => (Array.isArray(value) ? [[key, value.length]] : [])),
  );
  expect(counts).toMatchObject({
    bars: 8,
    joints: 9,
    fastenings: 1,
    ties: 1,
    pivots: 1,
    panels: 2,
    doors: 1,
    stands: 2,
  });
  expect(counts).toMatchObject({ masses: 1, loads: 3, cases: 2, groups: 1, zones: 1 });
});

test("parts that the author did not name are named after bar, end, kind and case", () => {
  const frame = frameOf(bench);
  expect(frame.joints.map((joint) => joint.ref.id).slice(0, 5)).toEqual([
    "rail-1.from",
    "rail-1.to",
    "rail-2.from",
    "rail-2.to",
    "arm.from",
  ]);
  expect(frame.joints[0]?.connectors.map((connector) => connector.ref)).toEqual([
    { kind: "connector", id: "rail-1.from/1" },
  ]);
  expect(frame.stands.map((stand) => stand.ref.id)).toEqual(["leg-1.foot", "leg-2.caster"]);
  expect(frame.loads.map((load) => load.ref.id)).toEqual(["trays.load-1", "trays.load-2", "push.load-1"]);
});

const bar = (id: string, more: object = {}) => ({ id, profile: "40x40-8", from: [0, 0, 0], to: [500, 0, 0], ...more });
const file = (more: object) => ({ format: 1, title: "Frame", units: "mm-N-kg", bars: [bar("a"), bar("b")], ...more });

test("what is left open is filled in and said", () => {
  const frame = frameOf(file({ joints: [{ bars: ["a/to"], by: [{ connector: "inside-bracket-40", on: "above" }] }] }));
  expect(frame.assumed).toEqual([
    "cut ends are deburred",
    "ends are cut at the face of the bar they meet",
    "it stands indoors",
    "nothing vibrates",
    "nuts are end-load",
    "only trained people reach it",
    "open ends get caps",
    "screws are tightened to their rated torque",
  ]);
  expect(frame.bars[0]?.ends.to).toEqual({
    ref: { kind: "end", id: "a/to" },
    bar: "a",
    end: "to",
    cut: { kind: "butt", written: false },
    cap: { kind: "if-open" },
    edge: "deburred",
  });
  expect(frame.floor).toEqual({ z: 0, slope: 0, uneven: 0, friction: 0.3 });
  expect(frame.site).toEqual({ place: "indoors", temperature: [278.15, 308.15], vibration: "none", reach: "trained" });
});

test("what is written is not assumed", () => {
  const written = {
    defaults: { cut: "butt", nut: "drop-in", torque: 9, ends: "raw", caps: "none", lock: "washer" },
    site: { place: "outdoors", vibration: "light", reach: "public" },
    joints: [{ bars: ["a/to"], by: [{ connector: "inside-bracket-40", on: "above", lock: "none" }] }],
  };
  const frame = frameOf(file(written));
  expect(frame.assumed).toEqual([]);
  expect(frame.joints[0]?.connectors[0]).toMatchObject({ nut: "drop-in", torque: 9, lock: "none" });
  expect(frame.bars[0]?.ends.from).toMatchObject({ cut: { written: true }, cap: { kind: "none" }, edge: "raw" });
});

test("the end's own words win over those for both ends, key by key", () => {
  const ends = { both: { cut: "as-drawn", cap: "cap-40" }, to: { edge: "raw", butt: "b" } };
  const [a] = frameOf(file({ bars: [bar("a", { ends }), bar("b")] })).bars;
  expect(a?.ends.from).toMatchObject({ cut: { kind: "as-drawn" }, cap: { kind: "part", part: { name: "cap-40" } } });
  expect(a?.ends.to).toMatchObject({ cut: { kind: "butt", against: "b", written: true }, edge: "raw" });
  expect(a?.ends.to.cap).toMatchObject({ kind: "part", part: { name: "cap-40" } });
});

test("rated torque is the least that screw and slots of the named bars take", () => {
  // The invented 40x40-8 states 15 N·m for M8; M8x16 may take 25, M8x30 only 12.
  const by = [
    { connector: "inside-bracket-40", on: "above" },
    { connector: "end-screw-M8" },
    { connector: "end-screw-M8", torque: "5 N·m" },
  ];
  const frame = frameOf(file({ joints: [{ bars: ["a/to"], by }] }));
  expect(frame.joints[0]?.connectors.map((connector) => connector.torque)).toEqual([15, 12, 5]);
});

test("load cases come of loads, exclude each other mutually, and are in the order of their ids", () => {
  const loads = ["wind", "snow", "people"].map((name) => ({ case: name, on: "a", force: 100 }));
  const frame = frameOf(file({ loads, cases: [{ id: "wind", kind: "accidental", excludes: ["snow"] }] }));
  expect(frame.cases).toEqual([
    { id: "people", kind: "variable", excludes: [] },
    { id: "snow", kind: "variable", excludes: ["wind"] },
    { id: "wind", kind: "accidental", excludes: ["snow"] },
  ]);
  expect(frame.loads[0]).toMatchObject({ direction: [0, 0, -1], at: { kind: "middle" } });
});

test("criteria are kept as written, with their basis", () => {
  const criteria = { sag: "span / 500", "joint-gap": { value: 0.3, basis: "customer drawing" } };
  const frame = frameOf(file({ criteria, bars: [bar("a", { criteria }), bar("b")] }));
  const expected = new Map<string, unknown>([
    ["sag", { value: "span / 500" }],
    ["joint-gap", { value: 0.3, basis: "customer drawing" }],
  ]);
  expect(frame.criteria).toEqual(expected);
  expect(frame.bars[0]?.criteria).toEqual(expected);
});

test("faces, slots and directions are read from their words", () => {
  const by = [
    { connector: "inside-bracket-40", on: "-y", slot: "+z", bore: 2, shift: "-1/8 in" },
    { connector: "inside-bracket-40", on: "inner", slot: "all" },
    { connector: "inside-bracket-40", on: "D", slot: 3 },
  ];
  const [joint] = frameOf(file({ joints: [{ bars: ["a/to"], by }] })).joints;
  expect(joint?.connectors[0]).toMatchObject({
    on: { by: "direction", direction: [0, -1, 0], written: "-y" },
    slot: { by: "direction", direction: [0, 0, 1], written: "+z" },
    bore: { by: "number", number: 2 },
    shift: -0.003175,
  });
  expect(joint?.connectors[1]).toMatchObject({ on: { by: "word", word: "inner" }, slot: { by: "all" } });
  expect(joint?.connectors[2]).toMatchObject({ on: { by: "name", name: "D" }, slot: { by: "number", number: 3 } });
});

test("a direction of any length becomes a unit vector", () => {
  const bars = [bar("a", { tall: [0, 3e200, 4e200] }), bar("b", { tall: [0, 0, -2e-300] })];
  const stances = frameOf(file({ bars })).bars.map(({ stance }) => (stance.by === "tall" ? stance.direction : []));
  expect(stances[0]?.[1]).toBeCloseTo(0.6, 15);
  expect(stances[0]?.[2]).toBeCloseTo(0.8, 15);
  expect(stances[1]).toEqual([0, 0, -1]);
});

test.each(["__proto__", "constructor", "toString", "hasOwnProperty"])(
  "%s is an id and a kit's name like any other",
  (id) => {
    const text = `{"format": 1, "title": "F", "units": "mm-N-kg",
    "kits": {"${id}": [{"connector": "end-screw-M8"}]}, "criteria": {"${id}": 3},
    "bars": [{"id": "${id}", "profile": "40x40-8", "from": [0, 0, 0], "to": [500, 0, 0]}],
    "joints": [{"bars": ["${id}"], "by": "${id}"}],
    "loads": [{"case": "${id}", "on": "${id}", "force": 100}],
    "copies": [{"of": ["${id}"], "shift": [0, 100, 0], "suffix": "${id}"}]}`;
    const { frame, origins } = read(text);
    expect(frame?.bars.map((one) => one.ref.id)).toEqual([id, id + id]);
    expect(frame?.joints.map((joint) => joint.ref.id)).toEqual([
      `${id}.from`,
      `${id}.to`,
      `${id}${id}.from`,
      `${id}${id}.to`,
    ]);
    expect(frame?.loads.map((load) => load.case)).toEqual([id, id]);
    expect(frame?.criteria.get(id)).toEqual({ value: 3 });
    expect(origins.originOf({ id })).toEqual({ pointer: "/bars/0" });
  },
);

test.each(["__proto__", "constructor"])("%s names nothing that the file does not hold", (id) => {
  const { problems } = read(file({ joints: [{ bars: ["a/to"], by: id }], loads: [{ case: "c", on: id, force: 100 }] }));
  expect(problems.map((problem) => problem.code)).toEqual(["unknown-kit", "unknown-part"]);
});

/** Every object of a frame but the stock, and Maps, which cannot be frozen. */
function* objectsOf(frame: object): Iterable<object> {
  const pending: unknown[] = [frame];
  for (let value = pending.pop(); value !== undefined || pending.length > 0; value = pending.pop()) {
    if (typeof value !== "object" || value === null) continue;
    if (!(value instanceof Map)) yield value;
    const stocked = new Set(["stock", "profile", "part", "screw", "sheet", "gasket"]);
    for (const [key, inner] of Object.entries(value)) if (!stocked.has(key)) pending.push(inner);
  }
}

test("nothing of a frame can be written to", () => {
  let looked = 0;
  for (const one of objectsOf(frameOf(bench))) {
    looked++;
    expect(Object.isFrozen(one), JSON.stringify(one)).toBe(true);
  }
  expect(looked).toBeGreaterThan(200);
});
