import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { bar } from "./draughting.ts";

/** A bar hung before a wall: where its middle stands across and before the wall, mm, and which way its brackets look. */
export interface HungBar {
  readonly id: string;
  readonly at: readonly [x: number, y: number];
  readonly on: readonly ("+y" | "-y")[];
}

/**
 * Hangs bars down before the left wall of the cabinet, from a bar between the ends of the top bars, drawn out over the wall for it. The
 * wall is put on when they stand; its middle screw on the low bar sits at y = 250, z = 200, the top of its head 10.4 mm before the bars.
 */
export function hangBefore(file: FrameFile, head: { profile: string; x: number }, hung: readonly HungBar[]): void {
  for (const id of ["top-front", "top-back"]) {
    const top = bar(file, id);
    top.from = [-150, Number(top.from[1]), 1200];
  }
  const { profile, x } = head;
  file.bars.push({
    id: "head",
    profile,
    from: [x, 20, 1200],
    to: [x, 480, 1200],
    tall: profile === "40x80-8" ? "+x" : "+z",
  });
  file.joints?.push({ bars: ["head"], by: [{ connector: "gusset-bracket-40", on: "-x" }] });
  for (const { id, at, on } of hung) {
    file.bars.push({ id, profile: "40x40-8", from: [at[0], at[1], 100], to: [at[0], at[1], 1200] });
    const [first, ...others] = on.map((side) => ({ connector: "gusset-bracket-40", on: side }));
    if (first) file.joints?.push({ bars: [`${id}/to`], by: [first, ...others] });
  }
}
