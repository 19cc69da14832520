import { describe, expect, it } from "vitest";
import { cureBudget } from "../../src/inspection/cure-budget.ts";

describe("changed frames tried in search of cures", () => {
  it.each([
    [12, 16],
    [100, 16],
    [200, 8],
    [800, 2],
    [1994, 1],
    [3200, 1],
    [3201, 0],
  ])("of a frame of %i bars are %i when nothing is said", (bars, copies) => {
    expect(cureBudget("usual", bars)).toBe(copies);
  });

  it("are as many as were asked for, however large the frame", () => {
    expect(cureBudget(40, 1994)).toBe(40);
    expect(cureBudget(0, 12)).toBe(0);
  });
});
