import { prepareFrame } from "../mechanics/frame.ts";
import { solveFrame } from "../mechanics/statics/solve.ts";
import type { Door } from "../model/frame.ts";
import { si } from "../model/units/quantity.ts";
import { bodies } from "./bodies.ts";
import { combinations } from "./combinations.ts";
import { defineFact } from "./fact.ts";
import { type Foothold, footing } from "./footing.ts";
import type { Governed } from "./governing.ts";
import { whyNotHung } from "./hung-leaves.ts";
import { type Bound, bounds } from "./joint-stiffness.ts";
import { leavesOf, type Turn, turnedBars, turnedCouplings, turnedSprings, unlatched } from "./opened-model.ts";
import { response } from "./response.ts";
import { contactsOf, solverModel } from "./solver-model.ts";
import { structure } from "./structure.ts";
import { pinOf } from "./swinging-parts.ts";
import { turnedLoads } from "./turned-loads.ts";

/** The hardest push of the floor on a foot while doors stand open, and which do, in words. */
export interface OpenDoorPush {
  readonly push: Governed<"force">;
  readonly open: string;
}

/** Doors that stand open, each turned this far of its swing. */
interface Opened {
  readonly doors: readonly Door[];
  readonly share: number;
  readonly words: string;
}

const HALF = 0.5;
const WIDE = 1;
const SHARES = [
  [HALF, "half open"],
  [WIDE, "wide open"],
] as const;

/** Each door alone, and all together, half and wide open. */
function openings(doors: readonly Door[]): readonly Opened[] {
  const sets = [...doors.map((door) => [door]), ...(doors.length > 1 ? [doors] : [])];
  return sets.flatMap((set) =>
    SHARES.map(([share, how]) => ({
      doors: set,
      share,
      words: `${set.length > 1 ? "all doors" : (set[0]?.ref.id ?? "")} ${how}`,
    })),
  );
}

interface Worst {
  readonly force: number;
  readonly combination: string;
  readonly words: string;
}

/**
 * Largest push of every foot under service loads with doors open: each alone and all together, half and wide, with soft, typical and
 * stiff joints, what is on them turned with them. Doors whose hinge line is not upright, that stand on the floor or hang on another door stay
 * as drawn, and so does what hangs on them. A frame that tips over then has no push to tell: frame.tips tells that.
 */
export const openDoorPushes = defineFact<
  ReadonlyMap<Foothold, OpenDoorPush>,
  {
    response: typeof response;
    footing: typeof footing;
    structure: typeof structure;
    bodies: typeof bodies;
    combinations: typeof combinations;
  }
>({
  id: "open-door-pushes",
  needs: { response, footing, structure, bodies, combinations },
  compute({ response: found, footing: feet, structure: whole, bodies: all, combinations: combined }, frame) {
    const pushes = new Map<Foothold, Map<Bound, Worst>>();
    if (found.kind !== "solved" || frame.doors.length === 0) return new Map();
    const standing = new Set(feet.map(({ node }) => whole.nodes[node]?.bar ?? ""));
    const hanging = leavesOf(frame.doors);
    const carries = (door: Door): boolean =>
      frame.doors.some(({ hinges }) => hinges.some(({ bars }) => hanging.get(bars[1]) === door.ref.id));
    const doors = frame.doors.filter((door) => !carries(door) && !whyNotHung(door, whole, hanging, standing));
    const service = combined.all.filter((combination) => combination.kind === "service");
    const contacts = contactsOf(feet);
    for (const opened of openings(doors)) {
      const leaves = leavesOf(opened.doors);
      const known = unlatched(whole, leaves);
      const turns = new Map(
        opened.doors.flatMap((door) => {
          const pin = pinOf(door);
          return pin
            ? [[door.ref.id, { pin, angle: door.swing[0] + opened.share * (door.swing[1] - door.swing[0]) }]]
            : [];
        }),
      );
      const turnOf = (bar: string): Turn | undefined => turns.get(leaves.get(bar) ?? "");
      const cases = combined.cases.map((loads) => turnedLoads(loads, known, turnOf));
      for (const bound of bounds) {
        const model = solverModel(known, all, feet, frame.stock, bound, "free", found.braces(bound));
        const opening = {
          ...model,
          ...turnedBars(model, known, turnOf),
          springs: turnedSprings(model.springs ?? [], known, turnOf),
          couplings: turnedCouplings(model.couplings ?? [], known, turnOf),
        };
        const factors = service.map((combination) => combination.factors);
        const { states } = solveFrame(prepareFrame(opening), cases, factors);
        for (const [c, state] of states.entries()) {
          if (state.kind !== "solved") continue;
          for (const [i, foot] of feet.entries()) {
            const contact = contacts[i];
            if (contact === undefined) continue;
            const force = state.contacts[contact]?.push ?? 0;
            const worst = pushes.get(foot) ?? new Map<Bound, Worst>();
            pushes.set(foot, worst);
            if (force <= (worst.get(bound)?.force ?? -1)) continue;
            worst.set(bound, { force, combination: service[c]?.name ?? "", words: opened.words });
          }
        }
      }
    }
    return new Map([...pushes].map(([foot, worst]) => [foot, governed(worst)]));
  },
});

function governed(worst: ReadonlyMap<Bound, Worst>): OpenDoorPush {
  const [first, ...others] = [...worst].sort(([, a], [, b]) => b.force - a.force);
  if (!first) throw new Error("a foot that is pushed with no joints");
  const [bound, { force, combination, words }] = first;
  return {
    push: {
      measured: si(force, "force"),
      under: { combination, bound },
      otherBounds: Object.fromEntries(others.map(([other, { force: own }]) => [other, si(own, "force")])),
    },
    open: words,
  };
}
