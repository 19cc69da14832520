import { type Frame as Prepared, prepareFrame } from "../mechanics/frame.ts";
import { type NaturalMode, naturalModes } from "../mechanics/stability/frequency.ts";
import type { Mass } from "../model/frame.ts";
import { bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { footing } from "./footing.ts";
import { type Bound, bounds } from "./joint-stiffness.ts";
import { massedModel } from "./massed-model.ts";
import { panelShares } from "./panel-shares.ts";
import { response } from "./response.ts";
import { solverModel } from "./solver-model.ts";
import { structure } from "./structure.ts";

/** The natural frequencies next to what one piece of equipment shakes with, Hz. */
export interface Neighbours {
  /** The highest not above it; undefined where there is none. */
  readonly below: number | undefined;
  /**
   * The lowest above it; where none was found, the highest frequency looked at, if that lies above: up to there is none.
   * Undefined where all that were looked at lie below.
   */
  readonly above: number | undefined;
}

export interface Shaking {
  readonly mass: Mass;
  /** It rests on a bar that is part of the structure, and the frame was solved. */
  readonly carried: boolean;
  readonly next: ReadonlyMap<Bound, Neighbours>;
}

/** Where the shaking mass moves less than this share of what moves most, it does not stir the mode (common practice). */
const STIRS = 0.05;
/** Modes looked at first; twice as many until one lies above the shaking, up to the last. */
const FIRST_MODES = 12;
const MOST_MODES = 48;

function neighbours(frame: Prepared, carriers: readonly number[], shaking: number): Neighbours {
  const stirred = ({ displacements: u }: NaturalMode): boolean =>
    carriers.some((n) => Math.hypot(u[6 * n] ?? 0, u[6 * n + 1] ?? 0, u[6 * n + 2] ?? 0) >= STIRS);
  let below: number | undefined;
  let highest: number | undefined;
  for (let count = FIRST_MODES; count <= MOST_MODES; count *= 2) {
    const found = naturalModes(frame, count);
    // The same frame has been solved under load: with all contacts closed it is no mechanism.
    if (found.kind === "mechanism") throw new Error("a frame in equilibrium was found free to move");
    below = undefined;
    for (const mode of found.modes) {
      highest = mode.frequency;
      if (!stirred(mode)) continue;
      if (mode.frequency > shaking) return { below, above: mode.frequency };
      below = mode.frequency;
    }
    if (found.modes.length < count) break;
  }
  return { below, above: highest !== undefined && highest > shaking ? highest : undefined };
}

/**
 * Natural frequencies near what declared equipment shakes with, for soft, typical and stiff joints: small motions about the
 * unloaded shape, feet held by friction, all equipment in its place (kernel: `naturalModes`). Modes in which the shaking
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
      const bare = solverModel(known, all, feet, frame.stock, bound, "held");
      const { model, carrying } = massedModel(frame, known, all, shares, bare);
      like = prepareFrame(model, like);
      return { bound, carrying, prepared: like };
    });
    return shaking.map((mass): Shaking => {
      const next = new Map<Bound, Neighbours>();
      let carried = false;
      for (const { bound, carrying, prepared } of models) {
        const nodes = carrying.get(mass) ?? [];
        if (nodes.length === 0 || mass.shakes === undefined) continue;
        carried = true;
        next.set(bound, neighbours(prepared, nodes, mass.shakes));
      }
      return { mass, carried, next };
    });
  },
});
