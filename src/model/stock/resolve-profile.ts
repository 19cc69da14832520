import type { DrawnProfile, GeneratedProfile, Profile as RawProfile } from "../generated/stock-file.generated.ts";
import { quote } from "../text/quote.ts";
import { si } from "../units/quantity.ts";
import { type CrossSection, crossSection } from "./cross-section.ts";
import { crossing, insideRing } from "./crossing.ts";
import { frozen } from "./frozen.ts";
import type { Pair } from "./pair.ts";
import { torquesOf } from "./resolve-series.ts";
import { asHole, asOutline, withoutRepeats } from "./ring.ts";
import type { Bore, FaceName, Material, Profile, Series, Slot } from "./stock.ts";
import type { StockReader } from "./stock-reader.ts";

/** How far the middle of a drawn outline may lie off [0, 0], m. */
const CENTRED = 1e-6;
/** Corners of all polygons of one profile together. */
const MOST_CORNERS = 5000;
const FACES: readonly FaceName[] = ["A", "B", "C", "D"];

function generated(
  raw: GeneratedProfile,
  at: string,
  series: ReadonlyMap<string, Series>,
  read: StockReader,
): Profile | undefined {
  const base = series.get(raw.series);
  if (base === undefined) {
    read.expectPart(raw.series, series, "series", `${at}/series`);
    return undefined;
  }
  const closed = new Set<FaceName>(raw.closed ?? []);
  if (closed.size > 0 && base.cell.closedWall === undefined) {
    read.refuse(
      "impossible-section",
      `${at}/closed`,
      `closed faces in series "${quote(base.name)}"`,
      "a series with closedWall",
    );
  }
  let drawnOnce: CrossSection | undefined;
  const section = (): CrossSection => {
    drawnOnce ??= frozen(crossSection(base.cell, raw.columns, raw.rows, closed));
    return drawnOnce;
  };
  const { name: _series, cell, ...common } = base;
  return {
    ...common,
    name: raw.name,
    about: raw.about ?? base.about,
    pitch: si(cell.pitch, "length"),
    height: si(raw.rows * cell.pitch, "length"),
    width: si(raw.columns * cell.pitch, "length"),
    // A run uses few of the many profiles in stock: each is drawn when first looked at.
    get region() {
      return section();
    },
    get slots() {
      return section().slots;
    },
    get bores() {
      return section().bores;
    },
  };
}

function drawnSlots(raw: DrawnProfile, at: string, read: StockReader): readonly Slot[] {
  const unnumbered = raw.slots.map((slot, i): Slot => {
    const here = `${at}/slots/${i}`;
    return {
      face: slot.face,
      number: 0,
      across: read.offset(slot.across, `${here}/across`),
      opening: slot.closed === true ? 0 : read.size(slot.opening, "length", `${here}/opening`),
      lip: read.size(slot.lip, "length", `${here}/lip`),
      depth: read.size(slot.depth, "length", `${here}/depth`),
      cavity: read.size(slot.cavity, "length", `${here}/cavity`),
      closed: slot.closed ?? false,
    };
  });
  return FACES.flatMap((face) =>
    unnumbered
      .filter((slot) => slot.face === face)
      .sort((a, b) => a.across - b.across)
      .map((slot, index) => ({ ...slot, number: index + 1 })),
  );
}

function drawnBores(raw: DrawnProfile, at: string, read: StockReader): readonly Bore[] {
  return (raw.bores ?? []).map((bore, i) => ({
    number: i + 1,
    at: read.pair(bore.at, `${at}/bores/${i}/at`),
    diameter: read.size(bore.diameter, "length", `${at}/bores/${i}/diameter`),
    thread: bore.thread,
  }));
}

function extent(ring: readonly Pair[], axis: 0 | 1): readonly [number, number] {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const point of ring) {
    low = Math.min(low, point[axis]);
    high = Math.max(high, point[axis]);
  }
  return [low, high];
}

