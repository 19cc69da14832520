import type { Frame, StrengthMethod } from "../model/frame.ts";

/** The frame, judged by the house's method where its own file names none. */
export function methodInForce(frame: Frame, method: StrengthMethod | undefined): Frame {
  return frame.method !== undefined || method === undefined ? frame : Object.freeze({ ...frame, method });
}
