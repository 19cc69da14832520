import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { edgePicture } from "../../src/drawing/edge-picture.ts";
import { holeNearEnd } from "../../src/drawing/edge-places.ts";
import { sceneOf } from "../../src/drawing/scene.ts";
import { boredHoles } from "../../src/facts/bored-holes.ts";
import { factOf } from "../../src/facts/fact.ts";
import { frameOf } from "../facts/known.ts";

it("draws a hole near the end of its bar with its distance and the one that is needed, both to scale", () => {
  const frame = frameOf(JSON.parse(readFileSync("docs/rules/hole.near-edge.fault.frame.json", "utf8")));
  // The file has the hole 8 mm from the from end, 9 mm wide: 1.2 times that is 10.8 mm.
  const [near] = factOf(boredHoles, frame).edges;
  const place = holeNearEnd(frame, "low-3", near?.toEnd ?? 0);
  if (!place) throw new Error("no hole");
  expect(place.distance).toBeCloseTo(0.008, 9);
  const words = { found: "8 mm", wanted: "10.8 mm needed", least: 0.0108 };
  const svg = edgePicture(sceneOf(frame), place, words, "a hole near an end");
  const spans = [...svg.matchAll(/data-dimension="([^"]*)"><path d="M([\d.]+) [\d.]+L[^M]*M([\d.]+) /g)].map(
    ([, said, from, to]) => [said, Math.abs(Number(from) - Number(to))] as const,
  );
  expect(spans.map(([said]) => said)).toEqual(["8 mm", "10.8 mm needed"]);
  const [[, found] = ["", 0], [, wanted] = ["", 0]] = spans;
  expect(wanted / found).toBeCloseTo(10.8 / 8, 2);
  expect(svg).toContain('data-part="bar low-3"');
  expect(holeNearEnd(frame, "low-3", 0.009)).toBeUndefined();
});
