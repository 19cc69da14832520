import { bentLine } from "../../facts/bent-line.ts";
import { type Body, bodies } from "../../facts/bodies.ts";
import { factOf } from "../../facts/fact.ts";
import { response, type View } from "../../facts/response.ts";
import { triangulate } from "../../geometry/triangulate.ts";
import { dot, length, perpendicularPair, type Vec2, type Vec3 } from "../../geometry/vector.ts";
import type { Frame } from "../../model/frame.ts";
import type { Profile } from "../../model/stock/stock.ts";
import type { Scene } from "../scene.ts";
import type { Solid, Surface } from "../solids/solid.ts";
import type { Symbols } from "../symbols.ts";
import type { BarData, ModelData, PieceData, PinData, ProfileData } from "./model-data.ts";

/** Stations along a bar at which its displacement is given, and bent shapes at most. */
const STATIONS = 9;
const BENDS = 8;
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

/** A face with the triangles it needs where it is not convex. */
function faceData({ rings: [ring = []], normal }: Surface, convex: boolean): PieceData["faces"][number] {
  const at = ring.flatMap((point) => mm(point, 1));
  if (convex) return { at };
  const [u, v] = perpendicularPair(normal);
  return { at, triangles: triangulate({ outer: ring.map((p): Vec2 => [dot(p, u), dot(p, v)]), holes: [] }) };
}

function pieceData(solid: Solid, indexOf: ReadonlyMap<string, number>): PieceData | undefined {
  const { kind, of, surfaces } = solid;
  if (kind === "bar") return undefined;
  const bar = solid.with.map((id) => indexOf.get(id)).find((index) => index !== undefined) ?? -1;
  const skins = surfaces.filter((surface) => surface.kind === "skin");
  return {
    kind,
    id: of.id,
    bar,
    faces: skins.map((one) => faceData(one, (one.rings[0]?.length ?? 0) <= 4 || kind !== "connector")),
  };
}

/** The combinations whose bent shape says most: under loads as they are, joints typical, by how far they move. */
function bendsOf(
  frame: Frame,
  all: readonly Body[],
): readonly { view: View; lines: ReadonlyMap<string, readonly Vec3[]>; most: number }[] {
  const found = factOf(response, frame);
  if (found.kind !== "solved") return [];
  const seen = new Set<string>();
  const bends = [];
  for (const view of found.views) {
    if (view.combination.kind === "strength" || view.bound !== "typical") continue;
    if (seen.has(view.combination.name)) continue;
    seen.add(view.combination.name);
    const lines = new Map<string, readonly Vec3[]>();
    let most = 0;
    for (const body of all) {
      const line = bentLine(view, body, STATIONS);
      if (!line) continue;
      lines.set(body.bar.ref.id, line);
      for (const moved of line) most = Math.max(most, length(moved));
    }
    if (most > 0) bends.push({ view, lines, most });
  }
  return bends.sort((a, b) => b.most - a.most).slice(0, BENDS);
}

export interface ModelWish {
  readonly scene: Scene;
  readonly symbols: Symbols;
  readonly pins: readonly PinData[];
  /** Share of each check's limit by bar. */
  readonly checks: readonly {
    readonly rule: string;
    readonly title: string;
    shareOf(bar: string): number | undefined;
  }[];
}

/** A frame as numbers for the viewer. */
export function modelOf(frame: Frame, { scene, symbols, pins, checks }: ModelWish): ModelData {
  const all = [...factOf(bodies, frame).values()].filter((body) => body.prism !== undefined);
  const indexOf = new Map(all.map((body, i) => [body.bar.ref.id, i]));
  const profiles = [...new Set(all.map((body) => body.bar.profile))];
  const bends = bendsOf(frame, all);
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
      bent: bends.map(({ lines }) => (lines.get(bar.ref.id) ?? []).flatMap((moved) => mm(moved, 3))),
    };
  });
  return {
    profiles: profiles.map(profileData),
    bars,
    pieces: scene.solids.map((solid) => pieceData(solid, indexOf)).filter((piece) => piece !== undefined),
    checks: checks.map(({ rule, title }) => ({ rule, title })),
    groups: frame.groups.map(({ ref }) => ref.id),
    bends: bends.map(({ view, most }) => ({ name: view.combination.name, most: rounded(most * TO_MM, 3) })),
    arrows: symbols.arrows.map(({ from, to }) => [...mm(from, 1), ...mm(to, 1)]),
    boxes: symbols.masses.flatMap(({ edges }) => edges.flatMap(([a, b]) => [...mm(a, 1), ...mm(b, 1)])),
    pins,
  };
}

/** A point as a pin has it. */
export const pinPoint = (at: Vec3): readonly number[] => mm(at, 1);
