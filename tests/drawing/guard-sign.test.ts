import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type GuardSign, guardSign } from "../../src/drawing/guard-sign.ts";
import { cross, distance, length, subtract } from "../../src/geometry/vector.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { frameOf } from "../facts/known.ts";
import { edited } from "../rules/base-frames.ts";

/** A guard 800 x 700 mm of 45 mm bars: planes at x = 22.5 and 777.5 mm, low rails from 77.5 mm, top at 1322.5 mm; worked by hand. */
const base = JSON.parse(readFileSync("docs/rules/guard.within-reach.sound.frame.json", "utf8")) as FrameFile;

function sign(key: string, side: string, edit: (file: FrameFile) => void): GuardSign {
  const found = guardSign(frameOf(edited(base, edit)), "blade", key, side);
  if (!found) throw new Error(`no sign of ${key}`);
  return found;
}

const zone =
  (low: [number, number, number], high: [number, number, number]) =>
  (file: FrameFile): void => {
    file.zones = [{ id: "blade", box: [low, high], risk: "high" }];
  };
const areaOf = ({ filled }: GuardSign): number => {
  let sum = 0;
  for (let i = 0; i < filled.length; i += 3) {
    const [a, b, c] = filled.slice(i, i + 3);
    if (a && b && c) sum += length(cross(subtract(b, a), subtract(c, a))) / 2;
  }
  return sum;
};

describe("what a zone within reach is drawn with", () => {
  it("is the gap under the low rail and the way from its upper edge, as long as the finding says", () => {
    const { way, open, out } = sign("through", "-x side", zone([200, 300, 900], [400, 440, 1050]));
    expect(way && distance(way.from, way.to)).toBeCloseTo(Math.hypot(0.2 - 0.0225, 0.9 - 0.0775), 4);
    expect(way?.from[0]).toBeCloseTo(0.0225, 6);
    expect(way?.to[0]).toBeCloseTo(0.2, 6);
    const heights = open.flat().map(([, , z]) => z);
    expect([Math.min(...heights), Math.max(...heights)]).toEqual([expect.closeTo(0, 4), expect.closeTo(0.0775, 4)]);
    expect(out).toEqual([-1, 0, 0]);
  });

  it("is what a panel left out leaves open: 610 mm between posts by 495 mm between rails", () => {
    const left = sign("body", "-x side", (file) => {
      file.panels = (file.panels ?? []).filter(({ id }) => id !== "left-lower");
    });
    expect(areaOf(left)).toBeCloseTo(0.61 * 0.495, 3);
  });

  it("is the whole side and the level way behind it where people reach over it", () => {
    const over = sign("over", "+x side", (file) => {
      zone([300, 300, 1000], [400, 400, 1200])(file);
      file.panels = (file.panels ?? []).filter(({ id }) => id !== "roof");
    });
    expect(over.way && distance(over.way.from, over.way.to)).toBeCloseTo(0.7775 - 0.4, 6);
    // The highest point of the zone is the nearest to the top of the guard.
    expect(over.way?.from[2]).toBeCloseTo(1.2, 6);
    expect(Math.max(...over.open.flat().map(([, , z]) => z))).toBeCloseTo(1.3225, 4);
  });

  it("is the face of the zone before which nothing stands", () => {
    const far = zone([2000, 300, 900], [2200, 440, 1050]);
    const bare = sign("bare", "+x side", far);
    expect(bare.way).toBeUndefined();
    expect(bare.open.flat().map(([x]) => x)).toEqual([2.2, 2.2, 2.2, 2.2].map((x) => expect.closeTo(x, 9)));
    expect(areaOf(bare)).toBeCloseTo(0.14 * 0.15, 9);
  });
});
