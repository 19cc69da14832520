import type { HouseInForce } from "../house/house-in-force.ts";
import { methodInForce } from "../house/method-in-force.ts";
import type { Frame } from "../model/frame.ts";
import type { Problem } from "../model/problem.ts";
import { type FrameReading, readFrame } from "../model/read-frame.ts";
import { type StockBytes, stockInForce } from "./stock-in-force.ts";

/** What is read to be inspected. */
export interface ToRead {
  /** The frame file's name in outputs. */
  readonly file: string;
  readonly bytes: Uint8Array;
  /** In the order they count: later files replace earlier parts of one name. */
  readonly stock: readonly StockBytes[];
  readonly house: Pick<HouseInForce, "method">;
}

/** A frame file read with the stock in force, to be judged by the method in force; absent where file or stock cannot be read. */
export function readForInspection({ file, bytes, stock: files, house }: ToRead): {
  readonly frame: Frame | undefined;
  readonly reading: FrameReading;
  readonly problems: readonly Problem[];
} {
  const { stock, problems } = stockInForce(files);
  const reading = readFrame({ file, bytes, stock });
  const usable = !problems.some(({ weight }) => weight === "error");
  return {
    frame: usable && reading.frame ? methodInForce(reading.frame, house.method) : undefined,
    reading,
    problems: [...problems, ...reading.problems],
  };
}
