import type { Ring as ClipRing, MultiPolygon, Polygon } from "polygon-clipping";
import polygonClipping from "polygon-clipping";
import { area, type Region, type Ring } from "./polygon.ts";
import { GRID, snapRegion } from "./region-transform.ts";
import type { Vec2 } from "./vector.ts";

/**
 * Polygon clipping by the sweep of F. Martínez et al., "A simple algorithm for Boolean operations on polygons", 2013. Points that
 * differ by rounding only can leave the sweep with an open ring, so every input is snapped first; should a ring stay open even
 * so, the clip is repeated on grids ten and a hundred times as wide [m]. The widest moves a point by at most 5e-8 m.
 */
const GRIDS: readonly number[] = [GRID, 10 * GRID, 100 * GRID];

const closed = (ring: Ring): ClipRing => ring.map(([x, y]) => [x, y]);
const toPolygon = (region: Region): Polygon => [closed(region.outer), ...region.holes.map(closed)];

function snapped(regions: readonly Region[], grid: number): MultiPolygon {
  const polygons: MultiPolygon = [];
  for (const region of regions) {
    const kept = snapRegion(region, grid);
    if (kept !== undefined) polygons.push(toPolygon(kept));
  }
  return polygons;
}

/** The library repeats the first point of a ring at its end; a Ring does not. */
const opened = (ring: ClipRing): Ring => ring.slice(0, -1).map(([x, y]): Vec2 => [x, y]);

function toRegions(polygons: MultiPolygon): readonly Region[] {
  const regions: Region[] = [];
  for (const [outer, ...holes] of polygons) {
    if (outer === undefined) continue;
    // Results carry crossing points off the grid: snapping them here lets them be clipped again.
    const region = snapRegion({ outer: opened(outer), holes: holes.map(opened) });
    if (region !== undefined && area(region) > 0) regions.push(region);
  }
  return regions;
}

function onSomeGrid(clip: (grid: number) => MultiPolygon): readonly Region[] {
  let failure: unknown;
  for (const grid of GRIDS) {
    try {
      return toRegions(clip(grid));
    } catch (error) {
      failure = error;
    }
  }
  throw new Error("polygons could not be clipped on any grid", { cause: failure });
}

/** Everything covered by at least one region, as regions that do not overlap. Outer rings run counter-clockwise. */
export const union = (regions: readonly Region[]): readonly Region[] =>
  onSomeGrid((grid) => polygonClipping.union(snapped(regions, grid)));

/** Everything covered by both lists. */
export const intersection = (a: readonly Region[], b: readonly Region[]): readonly Region[] =>
  onSomeGrid((grid) => polygonClipping.intersection(snapped(a, grid), snapped(b, grid)));

/** What of `a` no region of `b` covers. */
export const difference = (a: readonly Region[], b: readonly Region[]): readonly Region[] =>
  onSomeGrid((grid) => polygonClipping.difference(snapped(a, grid), snapped(b, grid)));

/** Area of regions that do not overlap, such as a clipping result [m²]. */
export const areaOf = (regions: readonly Region[]): number => regions.reduce((sum, region) => sum + area(region), 0);
