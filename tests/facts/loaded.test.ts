import { describe, expect, it } from "vitest";
import { loaded } from "../../src/facts/loaded.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { edited, tee } from "../rules/base-frames.ts";
import { known } from "./known.ts";

/** The cases on the rail and on the post. */
function cases(edit: (file: FrameFile) => void): readonly (readonly string[])[] {
  const found = known(loaded, edited(tee(), edit));
  for (const bar of ["rail", "post"]) expect(found.has(bar)).toBe(found.casesOn(bar).length > 0);
  return [found.casesOn("rail"), found.casesOn("post")];
}
const shelf = (file: FrameFile): void => {
  file.panels = [{ id: "shelf", sheet: "plywood-12", held: "laid", bars: ["rail"], on: "+z" }];
};
const pump = { id: "pump", mass: 20, centre: [300, 0, 600] as [number, number, number] };

describe("bars that carry declared loads", () => {
  it("none without", () => {
    expect(cases(() => {})).toEqual([[], []]);
  });

  it("a load on a bar, its cases in order", () => {
    expect(
      cases((file) => {
        file.loads = [
          { case: "use", on: "rail", force: 100 },
          { case: "knock", on: ["rail", "post"], force: 50 },
          { case: "use", on: "rail", force: 10 },
        ];
      }),
    ).toEqual([["knock", "use"], ["knock"]]);
  });

  it("a load on a sheet goes to the bars it lies on", () => {
    expect(
      cases((file) => {
        shelf(file);
        file.loads = [{ case: "things", on: "shelf", pressure: 1 }];
      }),
    ).toEqual([["things"], []]);
  });

  it("a load on a sheet in slots goes to the bars of its edges", () => {
    expect(
      cases((file) => {
        file.panels = [
          {
            id: "pane",
            sheet: "plywood-6",
            held: "in-slot",
            edges: [{ bar: "rail" }, { bar: "post" }, "free", "free"],
          },
        ];
        file.loads = [{ case: "wind", on: "pane", pressure: 1 }];
      }),
    ).toEqual([["wind"], ["wind"]]);
  });

  it("equipment is a case of its own, straight or through a sheet", () => {
    expect(
      cases((file) => {
        file.masses = [{ ...pump, on: ["post"] }];
      }),
    ).toEqual([[], ["pump"]]);
    expect(
      cases((file) => {
        shelf(file);
        file.masses = [{ ...pump, on: ["shelf"] }];
      }),
    ).toEqual([["pump"], []]);
  });

  it("a load on equipment goes where its weight goes", () => {
    expect(
      cases((file) => {
        shelf(file);
        file.masses = [{ ...pump, on: ["shelf", "post"] }];
        file.loads = [{ case: "start-up", on: "pump", force: 30, direction: "+x" }];
      }),
    ).toEqual([
      ["pump", "start-up"],
      ["pump", "start-up"],
    ]);
  });
});
