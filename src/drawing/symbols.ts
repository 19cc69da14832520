import { bodies, cutPoint } from "../facts/bodies.ts";
import { factOf } from "../facts/fact.ts";
import { footing } from "../facts/footing.ts";
import { boundsOf } from "../geometry/bounds.ts";
import { add, along, distance, dot, lerp, scale, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Frame, Load, Mass } from "../model/frame.ts";
import type { Scene } from "./scene.ts";

/** What acts on a frame and what it stands on, as signs: none of them to the scale of forces. */
export interface Symbols {
  readonly arrows: readonly { readonly load: string; readonly case: string; readonly from: Vec3; readonly to: Vec3 }[];
  /** Loads that turn, about the axis from → to. */
  readonly moments: readonly { readonly load: string; readonly case: string; readonly from: Vec3; readonly to: Vec3 }[];
  /** Goods and equipment: the box they take, or a point, with the centre of mass. */
  readonly masses: readonly {
    readonly mass: string;
    readonly centre: Vec3;
    readonly edges: readonly (readonly [Vec3, Vec3])[];
  }[];
  readonly supports: readonly {
    readonly stand: string;
    readonly at: Vec3;
    readonly hold: "rest" | "anchored" | "rolling";
  }[];
}

/** Length of an arrow as a share of the frame's diagonal. */
const ARROW = 0.075;
/** No longer than this share of a usual bar: the arrows on a long line of bars would hide it. */
const OF_BAR = 0.5;
/** Arrows along a line load, and along each side of a pressure. */
const ALONG_LINE = [0.06, 0.28, 0.5, 0.72, 0.94] as const;
const ALONG_SIDE = [0.12, 0.5, 0.88] as const;
/** Where more bars than this bear line loads, one arrow on each has to do. */
const MANY_LINES = 200;
const AT_MIDDLE = [0.5] as const;

function boxEdges({ centre, box }: Mass): readonly (readonly [Vec3, Vec3])[] {
  if (!box) return [];
  const corner = (i: number): Vec3 => [
    centre[0] + (i & 1 ? 0.5 : -0.5) * box[0],
    centre[1] + (i & 2 ? 0.5 : -0.5) * box[1],
    centre[2] + (i & 4 ? 0.5 : -0.5) * box[2],
  ];
  const edges: [Vec3, Vec3][] = [];
  for (let i = 0; i < 8; i++)
    for (const bit of [1, 2, 4]) if ((i & bit) === 0) edges.push([corner(i), corner(i | bit)]);
  return edges;
}

/** Points on a bar, panel or mass where the arrows of a load end. */
function targets(frame: Frame, scene: Scene, load: Load, id: string, shares: readonly number[]): readonly Vec3[] {
  const mass = frame.masses.find((one) => one.ref.id === id);
  if (mass) return [mass.centre];
  const panel = scene.solids.find(({ kind, of }) => kind === "panel" && of.id === id);
  if (panel) {
    // The face of the sheet that the load comes upon first.
    const face = panel.prism.faces.reduce((a, b) =>
      dot(b.normal, load.direction) < dot(a.normal, load.direction) - 1e-9 ? b : a,
    );
    const [a, b, , d] = face.vertices;
    if (!a || !b || !d) return [];
    return ALONG_SIDE.flatMap((s) => ALONG_SIDE.map((t) => add(lerp(a, b, s), scale(subtract(d, a), t))));
  }
  const body = factOf(bodies, frame).get(id);
  if (!body?.prism) return [];
  const [from, to] = [cutPoint(body, "from"), cutPoint(body, "to")];
  const surface = scale(load.direction, -Math.min(body.half.y, body.half.z));
  const at = (share: number): Vec3 => add(lerp(from, to, share), surface);
  if (load.amount.kind === "line") return shares.map(at);
  if (load.at.kind === "distance") return [at(load.at.value / Math.max(distance(from, to), 1e-9))];
  return [at(0.5)];
}

/** The signs for loads, goods and supports of a frame. */
export function symbolsOf(frame: Frame, scene: Scene): Symbols {
  const points = scene.solids.flatMap(({ prism }) => prism.vertices);
  const { min, max } = boundsOf(points.length > 0 ? points : [[0, 0, 0]]);
  const lengths = [...factOf(bodies, frame).values()].map(({ cutLength }) => cutLength);
  const usual = lengths.reduce((a, b) => a + b, 0) / Math.max(1, lengths.length);
  const size = Math.min(ARROW * distance(min, max), OF_BAR * usual);
  const arrows: Symbols["arrows"][number][] = [];
  const moments: Symbols["moments"][number][] = [];
  const lines = frame.loads.flatMap(({ amount, on }) => (amount.kind === "line" ? on : []));
  const places = lines.length > MANY_LINES ? AT_MIDDLE : ALONG_LINE;
  for (const load of frame.loads) {
    for (const id of load.on) {
      const turning = load.amount.kind === "moment";
      // A single force is drawn longer than one of many.
      const length = size * (load.amount.kind === "force" ? 1.4 : 0.8);
      for (const to of targets(frame, scene, load, id, places)) {
        const sign = { load: load.ref.id, case: load.case, from: along(to, load.direction, -length), to };
        (turning ? moments : arrows).push(sign);
      }
    }
  }
  return {
    arrows,
    moments,
    masses: frame.masses.map((mass) => ({ mass: mass.ref.id, centre: mass.centre, edges: boxEdges(mass) })),
    supports: factOf(footing, frame).map(({ ref, at, hold }) => ({ stand: ref.id, at, hold })),
  };
}