/** What keeps the polygons from being a cross-section; undefined when nothing does. */
function faultOfRings(
  outer: readonly Pair[],
  holes: readonly (readonly Pair[])[],
): { readonly ring: number; readonly found: string; readonly expected: string } | undefined {
  const rings = [outer, ...holes];
  const small = rings.findIndex((ring) => ring.length < 3);
  if (small >= 0) return { ring: small, found: "corners that coincide", expected: "a polygon with an area" };
  const corners = rings.reduce((sum, ring) => sum + ring.length, 0);
  if (corners > MOST_CORNERS) {
    return { ring: 0, found: `${corners} corners`, expected: `at most ${MOST_CORNERS} corners in all polygons` };
  }
  const met = crossing(rings);
  if (met !== undefined) {
    const found = `an edge that meets another at its corner ${met[1] + 1}`;
    return { ring: met[0], found, expected: "polygons that cross neither themselves nor each other" };
  }
  const outside = holes.findIndex((hole) => hole[0] !== undefined && !insideRing(outer, hole[0]));
  if (outside >= 0) {
    return { ring: outside + 1, found: "a hole outside the outline", expected: "holes inside the outline" };
  }
  for (const axis of [0, 1] as const) {
    const [low, high] = extent(outer, axis);
    if (Math.abs(low + high) / 2 > CENTRED) {
      return {
        ring: 0,
        found: "an outline off its middle",
        expected: "corners measured from the middle of the envelope",
      };
    }
  }
  return undefined;
}

function drawn(
  raw: DrawnProfile,
  at: string,
  materials: ReadonlyMap<string, Material>,
  read: StockReader,
): Profile | undefined {
  const polygon = (ring: readonly (readonly [number | string, number | string])[], here: string) =>
    withoutRepeats(ring.map((point, i) => read.pair(point, `${here}/${i}`)));
  const shape = read.sound(() => {
    const outer = polygon(raw.outline, `${at}/outline`);
    return { outer, holes: (raw.holes ?? []).map((hole, i) => polygon(hole, `${at}/holes/${i}`)) };
  });
  if (shape === undefined) return undefined;
  const fault = faultOfRings(shape.outer, shape.holes);
  if (fault !== undefined) {
    const where = fault.ring === 0 ? `${at}/outline` : `${at}/holes/${fault.ring - 1}`;
    read.refuse("impossible-section", where, fault.found, fault.expected);
  }
  read.expectPart(raw.material, materials, "material", `${at}/material`);
  const [bottom, top] = extent(shape.outer, 0);
  const [left, right] = extent(shape.outer, 1);
  return {
    name: raw.name,
    about: raw.about ?? "",
    pitch: read.size(raw.pitch, "length", `${at}/pitch`, "section size"),
    slotSize: raw.slotSize,
    height: si(top - bottom, "length"),
    width: si(right - left, "length"),
    region: { outer: asOutline(shape.outer), holes: shape.holes.map(asHole) },
    slots: drawnSlots(raw, at, read),
    bores: drawnBores(raw, at, read),
    material: raw.material,
    weight: raw.weight,
    lipRating: read.size(raw.lipRating, "force", `${at}/lipRating`, "part force capacity"),
    lipSource: raw.lipSource,
    torques: torquesOf(raw.torques, `${at}/torques`, read),
    stockLength: read.size(raw.stockLength, "length", `${at}/stockLength`, "bar length"),
  };
}

/** A profile of the file with its cross-section in SI; undefined, or one to be thrown away, when problems went to the reader. */
export function resolveProfile(
  raw: RawProfile,
  at: string,
  known: { readonly series: ReadonlyMap<string, Series>; readonly materials: ReadonlyMap<string, Material> },
  read: StockReader,
): Profile | undefined {
  return raw.kind === "generated" ? generated(raw, at, known.series, read) : drawn(raw, at, known.materials, read);
}
