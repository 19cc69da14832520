import { expect, it } from "vitest";
import { lineWords } from "../../src/facts/axis-words.ts";

const turned = (degrees: number): readonly [number, number, number] => {
  const angle = (degrees * Math.PI) / 180;
  return [Math.cos(angle), 0, Math.sin(angle)];
};

it.each([
  [turned(0), "along x"],
  [turned(1.9), "along x"],
  [turned(2.3), "nearly along x"],
  [turned(14.9), "nearly along x"],
  [turned(30), "30° from x towards +z"],
  [turned(-30), "30° from x towards -z"],
  [turned(150), "30° from x towards -z"],
  [turned(60), "30° from z towards +x"],
  [turned(89), "along z"],
  [[0.58, 0.58, 0.577], "along [0.58, 0.58, 0.58]"],
] as const)("a way %j goes %s", (way, words) => {
  expect(lineWords(way)).toBe(words);
});
