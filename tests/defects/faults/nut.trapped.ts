import type { Fault } from "../fault.ts";

/** Of each frame a piece of which a bar lies between two others, so that its slots are closed. */
const PIECES: Readonly<Record<string, readonly [string, ...string[]]>> = {
  "pot-rack": ["post-1", "post-2", "front", "front-up1", "front-up2", "top-front"],
};

export const fault: Fault = {
  rule: "nut.trapped",
  key: "trapped",
  slip: "the front bought put together, without nuts for what is joined to it",
  spots: { "pot-rack": "slat-1.from" },
  sizes: "plain",
  plant(file, spot, _, frame) {
    file.groups = [{ id: "side-piece", parts: [...(PIECES[frame] ?? [spot])] as [string, ...string[]], built: true }];
    return [spot];
  },
};
