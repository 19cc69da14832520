import { along, dot, length, normalise, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Ref } from "../model/ref.ts";
import { type Body, bodies, cutPoint, cutStation } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { fastenedSheets } from "./fastened-sheets.ts";
import { islands } from "./islands.ts";
import type { PlacedConnector } from "./placed.ts";
import { placements } from "./placements.ts";
import { type Standing, standings } from "./standings.ts";
import { pushedStation } from "./working-height.ts";

/** Where bars are fastened to each other, as the mechanics see it: a point, the two bars, and what holds them. */
export interface Link {
  readonly joint: Ref<"joint">;
  /** The bar that ends there, and the bar that runs past; of plates, ties, pivots and hinges the bars in the order they are named. */
  readonly bar: string;
  readonly onto: string;
  readonly at: Vec3;
  readonly stations: readonly [number, number];
  /** Whether `bar` was joined by its end. */
  readonly byEnd: boolean;
  readonly connectors: readonly PlacedConnector[];
  /** Axis about which it is meant to turn: a hinge or an unlocked pivot. */
  readonly freeAbout?: Vec3;
  /** Axis of the one screw that presses the two bars face on face: a side tie, a locked pivot. */
  readonly tiedAlong?: Vec3;
}

export interface Node {
  readonly bar: string;
  /** Along the bar from its drawn from point, m. */
  readonly station: number;
  readonly at: Vec3;
}

/** A piece of a bar between two nodes. */
export interface Piece {
  readonly bar: string;
  readonly from: number;
  readonly to: number;
  readonly stations: readonly [number, number];
}

export interface Structure {
  readonly nodes: readonly Node[];
  readonly pieces: readonly Piece[];
  readonly links: readonly Link[];
  readonly stands: readonly { readonly standing: Standing; readonly node: number }[];
  /** Node of a bar at a station; exact for the stations of links and ends. */
  nodeAt(bar: string, station: number): number;
  /** Pieces of a bar, in order. */
  piecesOf(bar: string): readonly number[];
  /** Piece and distance along it for a station of a bar; stations beyond the ends count as the end. */
  locate(bar: string, station: number): { readonly piece: number; readonly along: number } | undefined;
}

/** Stations nearer to each other than this are one node, m. */
const SAME = 1e-6;

function project(body: Body, point: Vec3): number {
  const station = dot(subtract(point, body.bar.from), body.axes.x);
  const [a, b] = [cutStation(body, "from"), cutStation(body, "to")];
  return Math.min(Math.max(station, a), b);
}

/** From the axis of a bar to the outside of its section in a direction across it, m. */
const reachAlong = ({ axes, half }: Body, direction: Vec3): number =>
  Math.abs(dot(axes.y, direction)) * half.y + Math.abs(dot(axes.z, direction)) * half.z;

/** Bars as lines, cut where something attaches and where people push, and what joins them. */
export const structure = defineFact<
  Structure,
  {
    bodies: typeof bodies;
    placements: typeof placements;
    standings: typeof standings;
    islands: typeof islands;
    fastened: typeof fastenedSheets;
  }
