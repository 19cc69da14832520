import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile, KitItem } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/stock.mixed.ts";
import { tee } from "./base-frames.ts";

/** Brackets on three or four sides of the rail; keys 6, 5, 4 and 3 mm after ISO 4762. */
function screws(...names: readonly string[]): (file: FrameFile) => void {
  const sides = ["below", "above", "+y", "-y"] as const;
  return (file) => {
    const [first, ...rest] = names.map(
      (screw, i): KitItem => ({ connector: "inside-bracket-40", on: sides[i] ?? "below", screw }),
    );
    if (first) file.kits = { corner: [first, ...rest] };
  };
}

function secondSlot(file: FrameFile): void {
  file.bars.push({ id: "small", profile: "20x20-5", from: [0, 300, 0], to: [0, 300, 500] });
}

it("stock.mixed: slot sizes and sizes of key (bolts.head.ISO4762.M8, .M6, .M5, .M4: 6, 5, 4 and 3 mm)", () => {
  const wrong = proveRule(rule, tee(), [
    { title: "two slot sizes", edit: secondSlot, finds: [{ at: "frame", key: "slots", measured: 2 }] },
    {
      title: "two slot sizes allowed",
      edit: (file) => {
        secondSlot(file);
        file.criteria = { "slot-sizes": 2 };
      },
      finds: [],
    },
    { title: "three keys", edit: screws("M8x16", "M6x16", "M5x16"), finds: [] },
    {
      title: "four keys",
      edit: screws("M8x16", "M6x16", "M5x16", "M4x16"),
      finds: [{ at: "frame", key: "keys", measured: 4 }],
    },
    // A button head M8 takes the key of a cap head M6.
    { title: "four screws, three keys", edit: screws("M8x16", "M8x16-button", "M6x16", "M5x16"), finds: [] },
    {
      title: "two keys allowed",
      edit: (file) => {
        screws("M8x16", "M6x16", "M5x16")(file);
        file.criteria = { "key-sizes": 2 };
      },
      finds: [{ at: "frame", key: "keys", measured: 3 }],
    },
  ]);
  expect(wrong).toEqual([]);
});
