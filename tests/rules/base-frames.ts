import type { Bar, FrameFile, KitItem } from "../../src/model/generated/frame-file.generated.ts";

/*
 * Small sound frames of 40x40-8 bars, drawn in mm. The bar is 40 mm square, so its faces stand 20 mm off its centreline; its slots
 * are 8.2 mm wide between lips 4 mm thick, 12.5 mm deep and 18 mm wide inside; nut-8-M8 is 20 mm long and 6 mm thick. A bracket
 * inside-bracket-40 is 5 mm thick, its holes 22 mm from the corner, its screws M8x16: head 13 mm across, 8 mm high, key 6 mm.
 */

/** The only item that joins the ends of these frames: change it to change every joint of the kit. */
export function kitItem(file: FrameFile, kit = "corner"): KitItem {
  const item = file.kits?.[kit]?.[0];
  if (!item) throw new Error(`the base frame has no kit ${kit}`);
  return item;
}

export function barOf(file: FrameFile, id: string): Bar {
  const bar = file.bars.find((one) => one.id === id);
  if (!bar) throw new Error(`the base frame has no bar ${id}`);
  return bar;
}

/** One rail 580 mm long that ends on the +x face of a post, with a bracket below: the rail is cut at x = 20 mm. */
export function tee(): FrameFile {
  return {
    format: 1,
    title: "rail on a post",
    units: "mm-N-kg",
    kits: { corner: [{ connector: "inside-bracket-40", on: "below" }] },
    bars: [
      { id: "post", profile: "40x40-8", from: [0, 0, 0], to: [0, 0, 1000] },
      { id: "rail", profile: "40x40-8", from: [0, 0, 500], to: [600, 0, 500] },
    ],
    joints: [{ bars: ["rail"], ends: "from", by: "corner" }],
  };
}

/**
 * Two rails on one face of a post, the lower one `apart` under the upper (mm), their brackets between them: the bracket under
 * "rail" and the bracket over "low" look at each other.
 */
export function facingRails(apart: number): FrameFile {
  return {
    ...tee(),
    title: "two rails on a post",
    kits: {
      corner: [{ connector: "inside-bracket-40", on: "below" }],
      under: [{ connector: "inside-bracket-40", on: "above" }],
    },
    bars: [
      { id: "post", profile: "40x40-8", from: [0, 0, 0], to: [0, 0, 1000] },
      { id: "rail", profile: "40x40-8", from: [0, 0, 500], to: [600, 0, 500] },
      { id: "low", profile: "40x40-8", from: [0, 0, 500 - apart], to: [600, 0, 500 - apart] },
    ],
    joints: [
      { bars: ["rail"], ends: "from", by: "corner" },
      { bars: ["low"], ends: "from", by: "under" },
    ],
  };
}

/** Moves the lower of two facing rails to lie so far under the upper, mm. */
export function setApart(apart: number): (file: FrameFile) => void {
  return (file) => {
    const low = barOf(file, "low");
    low.from = [0, 0, 500 - apart];
    low.to = [600, 0, 500 - apart];
  };
}

/** Draws the rail so that it starts at this x, mm, as it stands. */
export function railFrom(x: number): (file: FrameFile) => void {
  return (file) => {
    const rail = barOf(file, "rail");
    rail.from = [x, 0, 500];
    rail.ends = { from: { cut: "as-drawn" } };
  };
}

/** The same frame with a row's edit. */
export function edited(base: FrameFile, edit: (file: FrameFile) => void): FrameFile {
  const file = structuredClone(base);
  edit(file);
  return file;
}
