import { defineFact } from "./fact.ts";

/** What loads are multiplied by in the strength combinations, and where the reserve is that they leave out. */
export interface LoadFactors {
  /** Of what always acts, and of it where it helps, as against uplift or the load on an overhang. */
  readonly permanent: number;
  readonly helping: number;
  readonly variable: number;
  /** Of variable loads beside a leaning person. */
  readonly beside: number;
  /** Beside an accidental load and of it, and of the variable loads then. */
  readonly accidental: number;
  readonly accompanying: number;
  /** By how much these loads would have to grow to be those a frame is allowed to fail under: 1 where they are. */
  readonly reserve: number;
}

/** ψ2 of storage (EN 1990:2002, Table A1.1, from memory). */
const ACCOMPANYING = 0.8;

/** EN 1990:2002, Table A1.2(B) and 6.4.3.3: recommended partial factors; ψ0 = 0.7 of most uses, Table A1.1 (from memory). */
export const PARTIAL: LoadFactors = {
  permanent: 1.35,
  helping: 1,
  variable: 1.5,
  beside: 1.05,
  accidental: 1,
  accompanying: ACCOMPANYING,
  reserve: 1,
};

/** The reserve of the partial factors on loads that come and go. */
const RESERVE = 1.5;
/** ASCE 7-16, 2.4.1 (from memory); accidental loads take no reserve (docs/method/response). */
export const ALLOWABLE: LoadFactors = {
  permanent: 1,
  helping: 0.6,
  variable: 1,
  beside: 0.7,
  accidental: 1 / RESERVE,
  accompanying: ACCOMPANYING / RESERVE,
  reserve: RESERVE,
};

/** The factors of the method that the frame is judged by. */
export const loadFactors = defineFact<LoadFactors, Record<never, never>>({
  id: "load-factors",
  compute: (_, frame) => (frame.method === "allowable-stress" ? ALLOWABLE : PARTIAL),
});

/** By what a strength is divided beyond its own factor: the safety factor in force where the loads hold no reserve themselves. */
export const dividedBy = ({ reserve }: LoadFactors, safety: number): number => (reserve === 1 ? 1 : safety);

/** Said of a limit that was divided so. */
export const dividedWords = (by: number): string => (by === 1 ? "" : `, divided by the safety factor ${by}`);
