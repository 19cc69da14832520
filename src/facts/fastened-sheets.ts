import { cross, dot, scale, subtract, type Vec3 } from "../geometry/vector.ts";
import { shearBuckling } from "../mechanics/plates/sheet-in-shear.ts";
import type { Panel } from "../model/frame.ts";
import { bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { type SheetRow, screwRows } from "./sheet-rows.ts";
import { SCREW_SHARE } from "./sheet-screw.ts";
import { sheets } from "./sheets.ts";

/** A sheet that is screwed to bars so closely that it can brace them. */
export interface FastenedSheet {
  readonly panel: Panel;
  readonly normal: Vec3;
  /** Two directions in the plane of the sheet. */
  readonly axes: readonly [Vec3, Vec3];
  readonly rows: readonly SheetRow[];
  /** G t A, N·m. */
  readonly shear: number;
  /** What one screw is trusted with in the plane of the sheet, N. */
  readonly trusted: number;
  /** G t A γ at which the sheet buckles in shear, N·m. */
  readonly buckles: number;
}

/** A sheet braces when its screws stand no farther apart than this, m (common practice). */
export const CLOSE_PITCH = 0.3;
/**
 * A screw of 8 mm is trusted with this in the plane of a sheet, N, others by the square of their diameter: half of what the
 * same screw holds between metal faces, for sheets creep under the head (common practice).
 */
const TRUSTED = 500;
const TRUSTED_DIAMETER = 0.008;

/**
 * Sheets screwed on at a close pitch to two or more bars that lie in one plane: they brace, up to what their screws and the
 * sheet itself bear. Sheets in slots, laid sheets and sheets with few screws are weight only.
 */
export const fastenedSheets = defineFact<readonly FastenedSheet[], { bodies: typeof bodies; sheets: typeof sheets }>({
  id: "fastened-sheets",
  needs: { bodies, sheets },
  compute({ bodies: all, sheets: laid }) {
    return laid.flatMap((sheet): FastenedSheet[] => {
      const { panel, normal } = sheet;
      const { held, sheet: of } = panel;
      if (held.kind !== "on-face" || held.pitch === undefined || held.pitch > CLOSE_PITCH) return [];
      const pitch = held.pitch;
      const [first] = sheet.axes;
      const axes = [first, cross(normal, first)] as const;
      const bars = sheet.bars.flatMap((id) => all.get(id) ?? []);
      const rows = screwRows(sheet, all, pitch);
      if (rows.length < 2) return [];
      const area = sheet.size[0] * sheet.size[1];
      const diameter = held.screw?.diameter ?? SCREW_SHARE * Math.min(...bars.map((body) => body.bar.profile.pitch));
      return [
        {
          panel,
          normal,
          axes,
          rows,
          shear: of.shearModulus * of.thickness * area,
          trusted: TRUSTED * (diameter / TRUSTED_DIAMETER) ** 2,
          buckles: shearBuckling(of.elasticModulus, of.poisson, of.thickness, sheet.size) * of.thickness * area,
        },
      ];
    });
  },
});

/** A point in the plane of the sheet, from its first row, m. */
export function inSheet(sheet: FastenedSheet, point: Vec3): readonly [number, number] {
  const from = subtract(point, sheet.rows[0]?.ends[0] ?? point);
  return [dot(from, sheet.axes[0]), dot(from, sheet.axes[1])];
}

/** Direction across a row in the plane of the sheet: a quarter turn from its run. */
export function acrossRow(sheet: FastenedSheet, row: SheetRow): readonly [along: Vec3, across: Vec3] {
  const run = subtract(row.ends[1], row.ends[0]);
  const unit = scale(run, 1 / Math.hypot(...run));
  return [unit, cross(sheet.normal, unit)];
}
