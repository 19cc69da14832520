import { describe, expect, it } from "vitest";
import { endFacePicture } from "../../src/drawing/end-face-picture.ts";
import { bodies } from "../../src/facts/bodies.ts";
import { ends } from "../../src/facts/ends.ts";
import { factOf } from "../../src/facts/fact.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { frameOf, one } from "../facts/known.ts";
import { barOf, edited, tee } from "../rules/base-frames.ts";

type Point = readonly [number, number];

/** Rings of a path of straight lines. */
const ringsOf = (d: string): readonly (readonly Point[])[] =>
  d
    .split("Z")
    .filter((ring) => ring !== "")
    .map((ring) =>
      ring
        .slice(1)
        .split("L")
        .map((point) => point.split(" ").map(Number) as unknown as Point),
    );

/** Area of what is filled: outlines and holes run opposite ways (shoelace). */
function filled(d: string): number {
  let sum = 0;
  for (const ring of ringsOf(d))
    ring.forEach(([x, y], i) => {
      const [u, v] = ring[(i + 1) % ring.length] ?? [0, 0];
      sum += (x * v - u * y) / 2;
    });
  return Math.abs(sum);
}

const paths = (svg: string): readonly string[] => [...svg.matchAll(/ d="([^"]*)"/g)].map(([, d = ""]) => d);

function pictureOf(edit: (file: FrameFile) => void, id: string): { readonly svg: string; readonly share: number } {
  const frame = frameOf(edited(tee(), edit));
  const end = one(factOf(ends, frame).find(({ ref }) => ref.id === id));
  const svg = endFacePicture(one(factOf(bodies, frame).get(end.bar.id)), end);
  return { svg, share: end.openWithoutCap / end.metal };
}

describe("a cut end square on", () => {
  it("brings out as much of the metal as lies open, and nothing where all is covered", () => {
    for (const x of [0, 10, 20]) {
      const half = (file: FrameFile): void => {
        barOf(file, "rail").from = [20, x, 500];
        barOf(file, "rail").to = [600, x, 500];
        barOf(file, "rail").ends = { from: { cut: "as-drawn", cap: "none" } };
      };
      const { svg, share } = pictureOf(half, "rail/from");
      const [whole = "", open = ""] = paths(svg);
      expect(filled(open) / filled(whole)).toBeCloseTo(share, 2);
      if (x > 0) expect(share).toBeGreaterThan(0.1);
    }
  });

  it("shows it as it is seen from outside: what lies to the right of the post lies on the right", () => {
    const beside = (file: FrameFile): void => {
      barOf(file, "rail").from = [20, 20, 500];
      barOf(file, "rail").to = [600, 20, 500];
      barOf(file, "rail").ends = { from: { cut: "as-drawn", cap: "none" } };
    };
    const [, open = ""] = paths(pictureOf(beside, "rail/from").svg);
    // The end looks along −x; the eye before it looks along +x and has +y to its left. The post covers y < 20 mm: the right half.
    for (const [x] of ringsOf(open).flat()) expect(x).toBeLessThanOrEqual(75.01);
  });
});
