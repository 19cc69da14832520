import { describe, expect, it } from "vitest";
import { spans } from "../../src/facts/spans.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { barOf, edited, tee } from "../rules/base-frames.ts";
import { gantry } from "../rules/gantry.ts";
import { known } from "./known.ts";

/** The rail between two posts 600 mm apart, on feet: it is cut at x = 20 and x = 580. */
function portal(): FrameFile {
  return edited(tee(), (file) => {
    file.bars.push({ id: "far", profile: "40x40-8", from: [600, 0, 0], to: [600, 0, 1000] });
    file.joints = [{ bars: ["rail"], ends: "both", by: "corner" }];
    file.stands = [{ part: "foot-40-M8", bars: ["post", "far"] }];
  });
}

const of = (file: FrameFile, bar: string) =>
  known(spans, file)
    .get(bar)
    ?.map(({ kind, from, to }) => [kind, Math.round(from * 1e6) / 1e3, Math.round(to * 1e6) / 1e3]);

describe("spans", () => {
  it("a rail spans from cut to cut, 560 mm; a post from its foot to the rail, and stands 500 mm over it", () => {
    expect(of(portal(), "rail")).toEqual([["between", 0, 560]]);
    expect(of(portal(), "post")).toEqual([
      ["between", 0, 500],
      ["overhang", 500, 1000],
    ]);
  });

  it("a rail held at one end is an overhang, as long as it is cut", () => {
    expect(of(tee(), "rail")).toEqual([["overhang", 0, 580]]);
  });

  it("a stub of a section and a half over its last support is none", () => {
    const stub = (top: number) =>
      of(
        edited(portal(), (file) => {
          barOf(file, "post").to = [0, 0, top];
        }),
        "post",
      );
    expect(stub(559)).toEqual([["between", 0, 500]]);
    expect(stub(561)).toEqual([
      ["between", 0, 500],
      ["overhang", 500, 561],
    ]);
  });

  it("ends with the bar, even where what it is fastened to lies past its end", () => {
    // The rail's underside is at 480: it bears on the last millimetre of a post of 481, its centreline at 500.
    const file = edited(portal(), (base) => {
      barOf(base, "post").to = [0, 0, 481];
      barOf(base, "post").ends = { both: { cut: "as-drawn" } };
    });
    expect(of(file, "post")).toEqual([["between", 0, 481]]);
  });

  it("are the same whichever bar a plate or a tie names first", () => {
    const plated = (holds: [string, string]) =>
      edited(gantry(1200), (file) => {
        file.bars.push({ id: "mid", profile: "40x40-8", from: [600, 0, 600], to: [600, 500, 600] });
        file.fastenings = [
          { id: "t1", part: "plate-T-40", on: "above", at: [600, 0, 620], turn: holds[0] === "mid" ? 0 : 90, holds },
        ];
      });
    for (const holds of [
      ["front", "mid"],
      ["mid", "front"],
    ] as [string, string][]) {
      expect(of(plated(holds), "front"), holds.join()).toEqual([["between", 20, 1220]]);
      expect(of(plated(holds), "mid"), holds.join()).toEqual([["overhang", 0, 460]]);
    }
    const tied = (bars: [string, string]) =>
      edited(gantry(1200), (file) => {
        file.bars.push({ id: "double", profile: "40x40-8", from: [0, 0, 640], to: [1200, 0, 640] });
        file.ties = [{ part: "side-tie-8", bars, at: [100, 400, 800, 1100] }];
      });
    for (const bars of [
      ["front", "double"],
      ["double", "front"],
    ] as [string, string][])
      expect(of(tied(bars), "front"), bars.join()).toEqual([["between", 20, 1220]]);
  });

  it("of a bar laid over others end where it lies on them", () => {
    const file = edited(gantry(1200), (base) => {
      base.bars.push({ id: "over", profile: "40x40-8", from: [600, -200, 640], to: [600, 700, 640] });
      base.pivots = [0, 500].map((y) => ({
        part: "pivot-40",
        bars: ["over", y === 0 ? "front" : "back"],
        at: [600, y, 620],
        axis: "+z",
        locked: true,
      }));
    });
    expect(of(file, "over")).toEqual([
      ["overhang", 0, 200],
      ["between", 200, 700],
      ["overhang", 700, 900],
    ]);
    expect(of(file, "front")).toEqual([["between", 20, 1220]]);
  });

  it("are not ended by what only hangs on the bar, stands on it or is held out by it", () => {
    const file = edited(gantry(1200), (base) => {
      base.bars.push({ id: "peg", profile: "40x40-8", from: [600, 0, 600], to: [600, 0, 400] });
      base.bars.push({ id: "mast", profile: "40x40-8", from: [600, 500, 600], to: [600, 500, 1200] });
      base.bars.push({ id: "arm", profile: "40x40-8", from: [600, 500, 1000], to: [600, 100, 1000] });
      base.joints?.push(
        { bars: ["peg", "mast"], ends: "from", by: "cross" },
        { bars: ["arm/from"], by: [{ connector: "inside-bracket-40", on: "below" }] },
      );
    });
    expect(of(file, "front")).toEqual([["between", 20, 1220]]);
    expect(of(file, "back")).toEqual([["between", 20, 1220]]);
    expect(of(file, "mast")).toEqual([["overhang", 0, 580]]);
    expect(of(file, "arm")).toEqual([["overhang", 0, 380]]);
  });

  /** Two arms that stand out from posts drawn higher, with a rail across their tips. */
  const canopy = () =>
    edited(gantry(1200), (file) => {
      for (const post of ["leg-3", "leg-4"]) barOf(file, post).to = [post === "leg-3" ? 1200 : 0, 500, 1200];
      for (const [id, x] of [
        ["arm-1", 0],
        ["arm-2", 1200],
      ] as const) {
        file.bars.push({ id, profile: "40x40-8", from: [x, 500, 1100], to: [x, 0, 1100] });
        file.joints?.push({ bars: [`${id}/from`], by: [{ connector: "inside-bracket-40", on: "below" }] });
      }
      file.bars.push({ id: "tips", profile: "40x40-8", from: [-40, 0, 1100], to: [1240, 0, 1100] });
      file.joints?.push({ bars: ["arm-1/to", "arm-2/to"], by: [{ connector: "inside-bracket-40", on: "+x" }] });
    });

  it("an arm whose tip is joined to another's stands out from its post all the same", () => {
    expect(of(canopy(), "arm-1")).toEqual([
      ["between", 0, 460],
      ["overhang", 0, 460],
    ]);
  });

  it("a stay between two rails makes them bend together and ends the span of neither", () => {
    const file = edited(gantry(1200), (base) => {
      base.bars.push({ id: "low", profile: "40x40-8", from: [0, 0, 200], to: [1200, 0, 200] });
      base.bars.push({ id: "stay", profile: "40x40-8", from: [600, 0, 200], to: [600, 0, 600] });
      base.joints?.push(
        { bars: ["low"], by: [{ connector: "inside-bracket-40", on: "above" }] },
        { bars: ["stay"], by: [{ connector: "inside-bracket-40", on: "+x" }] },
      );
    });
    expect(of(file, "front")).toContainEqual(["between", 20, 1220]);
    expect(of(file, "low")).toContainEqual(["between", 0, 1160]);
  });
});
