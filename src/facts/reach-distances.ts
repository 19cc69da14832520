/** How dangerous what a guard keeps people from is, in the words of ISO 13857. */
export type Risk = "low" | "high";

/** The form of an opening: long in one direction, or alike in both. */
export type OpeningForm = "slot" | "square";

/** Openings up to this width, and the distance that keeps an arm away behind them, m. */
interface Step {
  readonly upTo: number;
  readonly slot: number;
  readonly square: number;
}

const step = (upTo: number, slot: number, square: number): Step => ({
  upTo: upTo / 1000,
  slot: slot / 1000,
  square: square / 1000,
});

/** ISO 13857:2019, Table 4: fingertip to shoulder, persons of 14 and above. */
const ARM: readonly Step[] = [
  step(4, 2, 2),
  step(6, 10, 5),
  step(8, 20, 15),
  step(10, 80, 25),
  step(12, 100, 80),
  step(20, 120, 120),
  step(30, 850, 120),
  step(40, 850, 200),
  step(120, 850, 850),
];

/** Widest gap that a fingertip does not get into by more than 2 mm, m: ISO 13857:2019, Table 4, first line. */
export const FINGERTIP = 0.004;

/** ISO 13857:2019, Table 7: toe to crotch (from memory); for openings down to the floor. */
const LEG: readonly Step[] = [
  step(5, 0, 0),
  step(15, 10, 0),
  step(35, 80, 25),
  step(60, 180, 80),
  step(80, 650, 180),
  step(95, 1100, 650),
  step(180, 1100, 1100),
  step(240, 1100, 1100),
];

/** A slot no longer than this stops the hand at the thumb, m, and this distance then does: note to Table 4. */
const THUMB_STOP = { length: 0.065, upTo: 0.04, distance: 0.2 } as const;
/** Reach of an arm, m: the last line of Table 4, used also for wider openings that no body passes. */
const WHOLE_ARM = 0.85;

/** Widest openings that no body passes, m: ISO 13857:2019, 4.2.4. */
export const BODY: Readonly<Record<OpeningForm, number>> = { slot: 0.18, square: 0.24 };

/** Widths at which a distance changes, m: an opening wider than one of them falls under the next line. */
export const OPENING_STEPS: readonly number[] = [
  ...new Set([0, ...ARM.map(({ upTo }) => upTo), ...LEG.map(({ upTo }) => upTo), BODY.slot]),
]
  .filter((width) => width < BODY.square)
  .sort((a, b) => a - b);

const lineFor = (table: readonly Step[], width: number): Step | undefined =>
  table.find(({ upTo }) => width <= upTo + 1e-9);

/** Distance that keeps an arm from what lies behind an opening of this width and, of a slot, length, m. */
export function armDistance(form: OpeningForm, width: number, length: number): number {
  const line = lineFor(ARM, width);
  if (!line) return WHOLE_ARM;
  const short = form === "slot" && length <= THUMB_STOP.length + 1e-9 && width <= THUMB_STOP.upTo + 1e-9;
  return short ? Math.min(line.slot, THUMB_STOP.distance) : line[form];
}

/** The row of the tables of ISO 13857:2019 that an opening falls under: of Table 4, or of Table 7 where a leg reaches farther. */
export interface OpeningRow {
  readonly table: 4 | 7;
  readonly form: OpeningForm;
  /** Widths of the row, m; `upTo` is undefined for those wider than all rows, for which the last one counts. */
  readonly over: number;
  readonly upTo: number | undefined;
  /** Of a slot that stops the thumb: its greatest length, m. */
  readonly thumb: number | undefined;
  /** What the row asks for, m. */
  readonly distance: number;
}

/** The row for an opening of this width and length, m, down to the floor or not. */
export function openingRow(form: OpeningForm, width: number, length: number, toFloor: boolean): OpeningRow {
  const arm = armDistance(form, width, length);
  const leg = toFloor ? legDistance(form, width) : 0;
  const table = leg > arm ? LEG : ARM;
  const line = lineFor(table, width);
  const over = table.findLast(({ upTo }) => upTo + 1e-9 < width)?.upTo ?? 0;
  const stopped = table === ARM && line !== undefined && arm < line[form];
  return {
    table: table === LEG ? 7 : 4,
    form,
    over,
    upTo: line?.upTo,
    thumb: stopped ? THUMB_STOP.length : undefined,
    distance: Math.max(arm, leg),
  };
}

/** Distance that keeps a leg away behind an opening down to the floor, m. */
export function legDistance(form: OpeningForm, width: number): number {
  return (lineFor(LEG, width) ?? LEG[LEG.length - 1])?.[form] ?? 0;
}
