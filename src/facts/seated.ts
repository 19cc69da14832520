import { along, dot, scale } from "../geometry/vector.ts";
import { type Frame as Prepared, prepareFrame } from "../mechanics/frame.ts";
import type { Contact, FrameModel, Six, Spring } from "../mechanics/model.ts";
import { up } from "./axes.ts";
import { bodies } from "./bodies.ts";
import { type Combined, combinations, resultantOf } from "./combinations.ts";
import { defineFact } from "./fact.ts";
import { frictionUnder } from "./floor-friction.ts";
import { footing } from "./footing.ts";
import { hanging } from "./hanging.ts";
import { response, standingOf } from "./response.ts";
import { type Rest, restsOf } from "./rests.ts";
import { contactsOf, type Feet, SEAT, solverModel } from "./solver-model.ts";
import { structure } from "./structure.ts";
import { type View, viewOf } from "./view.ts";

/** A joint whose bar sits on the bar it hung on. */
export interface Sitting {
  /** What bears there bar on bar, N. */
  readonly push: number;
  /** The frame with it seated; the screws of seated joints hold it in place and bear no weight. */
  readonly view: View;
}

export interface Seated {
  /**
   * The frame with these joints seated at once, solved anew for typical joints under the combinations that are asked for. Nothing is told
   * of a joint that cannot be seated, or that finds no rest so. Costs a factorisation.
   */
  together(joints: readonly string[]): (joint: string, combination: string) => Sitting | undefined;
}

/** A seat is reckoned square to the bar where one axis of its section is as plumb as this cosine: 10°. */
const PLUMB = Math.cos((10 * Math.PI) / 180);
/** So many are seated at once, those named first: each is a contact that the search for rest goes through. */
const MOST = 40;

interface Seat {
  readonly joint: string;
  /** Index of its link in the structure, and so of its spring in the model. */
  readonly link: number;
  /** Component of the spring that bore the weight. */
  readonly component: 1 | 2;
  readonly contact: Contact;
}

/** The frame under one combination, and what its seats bear, N. */
interface Solved {
  readonly view: View;
  readonly pushes: readonly number[];
}

/** The model with screws that let go of the weight at these joints, and bars that bear on bars instead. */
function withSeats(model: FrameModel, seats: readonly Seat[]): FrameModel {
  const springs = [...(model.springs ?? [])];
  for (const { link, component } of seats) {
    const spring = springs[link] as Spring;
    const stiffness = spring.stiffness.map((k, i) => (i === component ? 0 : k)) as unknown as Six<number>;
    springs[link] = { ...spring, stiffness };
  }
  return { ...model, springs, contacts: [...(model.contacts ?? []), ...seats.map(({ contact }) => contact)] };
}

/** What changes where bars that hang on posts sit on them: docs/method/joints. */
export const seated = defineFact<
  Seated,
  {
    structure: typeof structure;
    bodies: typeof bodies;
    combinations: typeof combinations;
    footing: typeof footing;
    response: typeof response;
    hanging: typeof hanging;
  }
>({
  id: "seated",
  needs: { structure, bodies, combinations, footing, response, hanging },
  compute(
    { structure: known, bodies: all, combinations: { cases, all: combined }, footing: feet, response: found, hanging },
    frame,
  ) {
    const possible = new Set(hanging.flatMap(({ joint, seatPossible }) => (seatPossible ? [joint.id] : [])));
    const seatOf = (joint: string): Seat | undefined => {
      const i = known.links.findIndex((link) => link.joint.id === joint);
      const link = known.links[i];
      const body = link && all.get(link.bar);
      if (!body || !possible.has(joint)) return undefined;
      const { y, z } = body.axes;
      const [axis, half, component] =
        Math.abs(dot(z, up)) > Math.abs(dot(y, up)) ? ([z, body.half.z, 2] as const) : ([y, body.half.y, 1] as const);
      const upright = dot(axis, up);
      if (Math.abs(upright) < PLUMB) return undefined;
      const normal = scale(axis, Math.sign(upright));
      const [from, to] = [known.nodeAt(link.bar, link.stations[0]), known.nodeAt(link.onto, link.stations[1])];
      const post = known.nodes[to]?.at;
      // The bar runs over the post, which ends at its underside: they press on each other on the post's axis.
      return (
        post && {
          joint,
          link: i,
          component,
          contact: { from, to, normal, gap: 0, at: along(post, normal, -half), stiffness: SEAT.typical },
        }
      );
    };
    const anchored = feet.some(({ hold }) => hold === "anchored");
    const contactOf = contactsOf(feet);
    const first = contactOf.filter((contact) => contact !== undefined).length;
    return {
      together(joints) {
        const seats = joints.flatMap((joint) => seatOf(joint) ?? []).slice(0, MOST);
        const model = (way: Feet): FrameModel =>
          withSeats(
            solverModel(
              known,
              all,
              feet,
              frame.stock,
              "typical",
              way,
              found.kind === "solved" ? found.braces("typical") : [],
            ),
            seats,
          );
        const prepared = new Map<Feet, Prepared>();
        const prepare = (way: Feet): Prepared => {
          const one = prepared.get(way) ?? prepareFrame(model(way), [...prepared.values()][0]);
          prepared.set(way, one);
          return one;
        };
        const solve = (combination: Combined): Solved | undefined => {
          const way = standingOf(combination);
          if (prepare(way).mechanisms.length > 0) return undefined;
          const rests = restsOf(
            prepare(way),
            () => prepare("pinned"),
            cases,
            [combination],
            ({ factors }) => frictionUnder(resultantOf(cases, factors), frame.floor.friction, anchored),
          );
          const { solution, whole, index } = rests[0] as Rest;
          const state = solution.states[index];
          if (state?.kind !== "solved") return undefined;
          const view = viewOf(solution, whole, index, combination, "typical", known.piecesOf, feet, contactOf);
          return { view, pushes: state.contacts.slice(first).map(({ push }) => push) };
        };
        const solved = new Map<string, Solved | undefined>();
        return (joint, name) => {
          const seat = seats.findIndex((one) => one.joint === joint);
          const combination = combined.find((one) => one.name === name);
          if (seat < 0 || !combination) return undefined;
          if (!solved.has(name)) solved.set(name, solve(combination));
          const { view, pushes } = solved.get(name) ?? {};
          return view && { push: pushes?.[seat] ?? 0, view };
        };
      },
    };
  },
});
