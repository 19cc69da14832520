import type { Connector, Profile, Screw, Slot, Stand, Stock } from "../../../src/model/stock/stock.ts";
import { si } from "../../../src/model/units/quantity.ts";

// A stock of invented parts, just enough for the frames of these tests; sizes in m.

function slot(face: Slot["face"], number: number, across: number): Slot {
  return { face, number, across, opening: 0.008, lip: 0.004, depth: 0.0125, cavity: 0.02, closed: false };
}

function profile(name: string, height: number, width: number, slots: readonly Slot[]): Profile {
  return {
    name,
    about: "a bar for tests",
    pitch: si(0.04, "length"),
    slotSize: "8",
    height: si(height, "length"),
    width: si(width, "length"),
    region: { outer: [], holes: [] },
    slots,
    bores: [{ number: 1, at: [0, 0], diameter: 0.0068, thread: "M8" }],
    material: "aluminium",
    weight: "standard",
    lipRating: si(8000, "force"),
    lipSource: "invented",
    torques: new Map([["M8", si(15, "moment")]]),
    stockLength: si(6, "length"),
  };
}

const SQUARE = profile("40x40-8", 0.04, 0.04, [slot("A", 1, 0), slot("B", 1, 0), slot("C", 1, 0), slot("D", 1, 0)]);
const TALL = profile("40x80-8", 0.08, 0.04, [
  slot("A", 1, 0),
  slot("B", 1, -0.02),
  slot("B", 2, 0.02),
  slot("C", 1, 0),
  slot("D", 1, -0.02),
  slot("D", 2, 0.02),
]);

const closed = (one: Slot): Slot => ({ ...one, closed: true });
const ONE_CLOSED = profile("40x40-8-1c", 0.04, 0.04, [
  slot("A", 1, 0),
  closed(slot("B", 1, 0)),
  slot("C", 1, 0),
  slot("D", 1, 0),
]);
const CORNER_CLOSED = profile("40x40-8-2c", 0.04, 0.04, [
  closed(slot("A", 1, 0)),
  closed(slot("B", 1, 0)),
  slot("C", 1, 0),
  slot("D", 1, 0),
]);
/** Its own image in no mirror. */
const LOPSIDED = profile("40x80-8-2c", 0.08, 0.04, [
  closed(slot("A", 1, 0)),
  closed(slot("B", 1, -0.02)),
  closed(slot("B", 2, 0.02)),
  slot("C", 1, 0),
  slot("D", 1, -0.02),
  slot("D", 2, 0.02),
]);

function screw(name: string, length: number, torque: number): Screw {
  return {
    name,
    thread: "M8",
    diameter: si(0.008, "length"),
    length: si(length, "length"),
    pitch: si(0.00125, "length"),
    head: "cap",
    headDiameter: si(0.013, "length"),
    headHeight: si(0.008, "length"),
    key: si(0.006, "length"),
    socketDepth: si(0.004, "length"),
    propertyClass: "8.8",
    torque: si(torque, "moment"),
    source: "invented",
  };
}

const base = { about: "a part for tests", slotSize: "8", mass: si(0.05, "mass") };
const hole = (id: string, along: number, across: number) => ({
  id,
  at: [along, across] as const,
  diameter: si(0.0085, "length"),
});
const leg = (id: string) => ({
  length: si(0.04, "length"),
  thickness: si(0.006, "length"),
  holes: [hole(`${id}1`, 0.02, 0)],
});
const wideLeg = (id: string) => ({
  length: si(0.04, "length"),
  thickness: si(0.006, "length"),
  holes: [hole(`${id}1`, 0.02, -0.02), hole(`${id}2`, 0.02, 0.02)],
});

const CONNECTORS: readonly Connector[] = [
  {
    ...base,
    name: "inside-bracket-40",
    kind: "bracket",
    legs: { a: leg("a"), b: leg("b") },
    width: si(0.036, "length"),
    gussets: 0,
    gussetThickness: si(0, "length"),
    lugs: false,
    screw: "M8x16",
  },
  {
    ...base,
    name: "wide-bracket-80",
    kind: "bracket",
    legs: { a: wideLeg("a"), b: wideLeg("b") },
    width: si(0.076, "length"),
    gussets: 2,
    gussetThickness: si(0.004, "length"),
    lugs: false,
    screw: "M8x16",
  },
  {
    ...base,
    name: "plate-L-40",
    kind: "plate",
    outline: [
      [-0.02, -0.02],
      [0.1, -0.02],
      [0.1, 0.02],
      [0.02, 0.02],
      [0.02, 0.1],
      [-0.02, 0.1],
    ],
    thickness: si(0.005, "length"),
    holes: [hole("h1", 0, 0), hole("h2", 0.08, 0), hole("h3", 0, 0.08)],
    screw: "M8x16",
  },
  {
    ...base,
    name: "end-screw-M8",
    kind: "end-screw",
    screw: "M8x30",
    head: "in-slot",
    accessHole: si(0.007, "length"),
    engagement: si(0.016, "length"),
  },
  { ...base, name: "side-tie-8", kind: "side-tie", screw: "M8x16", lugs: true },
  {
    ...base,
    name: "hinge-8",
    kind: "hinge",
    screw: "M8x16",
    gap: si(0.004, "length"),
    holes: [],
    thickness: si(0.004, "length"),
  },
];

function stand(name: string, kind: Stand["kind"], brake: boolean): Stand {
  return {
    name,
    kind,
    mount: { by: "stem", thread: "M8", engagement: si(0.016, "length") },
    diameter: si(0.05, "length"),
    collar: si(0.03, "length"),
    raise: [si(0.04, "length"), si(0.06, "length")],
    capacity: si(2000, "force"),
    brake,
    swivel: kind === "caster",
    mass: si(0.2, "mass"),
  };
}

function byName<T extends { readonly name: string }>(parts: readonly T[]): ReadonlyMap<string, T> {
  return new Map(parts.map((part) => [part.name, part]));
}

export const smallStock: Stock = {
  series: new Map(),
  profiles: byName([SQUARE, TALL, ONE_CLOSED, CORNER_CLOSED, LOPSIDED]),
  connectors: byName(CONNECTORS),
  screws: byName([screw("M8x16", 0.016, 25), screw("M8x30", 0.03, 12)]),
  nuts: new Map(),
  caps: byName([{ name: "cap-40", profiles: ["40x40-8"], thickness: si(0.004, "length"), mass: si(0.01, "mass") }]),
  stands: byName([
    stand("foot-40-M8", "foot", false),
    stand("caster-40", "caster", true),
    stand("caster-plain", "caster", false),
  ]),
  sheets: byName([
    {
      name: "plywood-18",
      thickness: si(0.018, "length"),
      elasticModulus: si(9e9, "stress"),
      poisson: 0.3,
      shearModulus: si(0.6e9, "stress"),
      density: 650,
      expansion: 8e-6,
      strength: si(30e6, "stress"),
      moisture: 0,
      brittle: false,
      source: "invented",
    },
  ]),
  gaskets: byName([
    { name: "strip-8", slotSize: "8", sheet: [si(0.004, "length"), si(0.005, "length")], depth: si(0.009, "length") },
  ]),
  tools: new Map(),
  materials: new Map(),
};
