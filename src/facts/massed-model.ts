import { along } from "../geometry/vector.ts";
import type { FrameModel, Member, NodeMass } from "../mechanics/model.ts";
import type { Frame, Mass } from "../model/frame.ts";
import type { Body } from "./bodies.ts";
import { carriers } from "./carriers.ts";
import type { PanelShare } from "./panel-shares.ts";
import { spreadForce } from "./spread-force.ts";
import type { Structure } from "./structure.ts";

/** The frame as the solver takes it, with everything on it that has mass. */
export interface MassedModel {
  readonly model: FrameModel;
  /** Nodes that carry a piece of equipment; none where it rests on nothing. */
  readonly carrying: ReadonlyMap<Mass, readonly number[]>;
  /** Nodes of a piece of the structure with the shares of its length they stand at, its ends first and last. */
  nodesOn(piece: number): readonly { readonly share: number; readonly node: number }[];
}

/** A carrier nearer than this to a node is that node, m: shorter pieces would be stiffer than they need be by many orders. */
const NEAR = 0.005;

/** Shares of a whole of 1 in proportion to the parts that are positive; alike where none is. */
function sharesOf(parts: readonly number[]): readonly number[] {
  const kept = parts.map((part) => Math.max(part, 0));
  const sum = kept.reduce((a, b) => a + b, 0);
  return kept.map((part) => (sum > 0 ? part / sum : 1 / kept.length));
}

/** Mass per length, kg/m, that panels add to each piece. */
function panelLoading(structure: Structure, shares: ReadonlyMap<string, PanelShare>): ReadonlyMap<number, number> {
  const added = new Map<number, number>();
  for (const { panel, area, strips } of shares.values()) {
    const mass = panel.sheet.density * panel.sheet.thickness * area;
    const borne = new Map<number, number>();
    for (const strip of strips)
      for (const i of structure.piecesOf(strip.bar)) {
        const [a, b] = structure.pieces[i]?.stations ?? [0, 0];
        const overlap = Math.min(strip.to, b) - Math.max(strip.from, a);
        if (overlap > 0) borne.set(i, (borne.get(i) ?? 0) + strip.areaPerLength * overlap);
      }
    const pieces = [...borne.keys()];
    for (const [k, share] of sharesOf([...borne.values()]).entries()) {
      const i = pieces[k] ?? 0;
      const [a, b] = structure.pieces[i]?.stations ?? [0, 1];
      added.set(i, (added.get(i) ?? 0) + (mass * share) / (b - a));
    }
  }
  return added;
}

/**
 * Puts masses on a model of the structure, in kg; what each part weighs in all is kept. Bars have their own. A panel is spread
 * over the pieces of the bars that carry it. Equipment rests as points on the bars where its weight does, in proportion to
 * what each bears; pieces are cut there, new nodes follow those of the structure. A point that the weight would lift carries
 * nothing. Connectors sit at the nodes of their joints, feet at theirs. Left out: the height of equipment over its bars and
 * the inertia of its own turning.
 */
export function massedModel(
  frame: Frame,
  structure: Structure,
  bodies: ReadonlyMap<string, Body>,
  shares: ReadonlyMap<string, PanelShare>,
  model: FrameModel,
): MassedModel {
  const nodes = [...model.nodes];
  const cuts = new Map<number, { readonly along: number; readonly node: number }[]>();
  const nodeOn = (index: number, at: number): number | undefined => {
    const piece = structure.pieces[index];
    const body = piece && bodies.get(piece.bar);
    if (!piece || !body) return undefined;
    if (at < NEAR) return piece.from;
    if (piece.stations[1] - piece.stations[0] - at < NEAR) return piece.to;
    const known = cuts.get(index) ?? [];
    const same = known.find((cut) => Math.abs(cut.along - at) < NEAR);
    if (same) return same.node;
    nodes.push(along(body.bar.from, body.axes.x, piece.stations[0] + at));
    cuts.set(index, [...known, { along: at, node: nodes.length - 1 }]);
    return nodes.length - 1;
  };

  const masses: NodeMass[] = [];
  const carrying = new Map<Mass, readonly number[]>();
  for (const mass of frame.masses) {
    const places = carriers(mass, bodies, shares).flatMap((point) => {
      const place = structure.locate(point.bar, (point.from + point.to) / 2);
      const node = place && nodeOn(place.piece, place.along);
      return node === undefined ? [] : [{ node, at: point.at, share: point.share }];
    });
    const borne = spreadForce(
      [0, 0, mass.mass],
      mass.centre,
      places.map(({ at }) => at),
      places.map(({ share }) => share),
    );
    for (const [i, share] of sharesOf(borne.map((force) => force[2])).entries())
      masses.push({ node: places[i]?.node ?? 0, mass: share * mass.mass });
    carrying.set(
      mass,
      places.map(({ node }) => node),
    );
  }
  for (const link of structure.links) {
    const mass = link.connectors.reduce((sum, connector) => sum + connector.part.mass, 0);
    if (mass > 0) masses.push({ node: structure.nodeAt(link.onto, link.stations[1]), mass });
  }
  for (const { standing, node } of structure.stands) masses.push({ node, mass: standing.stand.part.mass });

  const added = panelLoading(structure, shares);
  const inner = (index: number) => [...(cuts.get(index) ?? [])].sort((a, b) => a.along - b.along);
  const members = model.members.flatMap((member, index): Member[] => {
    const whole = { ...member, massPerLength: member.massPerLength + (added.get(index) ?? 0) };
    const ends = [...inner(index).map(({ node }) => node), member.to];
    return ends.map((to, k) => ({ ...whole, from: ends[k - 1] ?? member.from, to }));
  });
  return {
    model: { ...model, nodes, members, masses },
    carrying,
    nodesOn(index) {
      const piece = structure.pieces[index];
      if (!piece) return [];
      const long = piece.stations[1] - piece.stations[0];
      const between = inner(index).map(({ along: at, node }) => ({ share: at / long, node }));
      return [{ share: 0, node: piece.from }, ...between, { share: 1, node: piece.to }];
    },
  };
}
