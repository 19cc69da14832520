/** A level bar that two others carry between them. */
export interface CrossBar {
  readonly bar: string;
  /** Where it is cut: the faces it meets, along the axis it runs, in the unit of the file. */
  readonly cut: readonly [from: number, to: number];
}

// Face of the bar met: its centreline and half its width.
/** One in each frame, with brackets at both ends. */
export const CROSS_BARS: Readonly<Record<string, CrossBar>> = {
  "braced-trestle": { bar: "bearer-1", cut: [20 + 20, 580 - 20] },
  "camera-rig": { bar: "back", cut: [10 + 10, 490 - 10] },
  "hoist-gantry": { bar: "beam", cut: [0 + 40, 1500 - 40] },
  "inch-bench": { bar: "cross-2", cut: [0.75 + 0.75, 27.25 - 0.75] },
  "incubator-stand": { bar: "cross-1", cut: [0.5 + 0.5, 17.5 - 0.5] },
  "plant-display": { bar: "hook-1", cut: [15 + 15, 385 - 15] },
  "pot-rack": { bar: "top-1", cut: [22.5 + 22.5, 577.5 - 22.5] },
  "roller-stand": { bar: "spacer-2", cut: [20 + 20, 580 - 20] },
  "seed-cabinet": { bar: "top-left", cut: [20 + 20, 480 - 20] },
  "seed-trolley": { bar: "top-mid", cut: [30 + 30, 470 - 30] },
  "step-platform": { bar: "cross-1", cut: [20 + 20, 680 - 20] },
  "timber-table": { bar: "bearer-2", cut: [20 + 20, 680 - 20] },
  workstation: { bar: "cross-2", cut: [15 + 15, 685 - 15] },
};

/** The cross bars as spots for a slip. */
export const AT_CROSS_BARS: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(CROSS_BARS).map(([frame, { bar }]) => [frame, bar]),
);

export function cutOf(frame: string): readonly [number, number] {
  const known = CROSS_BARS[frame];
  if (!known) throw new Error(`${frame} has no cross bar listed`);
  return known.cut;
}
