import { describe, expect, it } from "vitest";
import { type EndState, ends } from "../../src/facts/ends.ts";
import { area } from "../../src/geometry/polygon.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { builtinStock } from "../../src/model/stock/builtin-stock.ts";
import { barOf, edited, railFrom, tee } from "../rules/base-frames.ts";
import { known, one } from "./known.ts";

const section = one(builtinStock().profiles.get("40x40-8")).region;
const METAL = area(section);

function end(id: string, edit: (file: FrameFile) => void = () => {}): EndState {
  return one(known(ends, edited(tee(), edit)).find((state) => state.ref.id === id));
}
const uncapped = (file: FrameFile): void => {
  file.defaults = { ...file.defaults, caps: "none" };
};

/** Whether a point lies within a ring: the parity of the edges that a ray to +x crosses. */
function inside(ring: readonly (readonly [number, number])[], x: number, y: number): boolean {
  let odd = false;
  for (const [i, a] of ring.entries()) {
    const b = ring[(i + 1) % ring.length] ?? a;
    if (a[1] > y !== b[1] > y && x < a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0])) odd = !odd;
  }
  return odd;
}

describe("what covers a cut end", () => {
  it("an end on a post is covered whole and takes no cap", () => {
    const state = end("rail/from");
    expect(state).toMatchObject({ covers: ["post"], capped: false, open: 0, openWithoutCap: 0 });
    expect(state.metal).toBeCloseTo(METAL, 12);
    expect(state.height).toBeCloseTo(0.5, 12);
  });

  it("an end half on a post shows half its metal: the section is the same left and right", () => {
    const half = (file: FrameFile): void => {
      barOf(file, "rail").from = [20, 20, 500];
      barOf(file, "rail").to = [600, 20, 500];
      barOf(file, "rail").ends = { from: { cut: "as-drawn", cap: "none" } };
    };
    expect(end("rail/from", half).open).toBeCloseTo(METAL / 2, 9);
  });

  it("a gap of more than half a millimetre covers nothing", () => {
    expect(end("rail/from", railFrom(20.4)).openWithoutCap).toBe(0);
    expect(end("rail/from", railFrom(20.6)).openWithoutCap).toBeCloseTo(METAL, 12);
  });

  it("a gap of up to 4 mm lets no fingertip in (ISO 13857:2019, Table 4), but leaves room for a cap", () => {
    const off = (gap: number) => end("rail/from", (file) => [uncapped, railFrom(20 + gap)].map((edit) => edit(file)));
    expect(off(3.9)).toMatchObject({ open: 0, openWithoutCap: expect.closeTo(METAL, 12), covers: [] });
    expect(off(4.1).open).toBeCloseTo(METAL, 12);
    const over = (gap: number) =>
      end("post/from", (file) => {
        uncapped(file);
        barOf(file, "post").from = [0, 0, gap];
      });
    expect(over(3.9).open).toBe(0);
    expect(over(4.1).open).toBeCloseTo(METAL, 12);
  });

  it("the floor covers the end that stands on it, and only there", () => {
    expect(end("post/from")).toMatchObject({ covers: ["the floor"], openWithoutCap: 0 });
    const raised = (file: FrameFile): void => {
      barOf(file, "post").from = [0, 0, 1];
    };
    expect(end("post/from", raised).covers).toEqual([]);
  });

  it("a foot covers the disc of its collar, 38 mm wide", () => {
    const standing = (file: FrameFile): void => {
      file.stands = [{ part: "foot-40-M8", bars: ["post"] }];
      barOf(file, "post").from = [0, 0, 50];
      uncapped(file);
    };
    // The metal further than 19 mm from the middle, counted on a grid of 0.1 mm.
    let count = 0;
    for (let i = 0; i < 400; i += 1) {
      for (let j = 0; j < 400; j += 1) {
        const [x, y] = [(i - 199.5) * 1e-4, (j - 199.5) * 1e-4];
        if (Math.hypot(x, y) < 0.019 || !inside(section.outer, x, y)) continue;
        if (!section.holes.some((hole) => inside(hole, x, y))) count += 1;
      }
    }
    const counted = count * 1e-8;
    const state = end("post/from", standing);
    expect(state.covers).toHaveLength(1);
    // Within 1 %: the disc is a polygon of 64 sides, 0.16 % smaller than the round.
    expect(Math.abs(state.open / counted - 1)).toBeLessThan(0.01);
    expect(counted).toBeGreaterThan(METAL / 10);
  });

  it("a caster's plate, 77 mm square, covers it whole", () => {
    const rolling = (file: FrameFile): void => {
      file.stands = [{ part: "caster-75-plate", bars: ["post"] }];
      barOf(file, "post").from = [0, 0, 110];
      uncapped(file);
    };
    expect(end("post/from", rolling).open).toBe(0);
  });

  it("a sheet laid over the top of a post covers it; one of which it carries nothing does not", () => {
    const laid = (bars: [string, ...string[]]) => (file: FrameFile) => {
      file.panels = [{ id: "top", sheet: "plywood-12", held: "laid", bars, on: "+z", overhang: [0, 0, 0, 0] }];
    };
    expect(end("post/to", laid(["post"]))).toMatchObject({ covers: ["top"], openWithoutCap: 0 });
    expect(end("post/to", laid(["rail"]))).toMatchObject({ covers: [], capped: true });
  });
});

describe("what is left open", () => {
  it("closes under a cap by default, and says how much it would be without", () => {
    const state = end("rail/to");
    expect(state).toMatchObject({ covers: [], capped: true, open: 0 });
    expect(state.openWithoutCap).toBeCloseTo(METAL, 12);
  });

  it.each<[string, (file: FrameFile) => void]>([
    ["no caps by default", uncapped],
    [
      "no cap on this end",
      (file) => {
        barOf(file, "rail").ends = { to: { cap: "none" } };
      },
    ],
  ])("%s", (_, edit) => {
    const state = end("rail/to", edit);
    expect(state.capped).toBe(false);
    expect(state.open).toBeCloseTo(METAL, 12);
  });

  it("a named cap closes an end where the frame has none by default", () => {
    const named = (file: FrameFile): void => {
      uncapped(file);
      barOf(file, "rail").ends = { to: { cap: "cap-40x40" } };
    };
    expect(end("rail/to", named)).toMatchObject({ capped: true, open: 0 });
  });

  it("an end cut at 30° shows 1 / cos 30° as much metal as a square one", () => {
    const angled = (file: FrameFile): void => {
      uncapped(file);
      barOf(file, "rail").ends = { to: { angle: 30, about: "+y" } };
    };
    const state = end("rail/to", angled);
    expect(state.metal).toBeCloseTo((METAL * 2) / Math.sqrt(3), 12);
    expect(state.open).toBeCloseTo((METAL * 2) / Math.sqrt(3), 12);
  });

  it("counts heights over the floor", () => {
    const sunk = (file: FrameFile): void => {
      file.floor = { z: -100 };
    };
    expect(end("rail/to", sunk).height).toBeCloseTo(0.6, 12);
    expect(end("post/from", sunk).covers).toEqual([]);
  });
});
