import { describe, expect, it } from "vitest";
import { factOf } from "../../src/facts/fact.ts";
import { looseParts } from "../../src/facts/loose-parts.ts";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/frame.loose.ts";
import { frameFrom, table } from "./table.ts";

function edited(edit: (file: FrameFile) => void): FrameFile {
  const file = table();
  edit(file);
  return file;
}

const onTwoFeet = (file: FrameFile): void => {
  file.stands = [{ part: "foot-40-M8", bars: ["leg-1", "leg-2"] }];
};
const strip = { id: "strip", profile: "40x40-8", from: [-300, -340, 800], to: [300, -340, 800] } as const;
const addStrip = (file: FrameFile): void => {
  (file.bars as object[]).push(strip);
};

describe("frame.loose", () => {
  it("says of a table on two feet that it falls about the line between them", () => {
    const [part, ...others] = factOf(looseParts, frameFrom(edited(onTwoFeet)));
    expect(others).toEqual([]);
    expect(part?.bars).toHaveLength(11);
    expect(part?.ways).toHaveLength(1);
    expect(part?.ways[0]).toMatch(/turn about x at .*leg-1.* and .*leg-2/);
  });

  it("proves the rule", () => {
    const wrong = proveRule(rule, table(), [
      { title: "only two feet", edit: onTwoFeet, finds: [{ at: "leg-1", key: "moves" }] },
      {
        title: "four feet in one line",
        edit: (file) => {
          file.stands = [{ part: "foot-40-M8", bars: ["leg-1", "leg-2"] }];
          (file.bars as object[]).push({ id: "leg-5", profile: "40x40-8", from: [0, -300, 50], to: [0, -300, 800] });
          (file.joints as object[]).push({ bars: ["leg-5"], ends: "to", by: "sides" });
          (file.stands as object[]).push({ part: "foot-40-M8", bars: ["leg-5"] });
        },
        finds: [{ at: "leg-1", key: "moves" }],
      },
      {
        title: "three feet carry it",
        edit: (file) => {
          file.stands = [{ part: "foot-40-M8", bars: ["leg-1", "leg-2", "leg-3"] }];
        },
        finds: [],
      },
      {
        title: "two feet anchored by one screw each are hinges",
        edit: (file) => {
          file.stands = [{ part: "foot-40-M8", bars: ["leg-1", "leg-2"], hold: "anchored" }];
        },
        finds: [{ at: "leg-1", key: "moves" }],
      },
      {
        title: "two anchored plates hold it",
        edit: (file) => {
          file.stands = [{ part: "caster-75-plate", bars: ["leg-1", "leg-2"], hold: "anchored" }];
        },
        finds: [],
      },
      {
        title: "casters may roll",
        edit: (file) => {
          file.stands = [{ part: "caster-75-plate", bars: ["leg-1", "leg-2", "leg-3", "leg-4"] }];
        },
        finds: [],
      },
      {
        title: "a strip tied to a rail, face on face, at two points",
        edit: (file) => {
          addStrip(file);
          file.ties = [{ id: "tie", bars: ["strip", "front"], part: "side-tie-8", at: [60, 540] }];
        },
        finds: [],
      },
      {
        title: "a strip that may turn about a pivot, as declared",
        edit: (file) => {
          addStrip(file);
          file.pivots = [
            { id: "pivot", bars: ["strip", "front"], part: "pivot-40", at: [-280, -320, 800], axis: "+y" },
          ];
        },
        finds: [],
      },
    ]);
    expect(wrong).toEqual([]);
  });
});
