import { describe, expect, it } from "vitest";
import { nearestFew } from "../../../src/model/text/nearest.ts";

describe("words as near as the nearest", () => {
  it("are all suggested, up to a number", () => {
    expect(nearestFew("40x40", ["20x20-5", "40x40-5", "40x40-8", "40x80-8"], 3)).toEqual(["40x40-5", "40x40-8"]);
    expect(nearestFew("rail-9", ["rail-1", "rail-2", "rail-3", "rail-4"], 3)).toEqual(["rail-1", "rail-2", "rail-3"]);
  });
  it("are none where nothing is near", () => {
    expect(nearestFew("zebra", ["40x40-8"], 3)).toEqual([]);
  });
});
