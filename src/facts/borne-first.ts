import { type Body, bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { type Held, isSteep, type Meeting, meetings } from "./meetings.ts";
import { supportsOf } from "./supports-of.ts";

/** Which bars are borne by which: from the floor up, a bar comes after those that bear it. */
export interface BorneFirst {
  /** Of what holds a bar, what bears it whether or not the bar is there: feet, and bars that come before it. */
  readonly bears: (bar: string) => readonly number[];
}

/** Posts on feet come first: they sway with the frame and bend between all that meets them. */
const onFeet = (body: Body, { feet }: Held): boolean =>
  feet.length > 0 && (isSteep(body) || supportsOf(body, feet).length > 1);

/**
 * Bars in the order in which they can bear each other. First those on feet; then, as long as there are any, all that are held at two places by
 * those before; only where there are none, those that are held at one place, which stand out from it. So an arm comes before the rail
 * that joins its tip to the tip of another, and a rail before the stay that hangs from it to the rail below.
 */
export const borneFirst = defineFact<BorneFirst, { bodies: typeof bodies; meetings: typeof meetings }>({
  id: "borne-first",
  needs: { bodies, meetings },
  compute({ bodies: all, meetings: held }, frame) {
    const leafOf = new Map(frame.doors.flatMap((door) => door.bars.map((bar) => [bar, door.ref.id] as const)));
    const place = new Map<string, number>();
    const bodyOf = (bar: string): Body => all.get(bar) as Body;
    for (const [bar, one] of held) if (onFeet(bodyOf(bar), one)) place.set(bar, 0);
    const bearing = ({ feet, meetings: met }: Held, before: (other: string) => boolean): number[] => {
      return [...feet, ...met.filter(({ other }) => before(other)).map(({ at }) => at)];
    };
    const left = new Set([...held.keys()].filter((bar) => !place.has(bar)));
    for (let turn = 1; left.size > 0; turn += 1) {
      const places = new Map(
        [...left].map((bar) => [
          bar,
          supportsOf(
            bodyOf(bar),
            bearing(held.get(bar) as Held, (other) => place.has(other)),
          ).length,
        ]),
      );
      const most = Math.min(2, Math.max(...places.values()));
      if (most === 0) break;
      for (const [bar, count] of places) {
        if (count < most) continue;
        place.set(bar, turn);
        left.delete(bar);
      }
    }
    const within = (bar: string, { other }: Meeting): boolean =>
      leafOf.get(bar) !== undefined && leafOf.get(bar) === leafOf.get(other);
    return {
      bears(bar) {
        const one = held.get(bar);
        if (!one) return [];
        const own = place.get(bar);
        // What keeps a door in shape is judged by the door.
        return own === undefined || own === 0
          ? [...one.feet, ...one.meetings.map(({ at }) => at)]
          : [
              ...one.feet,
              ...one.meetings
                .filter((met) => within(bar, met) || (place.get(met.other) ?? Number.POSITIVE_INFINITY) < own)
                .map(({ at }) => at),
            ];
      },
    };
  },
});
