import type { ModelData } from "../drawing/model3d/model-data.ts";
import type { Mesh } from "./mesh.ts";
import { add, cross, mix, type Vec, vecAt } from "./vec.ts";

interface Place {
  readonly list: readonly number[];
  /** Number of the stretch between two stations, and the share of it. */
  readonly i: number;
  readonly share: number;
  readonly last: number;
}

function placeOf(model: ModelData, bar: number, shape: number, station: number): Place | undefined {
  const list = model.bars[bar]?.moved[shape] ?? [];
  const last = list.length / 4 - 1;
  if (last < 1) return undefined;
  const place = Math.min(station * last, last);
  const i = Math.min(Math.floor(place), last - 1);
  return { list, i, share: place - i, last };
}

const between = ({ list, i, share }: Place): Vec => mix(vecAt(list, 4 * i), vecAt(list, 4 * (i + 1)), share);

/** Displacement of a bar's axis at a station from 0 to 1 in a shape, mm. */
export function movedAt(model: ModelData, bar: number, shape: number, station: number): Vec {
  const place = placeOf(model, bar, shape, station);
  return place ? between(place) : [0, 0, 0];
}

/** By how much a station of a bar moves and turns (small turns), mm and rad; `run` is the bar from cut to cut, mm. */
function twistAt(place: Place, run: Vec): readonly [Vec, Vec] {
  const { list, i, share, last } = place;
  const long = Math.hypot(...run) || 1;
  const x: Vec = [run[0] / long, run[1] / long, run[2] / long];
  const step = long / last;
  const slope = (k: number): Vec => {
    const [a, b] = [Math.max(0, k - 1), Math.min(last, k + 1)];
    const d = add(vecAt(list, 4 * b), vecAt(list, 4 * a), -1);
    const size = (b - a) * step;
    return [d[0] / size, d[1] / size, d[2] / size];
  };
  const roll = (list[4 * i + 3] ?? 0) * (1 - share) + (list[4 * i + 7] ?? 0) * share;
  return [between(place), add(cross(x, mix(slope(i), slope(i + 1), share)), x, roll)];
}

/** Displacement of every point of a mesh: it goes and turns with the station of the bar it rides on. */
export function movedMesh(
  model: ModelData,
  mesh: Mesh,
  axes: readonly { from: Vec; to: Vec }[],
  shape: number,
): Float32Array {
  const moved = new Float32Array(mesh.at.length);
  if (shape < 0) return moved;
  let [known, motion]: [string, readonly [Vec, Vec] | undefined] = ["", undefined];
  mesh.rides.forEach((bar, i) => {
    const axis = axes[bar];
    if (!axis) return;
    const station = mesh.station[i] ?? 0;
    const key = `${bar} ${station}`;
    if (key !== known) {
      const place = placeOf(model, bar, shape, station);
      [known, motion] = [key, place && twistAt(place, add(axis.to, axis.from, -1))];
    }
    if (!motion) return;
    const [shift, turn] = motion;
    const arm = add(vecAt(mesh.at as unknown as readonly number[], 3 * i), mix(axis.from, axis.to, station), -1);
    moved.set(add(shift, cross(turn, arm)), 3 * i);
  });
  return moved;
}
