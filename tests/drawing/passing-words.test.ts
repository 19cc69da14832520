import { describe, expect, it } from "vitest";
import { footWords, sumWords } from "../../src/drawing/passing-words.ts";
import type { LoadPath } from "../../src/facts/load-paths.ts";
import type { Vec3 } from "../../src/geometry/vector.ts";
import { ref } from "../../src/model/ref.ts";

const foot = (id: string, force: Vec3): LoadPath["feet"][number] => ({ ref: ref("stand", id), at: [0, 0, 0], force });
const sums = (borne: Vec3, applied: Vec3): string => sumWords({ borne, applied } as LoadPath, "mm-N-kg");

describe("what the feet bear, in words", () => {
  it("tells a leg that spreads by what it puts straight down, its thrust apart", () => {
    expect(footWords(foot("leg-1.foot", [40, 0, -300]), "mm-N-kg")).toBe("leg-1.foot 300 N, 40 N sideways");
    expect(footWords(foot("leg-2.foot", [1, 0, -300]), "mm-N-kg")).toBe("leg-2.foot 300 N");
  });

  it("sums what goes down, and what goes sideways only where it is applied", () => {
    expect(sums([0, 0, -999], [0, 0, -999])).toBe("the feet bear 999 N of 999 N applied");
    expect(sums([0, 250, -999], [0, 250, -999])).toBe(
      "the feet bear 999 N of 999 N applied downwards and 250 N of 250 N sideways",
    );
  });
});
