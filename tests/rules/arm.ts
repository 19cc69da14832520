import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { barData } from "./gantry.ts";
import { hungRails } from "./hung-rails.ts";

/** From the leg's face to the tip, where the load hangs, m. */
const REACH = 0.38;
/** From the toe of a bracket of 40 mm, on which it is pressed, to its screw 22 mm from the corner, m. */
const TOE = 0.018;

/** Two arms out of the legs at x = 0, one gusseted bracket below each at 20 N·m, loaded at their tips; loaded ties at the foot weigh it down. */
export function arms(force: number): FrameFile {
  const file = hungRails(0);
  const arm = (id: string, y: number) => ({ id, profile: "40x40-8", from: [0, y, 900], to: [-400, y, 900] }) as const;
  file.bars.push({ ...arm("arm-1", 0), from: [0, 0, 900], to: [-400, 0, 900] });
  file.bars.push({ ...arm("arm-2", 500), from: [0, 500, 900], to: [-400, 500, 900] });
  file.kits = { ...file.kits, arm: [{ connector: "gusset-bracket-40", on: "below", torque: "20 N·m" }] };
  file.joints?.push({ bars: ["arm-1", "arm-2"], ends: "from", by: "arm" });
  hang(file, force);
  return file;
}

export function hang(file: FrameFile, force: number): void {
  file.loads = [
    { case: "goods", on: ["tie-front", "tie-back"], force: 1500, at: "middle" },
    { case: "goods", on: ["arm-1", "arm-2"], force, at: 400 },
  ];
}

/** Pull of the bracket's screw in the leg as the arm is used, N: (F L + w L² / 2) over its distance from the toe. */
export const armPull = (force: number): number => (force * REACH + (barData("40x40-8").weight * REACH ** 2) / 2) / TOE;

/** The force for which the screw is pulled with this much, N. */
export const forceOnArm = (pull: number): number => (pull * TOE - (barData("40x40-8").weight * REACH ** 2) / 2) / REACH;