>({
  id: "structure",
  needs: { bodies, placements, standings, islands, fastened: fastenedSheets },
  compute({ bodies: all, placements: placed, standings: standing, islands: sets, fastened }, frame) {
    const links: Link[] = [];
    const byJoint = new Map<string, PlacedConnector[]>();
    for (const connector of placed.connectors) {
      const known = byJoint.get(connector.joint.id);
      if (known) known.push(connector);
      else byJoint.set(connector.joint.id, [connector]);
    }
    const link = (
      joint: Ref<"joint">,
      bar: string,
      onto: string,
      at: Vec3,
      connectors: readonly PlacedConnector[],
      special: { readonly freeAbout?: Vec3; readonly tiedAlong?: Vec3; readonly byEnd?: boolean } = {},
    ): void => {
      const [a, b] = [all.get(bar), all.get(onto)];
      if (!a?.prism || !b?.prism || bar === onto) return;
      links.push({
        joint,
        bar,
        onto,
        at,
        stations: [project(a, at), project(b, at)],
        byEnd: false,
        connectors,
        ...special,
      });
    };
    for (const { joint, contact } of placed.met) {
      const body = all.get(joint.bar);
      const connectors = byJoint.get(joint.ref.id) ?? [];
      // A joint whose connectors all found no place holds nothing.
      if (body && connectors.length > 0)
        link(joint.ref, joint.bar, contact.b.bar, cutPoint(body, joint.end), connectors, { byEnd: true });
    }
    for (const fastening of frame.fastenings) {
      const connectors = byJoint.get(fastening.ref.id) ?? [];
      const [first, ...others] = fastening.holds;
      if (first === undefined || connectors.length === 0) continue;
      for (const other of others) link(fastening.ref, first, other, fastening.at, connectors);
    }
    for (const tie of frame.ties) {
      const body = all.get(tie.bars[0]);
      for (const at of body ? tie.at : []) {
        const point: Vec3 = [0, 1, 2].map(
          (i) => (body?.bar.from[i as 0] ?? 0) + (body?.axes.x[i as 0] ?? 0) * at,
        ) as unknown as Vec3;
        const other = all.get(tie.bars[1]);
        const towards = other ? subtract(along(other.bar.from, other.axes.x, project(other, point)), point) : undefined;
        if (!body || !other || !towards || length(towards) <= SAME) {
          link(tie.ref, tie.bars[0], tie.bars[1], point, []);
          continue;
        }
        // It holds where the two faces meet, whichever bar is named first.
        const tiedAlong = normalise(towards);
        const [own, others] = [reachAlong(body, tiedAlong), reachAlong(other, tiedAlong)];
        link(tie.ref, tie.bars[0], tie.bars[1], along(point, towards, own / (own + others)), [], { tiedAlong });
      }
    }
    for (const pivot of frame.pivots)
      link(
        pivot.ref,
        pivot.bars[0],
        pivot.bars[1],
        pivot.at,
        [],
        pivot.locked ? { tiedAlong: normalise(pivot.axis) } : { freeAbout: pivot.axis },
      );
    for (const door of frame.doors) {
      const joint: Ref<"joint"> = { kind: "joint", id: door.ref.id };
      for (const hinge of door.hinges)
        link(joint, hinge.bars[0], hinge.bars[1], hinge.at, [], { freeAbout: door.axis });
      if (door.latch) link(joint, door.latch.bars[0], door.latch.bars[1], door.latch.at, []);
    }

    const wanted = new Map<string, number[]>();
    // Bars that hang on nothing are a finding of their own; they must not make the rest of the frame loose.
    const [main, ...others] = sets;
    const upright = new Set(standing.all.map((s) => s.body.bar.ref.id));
    const part = new Set([...(main ?? []), ...others.filter((set) => set.some((bar) => upright.has(bar))).flat()]);
    for (const [id, body] of all)
      if (body.prism && part.has(id)) wanted.set(id, [cutStation(body, "from"), cutStation(body, "to")]);
    for (let i = links.length - 1; i >= 0; i -= 1)
      if (!wanted.has(links[i]?.bar ?? "") || !wanted.has(links[i]?.onto ?? "")) links.splice(i, 1);
    for (const { bar, onto, stations } of links) {
      wanted.get(bar)?.push(stations[0]);
      wanted.get(onto)?.push(stations[1]);
    }
    for (const [id, list] of wanted) {
      const body = all.get(id);
      const station = body && pushedStation(body, list, frame.floor.z);
      if (station !== undefined) list.push(station);
    }
    for (const { rows } of fastened) for (const { bar, stations } of rows) wanted.get(bar)?.push(...stations);
    const nodes: Node[] = [];
    const pieces: Piece[] = [];
    const own = new Map<string, { stations: number[]; nodes: number[]; pieces: number[] }>();
    for (const [id, list] of wanted) {
      const body = all.get(id);
      if (!body) continue;
      const stations = list.sort((a, b) => a - b).filter((s, i) => i === 0 || s - (list[i - 1] ?? 0) > SAME);
      const entry = { stations, nodes: [] as number[], pieces: [] as number[] };
      for (const [i, station] of stations.entries()) {
        const { from } = body.bar;
        const { x } = body.axes;
        entry.nodes.push(nodes.length);
        nodes.push({
          bar: id,
          station,
          at: [from[0] + x[0] * station, from[1] + x[1] * station, from[2] + x[2] * station],
        });
        if (i === 0) continue;
        entry.pieces.push(pieces.length);
        pieces.push({
          bar: id,
          from: nodes.length - 2,
          to: nodes.length - 1,
          stations: [stations[i - 1] ?? 0, station],
        });
      }
      own.set(id, entry);
    }
    const nodeAt = (bar: string, station: number): number => {
      const entry = own.get(bar);
      if (!entry) throw new Error(`bar ${bar} has no length left`);
      let best = 0;
      for (const [i, s] of entry.stations.entries())
        if (Math.abs(s - station) < Math.abs((entry.stations[best] ?? 0) - station)) best = i;
      return entry.nodes[best] ?? 0;
    };
    return {
      nodes,
      pieces,
      links,
      stands: standing.all
        .filter((s) => own.has(s.body.bar.ref.id))
        .map((s) => ({ standing: s, node: nodeAt(s.body.bar.ref.id, cutStation(s.body, s.end)) })),
      nodeAt,
      piecesOf: (bar) => own.get(bar)?.pieces ?? [],
      locate: (bar, station) => {
        const entry = own.get(bar);
        const [first] = entry?.pieces ?? [];
        if (!entry || first === undefined) return undefined;
        for (const piece of entry.pieces) {
          const { stations } = pieces[piece] ?? { stations: [0, 0] };
          if (station <= stations[1] || piece === entry.pieces[entry.pieces.length - 1]) {
            const along = Math.min(Math.max(station - stations[0], 0), stations[1] - stations[0]);
            return { piece, along };
          }
        }
        return undefined;
      },
    };
  },
});
