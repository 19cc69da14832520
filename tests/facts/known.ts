import { expect } from "vitest";
import { type Fact, factOf } from "../../src/facts/fact.ts";
import type { Frame } from "../../src/model/frame.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { readFrame } from "../../src/model/read-frame.ts";
import { builtinStock } from "../../src/model/stock/builtin-stock.ts";

/** The frame of a file that must be sound as a file. */
export function frameOf(file: FrameFile): Frame {
  const bytes = new TextEncoder().encode(JSON.stringify(file));
  const { frame, problems } = readFrame({ file: "fact.frame.json", bytes, stock: builtinStock() });
  if (!frame) throw new Error(JSON.stringify(problems));
  return frame;
}

export function known<T>(fact: Fact<T>, file: FrameFile): T {
  return factOf(fact, frameOf(file));
}

/** A value that must be there. */
export function one<T>(value: T | undefined, what = "value"): T {
  if (value === undefined) throw new Error(`no ${what}`);
  return value;
}

/** Matches a point in metres that was worked in millimetres, to a picometre. */
export function near(expected: readonly number[]): unknown {
  return expected.map((c) => expect.closeTo(c / 1000, 12));
}
