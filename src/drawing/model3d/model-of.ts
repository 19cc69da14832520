import { bodies } from "../../facts/bodies.ts";
import { factOf } from "../../facts/fact.ts";
import { loadPaths } from "../../facts/load-paths.ts";
import { movingShapes } from "../../facts/moving-shapes.ts";
import { triangulate } from "../../geometry/triangulate.ts";
import { dot, perpendicularPair, type Vec2, type Vec3 } from "../../geometry/vector.ts";
import type { Frame } from "../../model/frame.ts";
import type { Profile } from "../../model/stock/stock.ts";
import { swingsOf } from "../door-swing.ts";
import type { Scene } from "../scene.ts";
import type { Solid, Surface } from "../solids/solid.ts";
import type { Symbols } from "../symbols.ts";
import type { BarData, DoorData, FormData, ModelData, PieceData, PinData, ProfileData } from "./model-data.ts";
import { pathsData } from "./paths-data.ts";
import { type Pose, posesData } from "./poses-data.ts";
import { shapesData } from "./shapes-data.ts";

const TO_MM = 1000;

const rounded = (value: number, digits: number): number => Number(value.toFixed(digits)) + 0;
const mm = (point: readonly number[], digits = 2): readonly number[] => point.map((c) => rounded(c * TO_MM, digits));

function profileData({ region, height, width }: Profile): ProfileData {
  return {
    outer: region.outer.flatMap((point) => mm(point)),
    holes: region.holes.map((hole) => hole.flatMap((point) => mm(point))),
    triangles: triangulate(region),
    half: [rounded((height / 2) * TO_MM, 3), rounded((width / 2) * TO_MM, 3)],
  };
}

/** Corners that faces share are given once, each from the first. */
function corners(first: Vec3): { readonly points: number[]; placeOf(point: Vec3): number } {
  const points: number[] = [];
  const places = new Map<string, number>();
  const tenths = (point: Vec3): readonly number[] => point.map((c) => Math.round(c * 10 * TO_MM));
  const origin = tenths(first);
  return {
    points,
    placeOf(point) {
      const own = tenths(point).map((c, i) => c - (origin[i] ?? 0));
      const key = own.join();
      const known = places.get(key);
      if (known !== undefined) return known;
      points.push(...own);
      places.set(key, points.length / 3 - 1);
      return points.length / 3 - 1;
    },
  };
}

/** Triangles that a face needs where it is not convex. */
function trianglesOver({ rings: [ring = []], normal }: Surface): readonly number[] {
  const [u, v] = perpendicularPair(normal);
  return triangulate({ outer: ring.map((p): Vec2 => [dot(p, u), dot(p, v)]), holes: [] });
}

/** Shapes of pieces: many screws and brackets are alike, and stand alike. */
function formsOf(): { readonly list: readonly FormData[]; placeOf(form: FormData): number } {
  const list: FormData[] = [];
  const places = new Map<string, number>();
  return {
    list,
    placeOf(form) {
      const key = JSON.stringify(form);
      const known = places.get(key) ?? list.push(form) - 1;
      places.set(key, known);
      return known;
    },
  };
}

function pieceData(
  solid: Solid,
  indexOf: ReadonlyMap<string, number>,
  forms: ReturnType<typeof formsOf>,
): PieceData | undefined {
  const { kind, of, surfaces } = solid;
  if (kind === "bar") return undefined;
  const bar = solid.with.map((id) => indexOf.get(id)).find((index) => index !== undefined) ?? -1;
  const skins = surfaces.filter((surface) => surface.kind === "skin");
  const first = skins[0]?.rings[0]?.[0] ?? [0, 0, 0];
  const { points, placeOf } = corners(first);
  const faces = skins.map((surface) => {
    const [ring = []] = surface.rings;
    const at = ring.map(placeOf);
    return ring.length <= 4 || kind !== "connector" ? { at } : { at, triangles: trianglesOver(surface) };
  });
  return { kind, id: of.id, bar, origin: mm(first, 1), form: forms.placeOf({ points, faces }) };
}

