import type { FrameFile, Vector } from "../../src/model/generated/frame-file.generated.ts";
import { changeFrame, type Json } from "./walk-frame.ts";

/**
 * The same frame turned by any angle about the vertical, degrees. Only for files that name faces by the bar (A to D, above, below)
 * and give coordinates as numbers: a word such as +x says no other direction.
 */
export function turnedAny(file: FrameFile, degrees: number): FrameFile {
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  const turn = (value: Json): Json => {
    const [x, y, z] = value as [number, number, number];
    return [c * x - s * y, s * x + c * y, z];
  };
  const sideways = (value: Json): Json => {
    if (typeof value === "string" && /^[+-][xy]$/.test(value)) throw new Error(`${value} cannot be turned`);
    return value;
  };
  const turned = changeFrame(file as unknown as Json, {
    point: turn,
    vector: turn,
    direction: sideways,
    face: sideways,
    choice: sideways,
  }) as unknown as FrameFile;
  // Face A of a bar that stands upright looks along +x of the drawing, unless the file says where: it turns too.
  const tall = [c, s, 0] as unknown as Vector;
  for (const bar of turned.bars) {
    const upright = bar.from[0] === bar.to[0] && bar.from[1] === bar.to[1];
    if (upright && bar.tall === undefined && bar.roll === undefined) bar.tall = tall;
  }
  return turned;
}
