import type { FrameFile } from "../host/frame-files.ts";
import { sameFile } from "../host/same-file.ts";
import { sourceNamed } from "../host/source-named.ts";
import { Unusable } from "./unusable.ts";

/**
 * Lets an output go to any file but one a person draws in: neither a file the run reads, nor one that is named like a frame, house or
 * stock file.
 * @throws Unusable
 */
export async function checkTarget(option: string, to: string | undefined, read: readonly FrameFile[]): Promise<void> {
  if (to === undefined) return;
  const input = await sameFile(to, read);
  if (input !== undefined) throw new Unusable(`${option} ${to} would replace ${input.name}, which is read`);
  const kind = await sourceNamed(to);
  if (kind !== undefined)
    throw new Unusable(`${option} ${to} is the name of a ${kind} file; give what is written another ending`);
}
