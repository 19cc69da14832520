import { expect, it } from "vitest";
import { plateEdges } from "../../src/facts/plate-edges.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { edited, tee } from "../rules/base-frames.ts";
import { known } from "./known.ts";

const plated = (part: string, omit: string[] = []): FrameFile =>
  edited(tee(), (file) => {
    file.fastenings = [{ id: "p", part, on: "+y", at: [0, 20, 500], turn: 90, holds: ["post", "rail"], omit }];
  });
const distances = (file: FrameFile) =>
  known(plateEdges, file).map(({ hole, distance }) => [hole, Math.round(distance * 1e7) / 1e4]);

it("a T 38 mm wide: its holes lie 19 mm from an edge, also at the ends of arms and stem", () => {
  // h2 lies in the crossing: 19 mm from the straight back, √2 · 19 from the inner corners. h4 is 21 mm past them.
  expect(distances(plated("plate-T-40"))).toEqual([
    ["h1", 19],
    ["h2", 19],
    ["h3", 19],
    ["h4", 19],
    ["h5", 19],
  ]);
});

it("holes without a screw do not count, nor do brackets", () => {
  expect(distances(plated("plate-I-40", ["h1", "h4"]))).toEqual([
    ["h2", 19],
    ["h3", 19],
  ]);
  expect(distances(tee())).toEqual([]);
});