/** Doors with what swings with them; pieces are numbered as they are given, after all bars. */
function doorsData(frame: Frame, scene: Scene, indexOf: ReadonlyMap<string, number>): readonly DoorData[] {
  const pieces = new Map(
    scene.solids.filter(({ kind }) => kind !== "bar").map((solid, i) => [solid, indexOf.size + i]),
  );
  return swingsOf(frame, scene).map(({ door, pin, swing, strikes, parts, arc }) => ({
    id: door,
    point: mm(pin.point),
    axis: pin.axis.map((c) => rounded(c, 6)),
    swing: [rounded(swing[0], 5), rounded(swing[1], 5)],
    ...(strikes === undefined ? {} : { strikes: rounded(strikes, 5) }),
    parts: parts.map((solid) => pieces.get(solid) ?? indexOf.get(solid.of.id) ?? -1),
    arc: arc.flatMap((point) => mm(point, 1)),
  }));
}

export interface ModelWish {
  readonly scene: Scene;
  readonly symbols: Symbols;
  readonly pins: readonly PinData[];
  readonly poses?: readonly Pose[];
  /** Share of each check's limit by bar. */
  readonly checks: readonly {
    readonly rule: string;
    readonly title: string;
    shareOf(bar: string): number | undefined;
  }[];
}

/** A frame as numbers for the viewer. */
export function modelOf(frame: Frame, { scene, symbols, pins, checks, poses = [] }: ModelWish): ModelData {
  const all = [...factOf(bodies, frame).values()].filter((body) => body.prism !== undefined);
  const indexOf = new Map(all.map((body, i) => [body.bar.ref.id, i]));
  const profiles = [...new Set(all.map((body) => body.bar.profile))];
  const paths = factOf(loadPaths, frame);
  const posed = posesData(poses, factOf(movingShapes, frame), paths, all.length);
  const shapes = shapesData(posed.shapes, all);
  const forms = formsOf();
  const pieces = scene.solids.map((solid) => pieceData(solid, indexOf, forms)).filter((piece) => piece !== undefined);
  const groupOf = new Map(frame.groups.flatMap(({ parts }, i) => parts.map((part) => [part, i] as const)));
  const bars = all.map((body): BarData => {
    const { bar, axes, cuts } = body;
    const plane = (end: "from" | "to"): readonly number[] => [
      ...mm(cuts[end].plane.point),
      ...cuts[end].plane.normal.map((c) => rounded(c, 6)),
    ];
    return {
      id: bar.ref.id,
      what: bar.profile.name,
      profile: profiles.indexOf(bar.profile),
      frame: [...mm(bar.from), ...[...axes.x, ...axes.y, ...axes.z].map((c) => rounded(c, 6))],
      cuts: [plane("from"), plane("to")],
      shares: checks.map((check) => {
        const share = check.shareOf(bar.ref.id);
        return share === undefined ? null : rounded(share, 4);
      }),
      group: groupOf.get(bar.ref.id) ?? -1,
      moved: shapes.movedOf(bar.ref.id),
    };
  });
  return {
    profiles: profiles.map(profileData),
    bars,
    forms: forms.list,
    pieces,
    checks: checks.map(({ rule, title }) => ({ rule, title })),
    groups: frame.groups.map(({ ref }) => ref.id),
    shapes: shapes.list,
    paths: pathsData(paths, all, frame.units),
    doors: doorsData(frame, scene, indexOf),
    arrows: symbols.arrows.map(({ from, to }) => [...mm(from, 1), ...mm(to, 1)]),
    moments: symbols.moments.map(({ from, to }) => [...mm(from, 1), ...mm(to, 1)]),
    supports: symbols.supports.map(({ at, hold }) => ({ at: mm(at, 1), hold })),
    boxes: symbols.masses.flatMap(({ edges }) => edges.flatMap(([a, b]) => [...mm(a, 1), ...mm(b, 1)])),
    pins,
    poses: posed.list,
    tools: posed.tools,
    guards: posed.guards,
    tips: posed.tips,
  };
}

/** A point as a pin has it. */
export const pinPoint = (at: Vec3): readonly number[] => mm(at, 1);
