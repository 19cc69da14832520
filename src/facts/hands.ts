/** How a hand holds a tool: by the fingers, or in the fist. */
export type Grip = "fingers" | "fist";

/** The room a hand takes on a handle, m. */
export interface Hand {
  /** How much of the handle it covers, from its end. */
  readonly length: number;
  /** How thick it is along the screw, the handle included. */
  readonly thickness: number;
}

/**
 * Three fingers lie on the end of a key and are as thick as one is wide. A fist is as long as a hand is wide and as thick as it is from
 * the back to bent fingers. Breadths of the 95th percentile after ISO 15534-3, from memory: hand without thumb 97 mm, index finger 23 mm,
 * rounded up for a glove; 60 mm for three fingers and for the fist: common practice.
 */
export const HANDS: Readonly<Record<Grip, Hand>> = {
  fingers: { length: 0.06, thickness: 0.025 },
  fist: { length: 0.1, thickness: 0.06 },
};

/** Width across the handle up to which room for a hand is looked for, m. */
export const WIDEST = 0.15;
