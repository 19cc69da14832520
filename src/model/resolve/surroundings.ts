import type { Floor, Site, Triple, Zone } from "../frame.ts";
import { ref } from "../ref.ts";
import { si } from "../units/quantity.ts";
import { notNegative, point, quantity, triple } from "./values.ts";
import { asWritten, name, refuse, type Work } from "./work.ts";

const ZERO_CELSIUS = 273.15; // K
/** A heated workshop, and outdoors in a temperate climate: common practice. */
const TEMPERATURES = { indoors: [5, 35], outdoors: [-20, 45] } as const; // °C, coldest and warmest
/** Rubber or plastic feet on a smooth floor: the lower end of common practice. */
export const FLOOR_FRICTION = 0.3;

function standardTemperature(place: Site["place"]): Site["temperature"] {
  const [coldest, warmest] = TEMPERATURES[place];
  return Object.freeze([coldest + ZERO_CELSIUS, warmest + ZERO_CELSIUS] as const);
}

function temperatureOf(work: Work, place: Site["place"]): Site["temperature"] {
  const written = work.file.site?.temperature;
  if (written === undefined) {
    const [coldest, warmest] = TEMPERATURES[place];
    if ((work.file.panels ?? []).length > 0) work.assumed.add(`temperatures range from ${coldest} to ${warmest} °C`);
    return standardTemperature(place);
  }
  const pointer = "/site/temperature";
  const coldest = quantity(work, written[0], "temperature", `${pointer}/0`, "temperature");
  const warmest = quantity(work, written[1], "temperature", `${pointer}/1`, "temperature");
  if (coldest === undefined || warmest === undefined) return standardTemperature(place);
  if (coldest > warmest) {
    const [a, b] = written.map((one) => asWritten(one));
    refuse(work, "wrong-order", pointer, {
      found: `[${a}, ${b}]`,
      expected: "the coldest first",
      mend: `write [${b}, ${a}]`,
    });
  }
  return Object.freeze([coldest, warmest] as const);
}

export function resolveSite(work: Work): Site {
  const raw = work.file.site;
  const place = raw?.place ?? "indoors";
  if (raw?.place === undefined) work.assumed.add("it stands indoors");
  if (raw?.vibration === undefined) work.assumed.add("nothing vibrates");
  if (raw?.reach === undefined) work.assumed.add("only trained people reach it");
  return Object.freeze({
    place,
    temperature: temperatureOf(work, place),
    vibration: raw?.vibration ?? "none",
    reach: raw?.reach ?? "trained",
  });
}

/** No floor on which things are stood leans more, rad: rubber slides on concrete before (common practice). */
const STEEPEST = (30 * Math.PI) / 180;

export function resolveFloor(work: Work): Floor {
  const raw = work.file.floor;
  const stands = (work.file.stands ?? []).length > 0;
  if (stands && raw?.z === undefined) work.assumed.add("the floor is at height 0 of the drawing");
  if (stands && (raw?.slope === undefined || raw.uneven === undefined)) work.assumed.add("the floor is level and even");
  if (stands && raw?.friction === undefined) work.assumed.add(`friction between feet and floor is ${FLOOR_FRICTION}`);
  const zero = si(0, "length");
  const z = raw?.z === undefined ? zero : quantity(work, raw.z, "length", "/floor/z", "coordinate");
  const uneven = raw?.uneven === undefined ? zero : notNegative(work, raw.uneven, "length", "/floor/uneven");
  const slope = raw?.slope === undefined ? si(0, "angle") : notNegative(work, raw.slope, "angle", "/floor/slope");
  if (slope !== undefined && slope > STEEPEST)
    refuse(work, "floor-too-steep", "/floor/slope", {
      found: `a slope of ${asWritten(raw?.slope)}`,
      expected: 'at most 30°; a slope like "1:50", or a number in degrees',
    });
  return Object.freeze({
    z: z ?? zero,
    slope: slope ?? si(0, "angle"),
    uneven: uneven ?? zero,
    friction: raw?.friction ?? FLOOR_FRICTION,
  });
}

function corners(a: Triple, b: Triple): { readonly low: Triple; readonly high: Triple } {
  return {
    low: triple(Math.min(a[0], b[0]), Math.min(a[1], b[1]), Math.min(a[2], b[2])),
    high: triple(Math.max(a[0], b[0]), Math.max(a[1], b[1]), Math.max(a[2], b[2])),
  };
}

export function nameZones(work: Work): void {
  for (const [index, raw] of (work.file.zones ?? []).entries()) {
    const pointer = `/zones/${index}`;
    name(work, raw.id, { kind: "zone", pointer }, `${pointer}/id`);
  }
}

export function resolveZones(work: Work): Zone[] {
  const zones: Zone[] = [];
  for (const [index, raw] of (work.file.zones ?? []).entries()) {
    const pointer = `/zones/${index}`;
    const a = point(work, raw.box[0], `${pointer}/box/0`);
    const b = point(work, raw.box[1], `${pointer}/box/1`);
    if (a === undefined || b === undefined) continue;
    if (a.some((value, axis) => value === b[axis])) {
      refuse(work, "zone-flat", `${pointer}/box`, { found: "a box without volume", expected: "two opposite corners" });
    }
    zones.push(Object.freeze({ ref: Object.freeze(ref("zone", raw.id)), ...corners(a, b), risk: raw.risk }));
  }
  return zones;
}
