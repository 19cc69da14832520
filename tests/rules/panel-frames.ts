import type { FrameFile, Panel } from "../../src/model/generated/frame-file.generated.ts";

/**
 * Four bars of 40x40-8, drawn in mm, round an opening of 960 x 960 mm in the plane y = 0, with a sheet of polycarbonate 5 mm thick
 * in their slots. Slots are 8.2 mm open and 12.5 mm deep; gasket strip-8 takes sheets of 4 to 6 mm and leaves 10.5 mm of depth.
 * Indoors it is 5 to 35 °C: the sheet outgrows the frame by (65 − 23)e-6 · 15 K = 6.3e-4 of its length, and shrinks by as much.
 */
export function paneled(): FrameFile {
  return {
    format: 1,
    title: "a panel in four bars",
    units: "mm-N-kg",
    bars: [
      { id: "left", profile: "40x40-8", from: [0, 0, -40], to: [0, 0, 1040] },
      { id: "right", profile: "40x40-8", from: [1000, 0, -40], to: [1000, 0, 1040] },
      { id: "top", profile: "40x40-8", from: [0, 0, 1000], to: [1000, 0, 1000] },
      { id: "bottom", profile: "40x40-8", from: [0, 0, 0], to: [1000, 0, 0] },
    ],
    panels: [
      {
        id: "pane",
        sheet: "polycarbonate-5",
        held: "in-slot",
        gasket: "strip-8",
        edges: [{ bar: "left" }, { bar: "top" }, { bar: "right" }, { bar: "bottom" }],
      },
    ],
  };
}

export function paneOf(file: FrameFile): Panel {
  const [pane] = file.panels ?? [];
  if (!pane) throw new Error("the base frame has no panel");
  return pane;
}

/** An edit of the pane. */
export function pane(edit: (panel: Panel) => void): (file: FrameFile) => void {
  return (file) => edit(paneOf(file));
}
