import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { moveEnd, point } from "./draughting.ts";

/** Draws every leg of the first kind of feet down to this height over the floor, and sets the feet to it. */
export function setFeet(file: FrameFile, height: number): string[] {
  const stand = file.stands?.[0];
  if (!stand) throw new Error(`${file.title} has no feet`);
  stand.raise = height;
  for (const leg of stand.bars) moveEnd(file, leg, "from", 2, height - point(file, leg, "from")[2]);
  return stand.bars.map((leg) => `${leg}.foot`);
}
