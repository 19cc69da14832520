import type { ModelData } from "../drawing/model3d/model-data.ts";
import type { Mesh } from "./mesh.ts";
import { mix, type Vec, vecAt } from "./vec.ts";

/** Displacement of a bar at a station from 0 to 1 in bent shape `bend`, mm. */
export function bentAt(model: ModelData, bar: number, bend: number, station: number): Vec {
  const list = model.bars[bar]?.bent[bend] ?? [];
  const last = list.length / 3 - 1;
  if (last < 1) return [0, 0, 0];
  const place = Math.min(station * last, last);
  const i = Math.min(Math.floor(place), last - 1);
  return mix(vecAt(list, 3 * i), vecAt(list, 3 * (i + 1)), place - i);
}

/** Displacement of every point of a mesh: pieces go with the bar they are fastened to. */
export function bentMesh(model: ModelData, { part, station }: Mesh, bend: number): Float32Array {
  const moved = new Float32Array(3 * part.length);
  if (bend < 0) return moved;
  part.forEach((index, i) => {
    const bar = index < model.bars.length ? index : (model.pieces[index - model.bars.length]?.bar ?? -1);
    moved.set(bentAt(model, bar, bend, station[i] ?? 0), 3 * i);
  });
  return moved;
}
