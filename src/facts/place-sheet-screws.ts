import { along, dot, scale, type Vec3 } from "../geometry/vector.ts";
import type { Frame } from "../model/frame.ts";
import { ref } from "../model/ref.ts";
import type { FaceName, Slot } from "../model/stock/stock.ts";
import { faceNames, faceNormal } from "./axes.ts";
import { type Body, onFace } from "./bodies.ts";
import { sitsInSlot } from "./landing.ts";
import { nutScrew } from "./nut-screw.ts";
import type { ScrewedPart } from "./placed.ts";
import { type SheetRow, screwRows } from "./sheet-rows.ts";
import { usualSheetScrew } from "./sheet-screw.ts";
import type { LaidSheet } from "./sheets.ts";

/** A sheet lies on a face that looks its way within this cosine: 1°. */
const SAME_WAY = Math.cos(Math.PI / 180);
/** A screw is set aside by so much of the pitch at most, where something fills the slot: beyond that the next screw is nearer. */
const ASIDE = 0.5;

/** A stretch of slot along its bar, m from the drawn from point. */
export type Stretch = readonly [from: number, to: number];

/** What fills a slot already. */
export type FilledSlots = (bar: string, face: FaceName, slot: number) => readonly Stretch[];

/** The open slot under the sheet that lies nearest to the middle of the sheet. */
function slotUnder(sheet: LaidSheet, body: Body, face: FaceName, station: number): Slot | undefined {
  const [u, v] = sheet.axes;
  const [low, , high] = sheet.corners;
  const under = (point: Vec3): boolean =>
    [u, v].every((axis) => dot(point, axis) > dot(low, axis) && dot(point, axis) < dot(high, axis));
  const off = (slot: Slot): number => {
    const point = onFace(body, face, station, slot.across);
    return [u, v].reduce((sum, axis) => sum + (dot(point, axis) - (dot(low, axis) + dot(high, axis)) / 2) ** 2, 0);
  };
  return body.bar.profile.slots
    .filter((slot) => slot.face === face && !slot.closed && under(onFace(body, face, station, slot.across)))
    .sort((a, b) => off(a) - off(b) || a.number - b.number)[0];
}

/** The nearest place along a row at which a nut so long has room; the place itself where there is none near. */
function free(at: number, half: number, filled: readonly Stretch[], [low, high]: Stretch, most: number): number {
  const fits = (x: number): boolean => filled.every(([from, to]) => x + half <= from || x - half >= to);
  const places = [at, ...filled.flatMap(([from, to]) => [from - half, to + half])]
    .filter((x) => x >= low && x <= high && Math.abs(x - at) <= most && fits(x))
    .sort((a, b) => Math.abs(a - at) - Math.abs(b - at));
  return places[0] ?? at;
}

function rowOf(
  frame: Frame,
  sheet: LaidSheet,
  row: SheetRow,
  body: Body,
  pitch: number,
  filled: FilledSlots,
): ScrewedPart | undefined {
  const { panel, normal } = sheet;
  const { held } = panel;
  const face = faceNames.find((one) => dot(faceNormal(body.axes, one), normal) > SAME_WAY);
  const [low, high] = row.stations;
  const slot = face && slotUnder(sheet, body, face, (low + high) / 2);
  if (held.kind !== "on-face" || !face || !slot) return undefined;
  const { thickness } = panel.sheet;
  const { nut, lock } = frame.screwing;
  const screw = held.screw ?? usualSheetScrew(frame.stock, body, slot, thickness, nut);
  if (!screw) return undefined;
  const connector = ref("connector", `${panel.ref.id}/${row.bar}`);
  const taken = [...filled(row.bar, face, slot.number)];
  const screws = Array.from({ length: row.screws }, (_, i) => {
    const even = row.screws > 1 ? low + ((high - low) * i) / (row.screws - 1) : low;
    const placed = (station: number) =>
      nutScrew({
        joint: panel.ref,
        choice: { ref: connector, screw, nut },
        hole: `${i + 1}`,
        body,
        face,
        seat: along(onFace(body, face, station, slot.across), normal, thickness),
        axis: scale(normal, -1),
        grip: thickness,
        stock: frame.stock,
      });
    const drawn = placed(even);
    const half = drawn.into.kind === "nut" && drawn.into.nut ? drawn.into.nut.length / 2 : 0;
    const station = free(even, half, taken, row.stations, ASIDE * pitch);
    taken.push([station - half, station + half]);
    return station === even ? drawn : placed(station);
  });
  return {
    ref: connector,
    joint: panel.ref,
    choice: { nut, lock },
    holds: [
      {
        bar: row.bar,
        screws: screws
          .filter(({ into }) => into.kind === "nut" && sitsInSlot(into.landing))
          .map(({ seat, axis }) => ({ point: seat, axis })),
        lugs: false,
      },
    ],
    pieces: [],
    screws,
    bored: [],
    inSlots: [],
    sheet: panel.ref,
    ...(held.screw ? {} : { usual: true }),
  };
}

/** The screws of a sheet on the faces of bars, row by row: evenly along each bar, set aside where something fills the slot. */
export function placeSheetScrews(
  frame: Frame,
  sheet: LaidSheet,
  all: ReadonlyMap<string, Body>,
  filled: FilledSlots,
): readonly ScrewedPart[] {
  const { held } = sheet.panel;
  if (held.kind !== "on-face" || held.pitch === undefined) return [];
  const pitch = held.pitch;
  return screwRows(sheet, all, pitch).flatMap((row) => {
    const body = all.get(row.bar);
    return (body && rowOf(frame, sheet, row, body, pitch, filled)) ?? [];
  });
}
