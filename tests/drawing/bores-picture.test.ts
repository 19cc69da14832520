import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { boresPicture, holePair } from "../../src/drawing/bores-picture.ts";
import { sceneOf } from "../../src/drawing/scene.ts";
import { boredHoles } from "../../src/facts/bored-holes.ts";
import { factOf } from "../../src/facts/fact.ts";
import { frameOf } from "../facts/known.ts";

it("draws the two holes that come too near, each through the bar with its rims, and no other", () => {
  const frame = frameOf(JSON.parse(readFileSync("docs/rules/bore.clash.fault.frame.json", "utf8")));
  const near = factOf(boredHoles, frame).pairs.reduce((a, b) => (b.metal < a.metal ? b : a));
  // Both access holes lie at one height: their axes meet, and they run the whole of a radius each into one another.
  expect(near.metal).toBeCloseTo(-(near.a.radius + near.b.radius), 6);
  const pair = holePair(frame, near.bar, near.metal);
  if (!pair) throw new Error("no pair");
  const svg = boresPicture(sceneOf(frame), pair, "two holes");
  expect([...svg.matchAll(/data-area="([^"]*)"/g)].map(([, name]) => name)).toEqual([
    "access hole of rail.from/1",
    "access hole of stay.from/1",
  ]);
  // Two rims and the two edges of the wall each.
  expect([...svg.matchAll(/data-band="access hole of rail\.from\/1"/g)]).toHaveLength(4);
  expect(svg).toContain('data-part="bar leg-1"');
  expect(svg).not.toContain('data-part="bar rail"');
  expect(holePair(frame, near.bar, near.metal + 1)).toBeUndefined();
});
