import type { LoadPath } from "../../facts/load-paths.ts";
import type { MovingShape } from "../../facts/moving-shapes.ts";
import type { Tipping, TippingLine } from "../../facts/tipping.ts";
import type { GuardSign } from "../guard-sign.ts";
import { MANY_BARS } from "../many-bars.ts";
import type { ToolTurn } from "../tool-turn.ts";
import { guardData } from "./guard-data.ts";
import type { GuardData, PoseData, TipData, ToolData } from "./model-data.ts";
import { tipData } from "./tip-data.ts";

/** The shape, the load path, the turn of a tool, the guard, the way to tip and the doors that a finding belongs to, where it has them. */
export interface Pose {
  /** "3.2" */
  readonly finding: string;
  readonly shape: MovingShape | undefined;
  readonly path: LoadPath | undefined;
  readonly tool: ToolTurn | undefined;
  readonly guard: { readonly sign: GuardSign; readonly words: string } | undefined;
  readonly tip: { readonly over: TippingLine; readonly state: Tipping | undefined; readonly words: string } | undefined;
  /** By which share of its way each door stands open, in the order of the file; empty where it says nothing of doors. */
  readonly open: readonly number[];
}

/** Shapes that only findings need, at most; one of a frame with more bars than this, where each is large. */
const OWN = 8;

/** Turns of tools told at most. */
const TOOLS = 200;

const rounded = (values: readonly number[], digits: number): readonly number[] =>
  values.map((value) => Number(value.toFixed(digits)) + 0);
const TO_MM = 1000;

const toolData = ({ words, centre, zero, quarter, reach, free }: ToolTurn): ToolData => ({
  words,
  at: rounded(
    centre.map((c) => c * TO_MM),
    1,
  ),
  zero: rounded(zero, 6),
  quarter: rounded(quarter, 6),
  reach: Math.round(reach * TO_MM),
  free: rounded(
    free.flatMap(({ from, to }) => [from, to]),
    4,
  ),
});

const same = (a: MovingShape, b: MovingShape): boolean =>
  a.kind === b.kind && a.name === b.name && a.factor === b.factor && a.swings?.side === b.swings?.side;

/** The shapes to be shown, the usual ones first, the turns of tools and the guards, and which of them and of the paths goes with which finding. */
export function posesData(
  poses: readonly Pose[],
  usual: readonly MovingShape[],
  paths: readonly LoadPath[],
  bars: number,
): {
  readonly shapes: readonly MovingShape[];
  readonly tools: readonly ToolData[];
  readonly guards: readonly GuardData[];
  readonly tips: readonly TipData[];
  readonly list: readonly PoseData[];
} {
  const shapes = [...usual];
  const most = usual.length + (bars > MANY_BARS ? 1 : OWN);
  const placeOf = (shape: MovingShape | undefined): number => {
    if (!shape) return -1;
    const known = shapes.findIndex((one) => same(one, shape));
    if (known >= 0 || shapes.length === most) return known;
    return shapes.push(shape) - 1;
  };
  const tools: ToolData[] = [];
  const guards: GuardData[] = [];
  const tips: TipData[] = [];
  const list = poses
    .map(({ finding, shape, path, tool, guard, tip, open }) => ({
      finding,
      shape: placeOf(shape),
      path: paths.findIndex(({ name }) => name === path?.name),
      tool: tool && tools.length < TOOLS ? tools.push(toolData(tool)) - 1 : -1,
      guard: guard ? guards.push(guardData(guard.sign, guard.words)) - 1 : -1,
      tip: tip ? tips.push(tipData(tip.over, tip.state, tip.words)) - 1 : -1,
      open: open.map((share) => Number(share.toFixed(6))),
    }))
    .filter(
      ({ shape, path, tool, guard, tip, open }) => open.length > 0 || Math.max(shape, path, tool, guard, tip) >= 0,
    );
  return { shapes, tools, guards, tips, list };
}
