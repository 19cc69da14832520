import { type Bounds3, boundsOf } from "../geometry/bounds.ts";
import { overlappingPairs } from "../geometry/sweep-and-prune.ts";
import { along, distance, type Vec3 } from "../geometry/vector.ts";
import { bodies } from "./bodies.ts";
import { buildOrder } from "./build-order.ts";
import { defineFact } from "./fact.ts";
import type { PlacedScrew } from "./placed.ts";
import { type Rod, rodGap } from "./rods.ts";
import { screwedParts } from "./screwed-parts.ts";
import { headTop, type Socket, socketOf } from "./sockets.ts";
import { type Way, waysFor } from "./tool-ways.ts";

/** A screw whose key, or head, comes near another screw's head. */
export interface HeadRoom {
  readonly screw: PlacedScrew;
  readonly other: PlacedScrew;
  /** Free length between the tool that passes best on the one and the head of the other, m; negative where they meet. */
  readonly keyToHead: number;
  /** Free length between the two heads, m. */
  readonly headToHead: number;
}

/** Stems and heads further apart than this never matter to each other, m. */
const NEAR = 0.005;

interface Place {
  readonly screw: PlacedScrew;
  /** A tie is tightened when its bars are laid together: what goes on later is in nobody's way. */
  readonly tied: boolean;
  /** What each way to hold a tool takes up on the axis while it is put in. */
  readonly stems: readonly (readonly Rod[])[];
  /** The head, where it stands out. */
  readonly head: Rod | undefined;
}

/** Stems of the tools that fit a socket, tip at the mouth. */
function stemsOf({ mouth, out, depth }: Socket, ways: readonly Way[]): Place["stems"] {
  return ways.map(({ stem }) =>
    stem.map(({ radius, from, to }) => ({
      line: { from: along(mouth, out, Math.max(0, from - depth)), to: along(mouth, out, to) },
      radius,
    })),
  );
}

/** The box round some rods. */
function around(rods: readonly Rod[]): Bounds3 {
  return boundsOf(
    rods.flatMap(({ line, radius: r }) =>
      [line.from, line.to].flatMap((p): Vec3[] => [
        [p[0] - r, p[1] - r, p[2] - r],
        [p[0] + r, p[1] + r, p[2] + r],
      ]),
    ),
  );
}

const lengthOf = (stem: readonly Rod[]): number => Math.max(...stem.map(({ line }) => distance(line.from, line.to)));

/** The shortest of the stems: where even that one is not near a head, no tool needs to be. */
const shortest = (stems: Place["stems"]): readonly Rod[] =>
  stems.reduce<readonly Rod[]>((a, b) => (a.length === 0 || lengthOf(b) < lengthOf(a) ? b : a), []);

/** The most that the tools of the kit leave between themselves and a head: that of the tool that passes best. */
const passing = (stems: Place["stems"], head: Rod): number =>
  Math.max(...stems.map((stem) => Math.min(...stem.map((rod) => rodGap(rod, head)))));

/**
 * How much room each screw's tool has past the heads of its neighbours: every tool of the kit that fits is put straight in, and the one
 * that passes best counts. Bars, brackets and the turn of the handle are not looked at here.
 */
export const headRoom = defineFact<
  readonly HeadRoom[],
  { bodies: typeof bodies; parts: typeof screwedParts; order: typeof buildOrder }
>({
  id: "head-room",
  needs: { bodies, parts: screwedParts, order: buildOrder },
  compute({ bodies: all, parts, order }, frame) {
    const places: Place[] = [];
    for (const connector of parts.all) {
      for (const screw of connector.screws) {
        const socket = socketOf(connector, screw, all);
        if (!socket) continue;
        const ways = waysFor(frame.stock.tools, socket, connector.choice?.torque ?? 0);
        // Heads inside a bar's slot, or sunk flush, are in nobody's way.
        const out = socket.hole === Infinity && screw.screw.head !== "countersunk";
        const head = { line: { from: screw.seat, to: headTop(screw) }, radius: screw.screw.headDiameter / 2 };
        places.push({
          screw,
          tied: connector.part?.kind === "side-tie",
          stems: stemsOf(socket, ways),
          head: out ? head : undefined,
        });
      }
    }
    const bounds = places.map(({ screw, stems, head }) => {
      const rods = [...shortest(stems), ...(head ? [head] : [])];
      return rods.length > 0 ? around(rods) : boundsOf([screw.seat]);
    });
    const isLater = ({ connector }: PlacedScrew, than: PlacedScrew): boolean =>
      (order.placedAt(connector.id) ?? 0) > (order.tightenedAt(than.ref.id) ?? Infinity);
    const list: HeadRoom[] = [];
    for (const [i, j] of overlappingPairs(bounds, NEAR)) {
      for (const [p, q] of [
        [i, j],
        [j, i],
      ] as const) {
        const [own, other] = [places[p], places[q]];
        if (!own || !other?.head || (own.tied && isLater(other.screw, own.screw))) continue;
        const keyToHead = own.stems.length > 0 ? passing(own.stems, other.head) : Infinity;
        const headToHead = own.head ? rodGap(own.head, other.head) : Infinity;
        if (keyToHead < NEAR || headToHead < NEAR)
          list.push({ screw: own.screw, other: other.screw, keyToHead, headToHead });
      }
    }
    return list;
  },
});
