import { type Body, cutStation } from "./bodies.ts";
import type { Structure } from "./structure.ts";

/** A place that a roaming load is tried at. */
export interface RoamingPlace {
  /** Along the bar, from its drawn from point, m. */
  readonly station: number;
  readonly words: string;
}

/** Tried on every bar, the middle third. */
const USUAL = [
  [0, "at the from end"],
  [0.25, "a quarter along"],
  [0.5, "half way along"],
  [0.75, "three quarters along"],
  [1, "at the to end"],
] as const;
/** Which of them is the middle. */
export const MIDDLE = 2;

/** A place nearer to another than this share of the bar is no place of its own. */
const APART = 0.02;
/** Of so many spans and more the load is tried at even steps instead of in each. */
const MOST_SPANS = 10;
const STEPS = 16;

/**
 * Where a load that roams along a bar is tried: at its ends, quarters and middle, and half way between what it is joined to, for over
 * several spans the quarters may all lie on posts.
 */
export function roamingPlaces(body: Body, known: Structure): readonly RoamingPlace[] {
  const [low, high] = [cutStation(body, "from"), cutStation(body, "to")];
  const { id } = body.bar.ref;
  const joined = known.links.flatMap(({ bar, onto, stations }) => [
    ...(bar === id ? [stations[0]] : []),
    ...(onto === id ? [stations[1]] : []),
  ]);
  const at = [...new Set([low, ...joined, high])]
    .filter((station) => station >= low && station <= high)
    .sort((a, b) => a - b);
  const middles = at.slice(1).map((station, i) => ((at[i] ?? low) + station) / 2);
  const steps = Array.from({ length: STEPS - 1 }, (_, i) => low + ((i + 1) / STEPS) * (high - low));
  const places: RoamingPlace[] = USUAL.map(([share, words]) => ({ station: low + share * (high - low), words }));
  for (const station of middles.length > MOST_SPANS ? steps : middles) {
    if (places.some((place) => Math.abs(place.station - station) < APART * (high - low))) continue;
    places.push({ station, words: `${Math.round((100 * (station - low)) / (high - low))} % along` });
  }
  return places;
}
