import { describe, expect, it } from "vitest";
import { endCuts } from "../../src/facts/end-cuts.ts";
import { factOf } from "../../src/facts/fact.ts";
import { readFrame } from "../../src/model/read-frame.ts";
import { builtinStock } from "../../src/model/stock/builtin-stock.ts";

type Point = readonly [number, number, number];
interface Drawn {
  readonly id: string;
  readonly from: Point;
  readonly to: Point;
}

function cutsOf(bars: readonly Drawn[]) {
  const file = {
    format: 1,
    title: "corner",
    units: "mm-N-kg",
    bars: bars.map((bar) => ({ profile: "40x40-8", ...bar })),
  };
  const bytes = new TextEncoder().encode(JSON.stringify(file));
  const { frame, problems } = readFrame({ file: "corner.frame.json", bytes, stock: builtinStock() });
  if (!frame) throw new Error(JSON.stringify(problems));
  return factOf(endCuts, frame);
}

const post: Drawn = { id: "post", from: [20, 20, 0], to: [20, 20, 500] };
const front: Drawn = { id: "front", from: [20, 20, 100], to: [600, 20, 100] };
const side: Drawn = { id: "side", from: [20, 20, 100], to: [20, 600, 100] };
const orders = [
  [post, front, side],
  [side, front, post],
  [front, post, side],
  [side, post, front],
];

describe("a corner of three bars drawn to one point", () => {
  it.each(orders)("is cut at the post, the only one that runs through, in any order of the file (%#)", (...bars) => {
    const cuts = cutsOf(bars);
    expect(cuts.questions).toEqual([]);
    // The post is 40 mm wide about x = y = 20 mm: its faces stand at 40 mm.
    expect(cuts.of("front", "from")?.against?.bar).toBe("post");
    expect(cuts.of("front", "from")?.plane.point[0]).toBeCloseTo(0.04, 12);
    expect(cuts.of("side", "from")?.against?.bar).toBe("post");
    expect(cuts.of("side", "from")?.plane.point[1]).toBeCloseTo(0.04, 12);
  });

  it("is cut at the long top rail where post and side rail both end in it", () => {
    const rail: Drawn = { id: "rail", from: [-100, 20, 500], to: [600, 20, 500] };
    const cuts = cutsOf([post, { id: "side", from: [20, 20, 500], to: [20, 600, 500] }, rail]);
    expect(cuts.questions).toEqual([]);
    expect(cuts.of("post", "to")?.against?.bar).toBe("rail");
    expect(cuts.of("post", "to")?.plane.point[2]).toBeCloseTo(0.48, 12);
    expect(cuts.of("side", "from")?.against?.bar).toBe("rail");
    expect(cuts.of("side", "from")?.plane.point[1]).toBeCloseTo(0.04, 12);
  });

  it("is still asked about where none of the three runs through", () => {
    const short: Drawn = { id: "post", from: [20, 20, 100], to: [20, 20, 500] };
    expect(
      cutsOf([short, front, side])
        .questions.map((question) => question.at.id)
        .sort(),
    ).toEqual(["front/from", "post/from", "side/from"]);
  });
});
