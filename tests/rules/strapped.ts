import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { edited, tee } from "./base-frames.ts";

/**
 * A plate 5 mm thick across two rails, one over the other, by a screw M8x16 in each at x = 300: their heads top out at y = 33. A short
 * bar from x = 180 to 340 lies over both, its face 30 mm over the heads: the key of 6 mm asks for 38 to be put in. Its stem takes 6/√3 =
 * 3.46 mm beside its axis, so the screws must stand at 343.46: 44 mm on, in whole millimetres; or at 176.54: 124 mm back. There the key
 * turns on the far side.
 */
export const strapped = (edit: (file: FrameFile) => void = () => {}): FrameFile =>
  edited(tee(), (file) => {
    file.bars.push({ id: "rail-2", profile: "40x40-8", from: [40, 0, 540], to: [600, 0, 540] });
    file.bars.push({ id: "lid", profile: "40x40-8", from: [180, 83, 520], to: [340, 83, 520] });
    file.fastenings = [
      {
        id: "strap",
        part: "plate-I-40",
        on: "+y",
        at: [300, 20, 520],
        turn: "90 deg",
        holds: ["rail", "rail-2", "lid"],
        omit: ["h1", "h4"],
      },
    ];
    edit(file);
  });
