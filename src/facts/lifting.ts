/** How a load is lifted: lengths in m, turn in rad, factors without unit. */
export interface Lift {
  /** Of the hands from the ankles, level. */
  readonly reach: number;
  /** Of the hands over the floor where the lift begins. */
  readonly height: number;
  /** Between where it begins and ends, upright. */
  readonly travel: number;
  /** Of the body, out of the way it faces. */
  readonly turn: number;
  /** For how often: 1 for rare lifts. */
  readonly frequency: number;
  /** For how well the hands hold: 1 good, 0.95 fair, 0.90 poor. */
  readonly grip: number;
}

/** Load constant, kg, and the limits past which nothing should be lifted, m and rad. */
const LOAD = 23;
const REACH = { least: 0.25, most: 0.63 };
const HEIGHT = { best: 0.75, most: 1.75 };
const TRAVEL = { least: 0.25, most: 1.75 };
const MOST_TURN = (135 * Math.PI) / 180;

/**
 * Mass that nearly all healthy people may lift, kg: the revised lifting equation (NIOSH 94-110, 1994). 0 where the load is too
 * far away, too high, or too far to the side.
 */
export function recommendedMass({ reach, height, travel, turn, frequency, grip }: Lift): number {
  if (reach > REACH.most || height > HEIGHT.most || travel > TRAVEL.most || turn > MOST_TURN) return 0;
  const horizontal = REACH.least / Math.max(reach, REACH.least);
  const vertical = 1 - 0.3 * Math.abs(height - HEIGHT.best);
  const distance = 0.82 + 0.045 / Math.max(travel, TRAVEL.least);
  const asymmetry = 1 - 0.0032 * ((turn * 180) / Math.PI);
  return LOAD * horizontal * vertical * distance * asymmetry * frequency * grip;
}

/**
 * What some people may lift together as a multiple of what one may: two thirds of each one's for two, half for three and more
 * (common practice; HSE guidance L23, from memory).
 */
export function teamMultiple(people: number): number {
  if (people <= 1) return people;
  return people === 2 ? 4 / 3 : people / 2;
}

/** The fewest people, up to so many, who may lift a mass of which one may lift `each`, kg; undefined where all are too few. */
export function peopleFor(mass: number, each: number, most: number): number | undefined {
  for (let people = 1; people <= most; people += 1) if (mass <= each * teamMultiple(people)) return people;
  return undefined;
}
