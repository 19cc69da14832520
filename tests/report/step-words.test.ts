import { expect, it } from "vitest";
import { wayWords } from "../../src/report/build/step-words.ts";

it.each([
  [[0, 0, -1], "from above"],
  [[0, 0, 1], "from below"],
  [[-1, 0, 0], "moving along -x"],
  [[0, 1, 0], "moving along +y"],
  // A brace at 45°, and a bar that goes in level across a corner.
  [[Math.SQRT1_2, 0, -Math.SQRT1_2], "moving along +x and down"],
  [[0, -Math.SQRT1_2, Math.SQRT1_2], "moving along -y and up"],
  [[0.6, 0.8, 0], "moving along +x and +y"],
  // 10° off an axis is that axis.
  [[0.985, 0.174, 0], "moving along +x"],
] as const)("a part that moves in %j goes %j", (way, words) => {
  expect(wayWords({ path: { legs: [way], past: [] }, lying: false })).toBe(words);
});

it.each([
  [{ path: undefined, lying: false }, ""],
  [{ path: { legs: [[0, 0, 1]], past: [] }, lying: true }, "from its underside"],
  [
    {
      path: {
        legs: [
          [-1, 0, 0],
          [0, 0, 1],
        ],
        past: [],
      },
      lying: false,
    },
    "moving along -x, then up",
  ],
  [
    { path: { legs: [[0, 0, -1]], past: ["front", "back"] }, lying: false },
    "turned past front and back, the last bit down",
  ],
] as const)("and %j reads %j", (step, words) => {
  expect(wayWords(step)).toBe(words);
});
