import { describe, expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/screw.misfit.ts";
import { referenceCheck } from "../references/load-reference.ts";
import { kitItem, tee } from "./base-frames.ts";

/** A second rail on the other side of the post, held by an end screw M8x25-button whose head lies behind lips of 4 mm. */
function base(): FrameFile {
  const file = tee();
  file.kits = { ...file.kits, core: [{ connector: "end-screw-8" }] };
  file.bars.push({ id: "west", profile: "40x40-8", from: [0, 0, 300], to: [-600, 0, 300] });
  file.joints?.push({ bars: ["west"], ends: "from", by: "core" });
  return file;
}

function screw(name: string): (file: FrameFile) => void {
  return (file) => {
    kitItem(file).screw = name;
  };
}

const both = (key: string, measured: number) =>
  ["rail.from/1/a1", "rail.from/1/b1"].map((at) => ({ at, key, measured }));

/** Lengths from full thread in the nut to the slot floor less what is to be spare, mm: as in the check bolts.length.window. */
function window(given: Readonly<Record<string, number>>): { min: number; max: number } {
  const { t_bracket = 0, washer = 0, lip = 0, nut = 0, slot_depth = 0, spare = 0 } = given;
  return { min: t_bracket + washer + lip + nut, max: t_bracket + washer + slot_depth - spare };
}

describe("screw.misfit", () => {
  it("bolts.length.window: the working used below", () => {
    const check = referenceCheck("bolts", "bolts.length.window");
    const given = Object.fromEntries(Object.entries(check.inputs).map(([name, { value }]) => [name, Number(value)]));
    const { min, max } = check.expected.value as { min: number; max: number };
    expect(window(given).min).toBeCloseTo(min, 9);
    expect(window(given).max).toBeCloseTo(max, 9);
    // Without a washer in a slot 12.5 mm deep: from 15 to 17 mm, so M8x16 fits, M8x14 is short and M8x18 bottoms.
    expect(window({ t_bracket: 5, lip: 4, nut: 6, slot_depth: 12.5, spare: 0.5 })).toEqual({ min: 15, max: 17 });
  });

  it("finds screws too long and too short", () => {
    const wrong = proveRule(rule, base(), [
      // Room 12.5 − (18 − 5) = −0.5 mm.
      { title: "bottoms", edit: screw("M8x18"), finds: both("bottoms", -0.0005) },
      // Engaged 14 − 5 − 4 = 5 mm; 0.9 x 6 = 5.4 mm wanted.
      { title: "short", edit: screw("M8x14"), finds: both("short", 0.005) },
      // Does not reach the nut at all: none engaged, never less.
      {
        title: "much too short",
        edit: (file) => {
          kitItem(file).screw = "M4x8";
        },
        finds: both("short", 0),
      },
      {
        title: "short, but less thread will do",
        edit: (file) => {
          screw("M8x14")(file);
          file.criteria = { "nut-thread": 0.8 };
        },
        finds: [],
      },
      {
        // Room of M8x16 is 12.5 − 11 = 1.5 mm.
        title: "more room asked for at the tip",
        edit: (file) => {
          file.criteria = { "tip-clearance": "1.6 mm" };
        },
        finds: both("bottoms", 0.0015),
      },
      {
        // 20 − 4 = 16 mm in the core, the 16 mm it needs.
        title: "end screw just long enough",
        edit: (file) => {
          kitItem(file, "core").screw = "M8x20-button";
        },
        finds: [],
      },
      {
        title: "end screw too short",
        edit: (file) => {
          kitItem(file, "core").screw = "M8x18-button";
        },
        finds: [{ at: "west.from/1/a1", key: "shallow", measured: 0.014 }],
      },
    ]);
    expect(wrong).toEqual([]);
  });
});
