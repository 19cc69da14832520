import { expect, it } from "vitest";
import { toolSweepPicture } from "../../src/drawing/tool-sweep-picture.ts";
import { toolRoom } from "../../src/facts/tool-room.ts";
import { toolScene } from "../../src/facts/tool-scene.ts";
import { known, one } from "../facts/known.ts";
import { tee } from "../rules/base-frames.ts";

const room = one(known(toolRoom, tee()).find(({ screw }) => screw.ref.id === "rail.from/1/a1"));
const trial = one(room.best);

it("sees the post beside the key: 40 mm wide, its face 22 mm off the axis, from its head outwards", () => {
  const scene = toolScene(room, trial);
  const post = one(scene.turn.inTheWay.find(({ of }) => of.id === "post"));
  const xs = post.ring.map(([x]) => x * 1000);
  const ys = post.ring.map(([, y]) => y * 1000);
  expect(Math.max(...xs)).toBeCloseTo(-22, 9);
  expect([Math.min(...ys), Math.max(...ys)]).toEqual([expect.closeTo(-20, 9), expect.closeTo(20, 9)]);
  // The handle is drawn straight away from the post.
  expect(Math.cos(scene.angle)).toBeCloseTo(1, 9);
  expect(scene.serves && scene.goesIn).toBe(true);
  // The fingers lie on the outer 60 of 93 mm, as wide as is looked for, from 28 to 38 mm over the head and 19 further out.
  const hand = one(scene.hand);
  expect([one(hand.inner), hand.radius, hand.halfWidth, hand.zMin, hand.zMax].map((c) => c * 1000)).toEqual(
    [33, 93, 75, 28, 57].map((c) => expect.closeTo(c, 9)),
  );
  // From the side the post stands left of the axis, along the way out of the screw.
  const slice = one(scene.side.find(({ of }) => of.id === "post"));
  expect(Math.max(...slice.ring.map(([x]) => x * 1000))).toBeCloseTo(-22, 9);
});

it("draws two views with the free arc tinted and every part named", () => {
  const svg = toolSweepPicture(room, trial, toolScene(room, trial), { title: "a & b", lines: ["c < d"] });
  expect(svg).toMatch(/^<svg [\s\S]*<\/svg>\n$/);
  expect(svg).toContain("a &amp; b");
  expect(svg).toContain("c &lt; d");
  expect(svg).toContain("<title>bar post</title>");
  expect(svg.match(/fill="#cfe3d4" stroke="none"/g)).toHaveLength(1);
  expect(svg.match(/stroke-dasharray="1.5 3"/g)).toHaveLength(2);
  expect(svg).not.toMatch(/script|style=|href|NaN|Infinity/);
});
