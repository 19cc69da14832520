import type { Tipping, TippingLine } from "../../facts/tipping.ts";
import { along, type Vec3 } from "../../geometry/vector.ts";
import type { TipData } from "./model-data.ts";

/** A point in tenths of a millimetre, mm. */
const mm = (point: Vec3): readonly number[] => point.map((c) => Math.round(c * 1e4) / 10 + 0);

/** The line a frame tips over as the viewer takes it, with the centre of mass where the state is known. */
export function tipData({ pivot, far, inward }: TippingLine, state: Tipping | undefined, words: string): TipData {
  const below: Vec3 | undefined = state && [state.centre[0], state.centre[1], pivot[2]];
  return {
    words,
    line: [...mm(pivot), ...mm(far)],
    centre: state ? mm(state.centre) : [],
    below: below ? mm(below) : [],
    nearest: state && below ? mm(along(below, inward, -state.inside)) : [],
    inward: inward.map((c) => Number(c.toFixed(6)) + 0),
  };
}
