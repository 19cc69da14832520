import { type Frame as Prepared, prepareFrame } from "../mechanics/frame.ts";
import { type NaturalMode, naturalModesNear } from "../mechanics/stability/frequency.ts";
import type { Mass } from "../model/frame.ts";
import { bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { footing } from "./footing.ts";
import { type Bound, bounds } from "./joint-stiffness.ts";
import { type MassedModel, massedModel } from "./massed-model.ts";
import type { ModePoints } from "./mode-line.ts";
import { panelShares } from "./panel-shares.ts";
import { response } from "./response.ts";
import { solverModel } from "./solver-model.ts";
import { structure } from "./structure.ts";

/** The natural frequencies next to what one piece of equipment shakes with, Hz. */
export interface Neighbours {
  /** The highest not above it; where none stirs, the lowest looked at: down to there is none. Undefined where there is none at all. */
  readonly below: number | undefined;
  /** The lowest above it; where none stirs, the highest looked at: up to there is none. Undefined where there is none at all. */
  readonly above: number | undefined;
  /** How pieces of the structure move when it swings so; absent where none is stirred on that side. */
  readonly ways: { readonly below?: WayOfSwinging; readonly above?: WayOfSwinging };
}

export type WayOfSwinging = (piece: number) => ModePoints;

export interface Shaking {
  readonly mass: Mass;
  /** It rests on a bar that is part of the structure, and the frame was solved. */
  readonly carried: boolean;
  readonly next: ReadonlyMap<Bound, Neighbours>;
}

/** Where the shaking mass moves less than this share of what moves most, it does not stir the mode (common practice). */
const STIRS = 0.05;
/** Modes looked at first, those nearest to the shaking; twice as many until one lies on each side of it, up to the last. */
const FIRST_MODES = 8;
const MOST_MODES = 64;

function neighbours(frame: Prepared, { carrying, nodesOn }: MassedModel, mass: Mass, shaking: number): Neighbours {
  const carriers = carrying.get(mass) ?? [];
  const way =
    ({ displacements: u }: NaturalMode): WayOfSwinging =>
    (piece) => {
      const nodes = nodesOn(piece);
      const moved = Float64Array.from(nodes.flatMap(({ node }) => [...u.subarray(6 * node, 6 * node + 6)]));
      return { shares: nodes.map(({ share }) => share), moved };
    };
  const stirred = ({ displacements: u }: NaturalMode): boolean =>
    carriers.some((n) => Math.hypot(u[6 * n] ?? 0, u[6 * n + 1] ?? 0, u[6 * n + 2] ?? 0) >= STIRS);
  for (let count = FIRST_MODES; ; count *= 2) {
    const found = naturalModesNear(frame, shaking, count);
    // The same frame has been solved under load: with all contacts closed it is no mechanism.
    if (found.kind === "mechanism") throw new Error("a frame in equilibrium was found free to move");
    const { modes, skipped } = found;
    const [low, high] = [modes.filter((m) => m.frequency <= shaking), modes.filter((m) => m.frequency > shaking)];
    const [below, above] = [low.filter(stirred).at(-1), high.find(stirred)];
    const known = (below !== undefined || skipped === 0) && above !== undefined;
    if (!known && modes.length === count && count < MOST_MODES) continue;
    const lowest = skipped > 0 ? low[0] : undefined;
    return {
      below: (below ?? lowest)?.frequency,
      above: (above ?? high.at(-1))?.frequency,
      ways: { ...(below ? { below: way(below) } : {}), ...(above ? { above: way(above) } : {}) },
    };
  }
}

/**
 * Natural frequencies near what declared equipment shakes with, for soft, typical and stiff joints: small motions about the
 * unloaded shape, feet held by friction, all equipment in its place (kernel: `naturalModesNear`). Modes in which the shaking
 * equipment hardly moves are left out. Empty where nothing shakes; without frequencies where the frame was not solved.
 */
export const frequencies = defineFact<
  readonly Shaking[],
  {
    response: typeof response;
    structure: typeof structure;
    bodies: typeof bodies;
    footing: typeof footing;
    shares: typeof panelShares;
  }
>({
  id: "frequencies",
  needs: { response, structure, bodies, footing, shares: panelShares },
  compute({ response: found, structure: known, bodies: all, footing: feet, shares }, frame) {
    const shaking = frame.masses.filter((mass) => mass.shakes !== undefined);
    if (shaking.length === 0 || found.kind !== "solved")
      return shaking.map((mass) => ({ mass, carried: false, next: new Map() }));
    let like: Prepared | undefined;
    const models = bounds.map((bound) => {
      const bare = solverModel(known, all, feet, frame.stock, bound, "held", found.braces(bound));
      const massed = massedModel(frame, known, all, shares, bare);
      like = prepareFrame(massed.model, like);
      return { bound, massed, prepared: like };
    });
    return shaking.map((mass): Shaking => {
      const next = new Map<Bound, Neighbours>();
      let carried = false;
      for (const { bound, massed, prepared } of models) {
        if ((massed.carrying.get(mass) ?? []).length === 0 || mass.shakes === undefined) continue;
        carried = true;
        next.set(bound, neighbours(prepared, massed, mass, mass.shakes));
      }
      return { mass, carried, next };
    });
  },
});
