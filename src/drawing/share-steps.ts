/** A step of the share of a limit that is used. */
export interface ShareStep {
  /** Where the next step begins. */
  readonly below: number;
  readonly words: string;
  /** RGB */
  readonly colour: string;
  /** Width of the lines round it where it stands still, as a share of the usual. */
  readonly line: number;
}

/** Each step is darker than the one before and has heavier lines, so that it reads without colour too; the last turns to brick. */
export const SHARE_STEPS: readonly ShareStep[] = [
  { below: 0.25, words: "under 25 %", colour: "eff2de", line: 0.6 },
  { below: 0.5, words: "25 to 50 %", colour: "b0cac8", line: 0.8 },
  { below: 0.8, words: "50 to 80 %", colour: "76a1b0", line: 1.2 },
  { below: 1 + 1e-9, words: "80 to 100 %", colour: "33718b", line: 1.9 },
  { below: Infinity, words: "beyond the limit", colour: "84230f", line: 2.6 },
];
/** What no limit of this kind is held against. */
export const UNJUDGED = { colour: "ffffff", line: 0.6 } as const;

export const stepOf = (share: number): ShareStep | undefined => SHARE_STEPS.find(({ below }) => share < below);
