import type { Series as RawSeries } from "../generated/stock-file.generated.ts";
import { pointerTo } from "../text/pointer.ts";
import { type Si, si } from "../units/quantity.ts";
import { type Cell, impossible } from "./cell.ts";
import { readOnly } from "./frozen.ts";
import { LIP_SOURCE, lipRating } from "./lip-rating.ts";
import type { Material, Series } from "./stock.ts";
import type { StockReader } from "./stock-reader.ts";

/** 0.02 mm: below what a saw or a caliper resolves. */
const STANDARD_CHORD_ERROR = 2e-5;

function cellOf(raw: RawSeries, at: string, read: StockReader): Cell {
  const optional = (value: number | string | undefined, key: string) =>
    value === undefined ? {} : { [key]: read.size(value, "length", `${at}/${key}`) };
  const slot = raw.slot;
  return {
    pitch: read.size(raw.pitch, "length", `${at}/pitch`, "section size"),
    slot: {
      opening: read.size(slot.opening, "length", `${at}/slot/opening`),
      lip: read.size(slot.lip, "length", `${at}/slot/lip`),
      cavity: read.size(slot.cavity, "length", `${at}/slot/cavity`),
      depth: read.size(slot.depth, "length", `${at}/slot/depth`),
      web: slot.web === undefined ? 0 : read.amount(slot.web, "length", `${at}/slot/web`),
    },
    ...(raw.bore === undefined
      ? {}
      : {
          bore: {
            diameter: read.size(raw.bore.diameter, "length", `${at}/bore/diameter`),
            thread: raw.bore.thread,
          },
        }),
    cornerRadius: raw.cornerRadius === undefined ? 0 : read.amount(raw.cornerRadius, "length", `${at}/cornerRadius`),
    ...optional(raw.cornerWall, "cornerWall"),
    ...optional(raw.cellWall, "cellWall"),
    ...optional(raw.closedWall, "closedWall"),
    chordError:
      raw.chordError === undefined ? STANDARD_CHORD_ERROR : read.size(raw.chordError, "length", `${at}/chordError`),
  };
}

/** Torques by thread, N·m. */
export function torquesOf(
  raw: Readonly<Record<string, number | string | undefined>> | undefined,
  at: string,
  read: StockReader,
): ReadonlyMap<string, Si<"moment">> {
  const torques = new Map<string, Si<"moment">>();
  for (const [thread, value] of Object.entries(raw ?? {})) {
    if (value !== undefined) torques.set(thread, read.size(value, "moment", pointerTo(at, thread), "torque"));
  }
  return readOnly(torques);
}

function ratingOf(raw: RawSeries, cell: Cell, material: Material | undefined, at: string, read: StockReader) {
  if (raw.lipRating !== undefined) {
    const lipSource = raw.lipSource ?? "stated in the stock file";
    return { lipRating: read.size(raw.lipRating, "force", `${at}/lipRating`, "part force capacity"), lipSource };
  }
  if (raw.ratedNut === undefined) {
    read.refuse(
      "lip-rating-missing",
      at,
      "neither lipRating nor ratedNut",
      "lipRating from a test, or the ratedNut to compute it for",
    );
    return { lipRating: si(Number.NaN, "force"), lipSource: LIP_SOURCE };
  }
  const nutLength = read.size(raw.ratedNut[0], "length", `${at}/ratedNut/0`);
  const nutWidth = read.size(raw.ratedNut[1], "length", `${at}/ratedNut/1`);
  if (nutWidth <= cell.slot.opening || nutWidth > cell.slot.cavity) {
    read.refuse(
      "nut-does-not-fit",
      `${at}/ratedNut/1`,
      String(raw.ratedNut[1]),
      "wider than the opening, no wider than the cavity",
    );
  }
  const rating = lipRating({ ...cell.slot, nutLength, nutWidth, proof: material?.proof ?? Number.NaN });
  return { lipRating: si(rating, "force"), lipSource: LIP_SOURCE };
}

/** A series of the file in SI; problems go to the reader. */
export function resolveSeries(
  raw: RawSeries,
  at: string,
  materials: ReadonlyMap<string, Material>,
  read: StockReader,
): Series {
  const cell = cellOf(raw, at, read);
  const fault = impossible(cell);
  if (fault !== undefined)
    read.refuse("impossible-section", `${at}/${fault.field}`, "a cell that cannot be extruded", fault.expected);
  read.expectPart(raw.material, materials, "material", `${at}/material`);
  return {
    name: raw.name,
    about: raw.about ?? "",
    cell,
    slotSize: raw.slotSize,
    weight: raw.weight,
    material: raw.material,
    stockLength: read.size(raw.stockLength, "length", `${at}/stockLength`, "bar length"),
    ...ratingOf(raw, cell, materials.get(raw.material), at, read),
    torques: torquesOf(raw.torques, `${at}/torques`, read),
  };
}
