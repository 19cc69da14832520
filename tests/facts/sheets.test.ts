import { describe, expect, it } from "vitest";
import { planeAxes } from "../../src/facts/plane-axes.ts";
import { sheets } from "../../src/facts/sheets.ts";
import { dot } from "../../src/geometry/vector.ts";
import type { FrameFile, Panel } from "../../src/model/generated/frame-file.generated.ts";
import { edited, tee } from "../rules/base-frames.ts";
import { known, near } from "./known.ts";

const laid = (panel: Partial<Panel>): FrameFile =>
  edited(tee(), (file) => {
    file.panels = [{ id: "top", sheet: "plywood-12", held: "laid", bars: ["rail"], on: "+z", ...panel }];
  });

describe("sheets laid on bars", () => {
  it("cover the bars that carry them: the rail from x = 20 to 600, 40 mm wide, at z = 520", () => {
    const [sheet] = known(sheets, laid({ overhang: [0, 0, 0, 0] }));
    expect(sheet?.size).toEqual(near([580, 40]));
    expect(sheet?.corners).toEqual([
      near([20, -20, 520]),
      near([600, -20, 520]),
      near([600, 20, 520]),
      near([20, 20, 520]),
    ]);
    expect(sheet?.bars).toEqual(["rail"]);
  });

  it("reach over by the overhang at −x, +x, −y, +y", () => {
    const [sheet] = known(sheets, laid({ overhang: [1, 2, 3, 4] }));
    expect(sheet?.corners[0]).toEqual(near([19, -23, 520]));
    expect(sheet?.corners[2]).toEqual(near([602, 24, 520]));
  });

  it("on a side, u and v are the other two axes of the drawing, the way they count", () => {
    const [sheet] = known(sheets, laid({ held: "on-face", on: "-y", bars: ["post", "rail"], overhang: [0, 0, 0, 0] }));
    // Post and rail reach from x = −20 to 600 and z = 0 to 1000; their −y faces lie at −20.
    expect(sheet?.corners[0]).toEqual(near([-20, -20, 0]));
    expect(sheet?.corners[2]).toEqual(near([600, -20, 1000]));
    expect(sheet?.size).toEqual(near([620, 1000]));
  });

  it("in slots are none of these", () => {
    const file = edited(tee(), (base) => {
      base.panels = [
        { id: "p", sheet: "plywood-6", held: "in-slot", edges: [{ bar: "rail" }, { bar: "post" }, "free", "free"] },
      ];
    });
    expect(known(sheets, file)).toEqual([]);
  });

  it.each([[[0, 0, 1]], [[0, -1, 0]], [[-1, 0, 0]], [[0, 0.6, 0.8]], [[Math.SQRT1_2, Math.SQRT1_2, 0]]] as const)(
    "axes of the plane square to %j are unit vectors square to it and to each other",
    (normal) => {
      const [u, v] = planeAxes(normal);
      for (const [a, b, value] of [
        [u, u, 1],
        [v, v, 1],
        [u, v, 0],
        [u, normal, 0],
        [v, normal, 0],
      ] as const)
        expect(dot(a, b)).toBeCloseTo(value, 12);
    },
  );
});
