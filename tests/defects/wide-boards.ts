import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { mm } from "./draughting.ts";

/** Boards that are laid on bars of four sound frames. */
export const LAID_BOARDS: Readonly<Record<string, string>> = {
  "inch-bench": "top",
  "seed-cabinet": "lid",
  "step-platform": "platform",
  workstation: "top",
};

/** Lets a board stand out past its bars by so much, mm. A side drawn back from bars that rise behind it stays so. */
export function widen(file: FrameFile, board: string, by: number): void {
  const past = mm(file, by);
  for (const panel of file.panels ?? []) {
    const [a, b, c, d] = panel.overhang ?? [0, 0, 0, 0];
    const wide = (drawn: typeof a): typeof a => (typeof drawn === "number" && drawn < 0 ? drawn : past);
    if (panel.id === board) panel.overhang = [wide(a), wide(b), wide(c), wide(d)];
  }
}
