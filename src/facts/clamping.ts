import { type ClampScatter, medianPreload, scatterWithin, slipFractile } from "../mechanics/fasteners/slip-fractile.ts";
import { frictionRadius } from "../mechanics/fasteners/slip-group.ts";
import type { Frame } from "../model/frame.ts";
import { LIPS_GIVE } from "../model/stock/lip-rating.ts";
import type { Profile } from "../model/stock/stock.ts";
import { defineFact } from "./fact.ts";
import { sitsInSlot } from "./landing.ts";
import type { PlacedConnector, PlacedScrew } from "./placed.ts";
import { placements } from "./placements.ts";

/** Torque coefficient of a zinc-plated screw as delivered (Shigley, Table 8-15), and the range nine in ten lie in (common practice). */
export const TORQUE_COEFFICIENT = 0.2;
/** Friction is a criterion; from screw to screw it scatters as 0.10 to 0.20 does about 0.15 (rule of thumb for anodised faces). */
export const SCATTER: ClampScatter = {
  friction: scatterWithin(1, 0.1, 0.2),
  coefficient: scatterWithin(TORQUE_COEFFICIENT, 0.15, 0.25),
  torque: scatterWithin(1, 0.9, 1.1),
  // Anodised faces and soft lips settle in the days after assembly (common practice).
  stays: 0.85,
};

/** A screw that presses a connector, or a cut end, against a bar. */
export interface Clamp {
  readonly placed: PlacedScrew;
  readonly connector: PlacedConnector;
  /** The bar whose face it presses on. */
  readonly bar: string;
  /** Tension that stays, N: median. */
  readonly preload: number;
  /** Tension at which the lips of that bar give, N. */
  readonly lipsGive: number;
  /** Slip load that 95 of 100 exceed, for a friction of 1, N. */
  readonly unitSlip: number;
  /** This screw's share of the slip load that a test of the connector gives, N. */
  readonly testedSlip?: number;
  /** Lever of the friction between the pressed faces when it turns about itself, m. */
  readonly radius: number;
}

export interface Clamping {
  readonly all: readonly Clamp[];
  of(connector: PlacedConnector): readonly Clamp[];
}

function clampedBar({ into }: PlacedScrew, connector: PlacedConnector): string | undefined {
  if (into.kind === "bore") return connector.holds.find(({ bar }) => bar !== into.bar)?.bar;
  return sitsInSlot(into.landing) && into.nut ? into.landing.bar : undefined;
}

/**
 * The pressure under a head spreads at 45° through the leg (common practice); it lies on the lips, beside the opening of the
 * slot.
 */
function turningRadius({ screw, grip, into }: PlacedScrew): number {
  const outer = screw.headDiameter + 2 * grip;
  const opening = into.kind === "nut" ? (into.landing.slot?.opening ?? 0) : 0;
  return frictionRadius(outer, Math.min(Math.max(opening, screw.diameter), 0.9 * outer));
}

function clampOf(
  placed: PlacedScrew,
  connector: PlacedConnector,
  bar: string,
  profile: Profile,
  slips: Map<string, number>,
): Clamp {
  const torque = connector.choice?.torque ?? 0;
  const cap = profile.lipRating * LIPS_GIVE;
  const { diameter } = placed.screw;
  const screw = { torque, diameter, cap };
  const key = `${torque} ${diameter} ${cap}`;
  let unitSlip = slips.get(key);
  if (unitSlip === undefined) {
    unitSlip = slipFractile(screw, SCATTER);
    slips.set(key, unitSlip);
  }
  return {
    placed,
    connector,
    bar,
    preload: medianPreload(screw, SCATTER),
    lipsGive: cap,
    unitSlip,
    radius: turningRadius(placed),
  };
}

/** How hard every screw presses, and when what it presses slips: docs/method/joints. */
export const clamping = defineFact<Clamping, { placements: typeof placements }>({
  id: "clamping",
  needs: { placements },
  compute({ placements: { connectors } }, frame: Frame) {
    const profiles = new Map(frame.bars.map((bar) => [bar.ref.id, bar.profile]));
    const slips = new Map<string, number>();
    const all: Clamp[] = [];
    const own = new Map<PlacedConnector, Clamp[]>();
    for (const connector of connectors) {
      const list: Clamp[] = [];
      for (const placed of connector.screws) {
        const bar = clampedBar(placed, connector);
        const profile = bar === undefined ? undefined : profiles.get(bar);
        if (bar !== undefined && profile) list.push(clampOf(placed, connector, bar, profile, slips));
      }
      const tested = connector.part.tested?.slip;
      const shared = list.map((clamp): Clamp => {
        const beside = list.filter(({ bar }) => bar === clamp.bar).length;
        return tested === undefined ? clamp : { ...clamp, testedSlip: tested / beside };
      });
      own.set(connector, shared);
      for (const clamp of shared) all.push(clamp);
    }
    return { all, of: (connector) => own.get(connector) ?? [] };
  },
});
