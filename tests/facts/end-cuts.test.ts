import { describe, expect, it } from "vitest";
import { endCuts } from "../../src/facts/end-cuts.ts";
import type { Bar, FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { barOf, tee } from "../rules/base-frames.ts";
import { known, near } from "./known.ts";

function corner(a: Partial<Bar> = {}): FrameFile {
  return {
    format: 1,
    title: "corner",
    units: "mm-N-kg",
    bars: [
      { id: "a", profile: "40x40-8", from: [0, 0, 0], to: [500, 0, 0], ...a },
      { id: "b", profile: "40x40-8", from: [0, 0, 0], to: [0, 500, 0] },
    ],
  };
}

describe("end cuts", () => {
  it("an end drawn to another bar's centreline is cut at the face it meets", () => {
    const cuts = known(endCuts, tee());
    expect(cuts.questions).toEqual([]);
    // The post stands plumb: its face A looks +x.
    expect(cuts.of("rail", "from")).toMatchObject({ against: { bar: "post", face: "A" } });
    expect(cuts.of("rail", "from")?.plane.point).toEqual(near([20, 0, 500]));
    expect(cuts.of("rail", "from")?.plane.normal).toEqual(near([-1000, 0, 0]));
    expect(cuts.of("rail", "to")?.against).toBeUndefined();
    expect(cuts.of("rail", "to")?.plane.point).toEqual(near([600, 0, 500]));
  });

  it("two bars that end in one point ask, naming both ends and what to write", () => {
    const { questions } = known(endCuts, corner());
    expect(questions).toHaveLength(2);
    expect(questions[0]).toEqual({
      at: { kind: "end", id: "a/from" },
      found: "a/from drawn inside b, which also ends there",
      expected: "one bar that runs through, for the other to be cut against",
      mend: 'say it on one of them: "ends": {"from": {"butt": "b"}} cuts a at the face of b; {"cut": "as-drawn"} lets it run through',
    });
  });

  it.each([
    ["butt named on one", { from: { butt: "b" } }, [20, 0, 0], [0, 0, 0]],
    // a then starts at x = 0 and b runs into its side, at y = 20.
    ["one runs through", { from: { cut: "as-drawn" } }, [0, 0, 0], [0, 20, 0]],
  ] as const)("%s: the other is settled by it", (_, ends, a, b) => {
    const cuts = known(endCuts, corner({ ends }));
    expect(cuts.questions).toEqual([]);
    expect(cuts.of("a", "from")?.plane.point).toEqual(near(a));
    expect(cuts.of("b", "from")?.plane.point).toEqual(near(b));
  });

  it("bars in one line do not butt against each other's sides", () => {
    const file = corner();
    barOf(file, "b").from = [480, 0, 0];
    barOf(file, "b").to = [900, 0, 0];
    const cuts = known(endCuts, file);
    expect(cuts.questions).toEqual([]);
    expect(cuts.of("a", "to")?.plane.point).toEqual(near([500, 0, 0]));
    expect(cuts.of("b", "from")?.plane.point).toEqual(near([480, 0, 0]));
  });

  it("a plane is taken to look out of the bar, whichever way it was written", () => {
    for (const sign of [1, -1]) {
      const cuts = known(
        endCuts,
        corner({ ends: { to: { plane: [sign * 3, 0, sign * 4] }, from: { cut: "as-drawn" } } }),
      );
      expect(cuts.of("a", "to")?.plane.normal).toEqual(near([600, 0, 800]));
    }
  });

  it("drawn as they are when the frame says so", () => {
    const cuts = known(endCuts, { ...tee(), defaults: { cut: "as-drawn" } });
    expect(cuts.of("rail", "from")?.plane.point).toEqual(near([0, 0, 500]));
  });
});
