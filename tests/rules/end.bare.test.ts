import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { Bar, FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/end.bare.ts";
import { barOf, tee } from "./base-frames.ts";

/** Section of 40x40-8, m²: checked against its drawing in tests/model/stock. */
const METAL = 662.67469e-6;

/** Puts the tee into a box of sheets with a roof, closed on these sides; its own posts stand on the floor and end under the roof. */
const boxed = (closed: readonly string[]) => (file: FrameFile) => {
  file.defaults = { caps: "none" };
  const post = (id: string, x: number, y: number): Bar => ({
    id,
    profile: "40x40-8",
    from: [x, y, 0],
    to: [x, y, 1500],
    ends: { to: { cap: "cap-40x40" } },
  });
  file.bars.push(post("a", -400, -400), post("b", 900, -400), post("c", 900, 400), post("d", -400, 400));
  const sides = { "-x": ["a", "d"], "+x": ["b", "c"], "-y": ["a", "b"], "+y": ["d", "c"] } as const;
  file.panels = [
    { id: "roof", sheet: "polycarbonate-5", held: "laid", bars: ["a", "b", "c", "d"] },
    ...Object.entries(sides)
      .filter(([on]) => closed.includes(on))
      .map(([on, bars]) => ({
        id: `side${on}`,
        sheet: "polycarbonate-5",
        held: "on-face" as const,
        on: on as "+x",
        bars: [...bars] as [string, string],
        screws: { pitch: 300 },
      })),
  ];
};

it("end.bare: caps, seats and the floor cover cut ends; what stays open is measured", () => {
  const wrong = proveRule(rule, tee(), [
    {
      // rail/from is butted, post/from stands on the floor; rail/to looks +x and post/to looks up: two sides, two findings.
      title: "no caps",
      edit: (file) => {
        file.defaults = { caps: "none" };
      },
      finds: [
        { at: "rail/to", key: "bare", measured: METAL },
        { at: "post/to", key: "bare", measured: METAL },
      ],
    },
    {
      // Two ends look +x: one finding, at one of them, of the larger area.
      title: "two open ends on one side",
      edit: (file) => {
        file.defaults = { caps: "none" };
        barOf(file, "post").ends = { to: { cap: "cap-40x40" } };
        file.bars.push({ id: "twin", profile: "20x20-5", from: [0, 0, 700], to: [600, 0, 700], roll: 0 });
        barOf(file, "twin").ends = { from: { cut: "butt" } };
      },
      finds: [{ at: "rail/to", key: "bare", measured: METAL }],
    },
    {
      // The rail lies with half its breadth beside the post: half of its symmetric section is open.
      title: "half a seat",
      edit: (file) => {
        file.defaults = { caps: "none" };
        barOf(file, "post").ends = { to: { cap: "cap-40x40" } };
        const rail = barOf(file, "rail");
        rail.from = [20, 20, 500];
        rail.to = [600, 20, 500];
        rail.ends = { from: { cut: "as-drawn" }, to: { cap: "cap-40x40" } };
        file.joints = [];
      },
      finds: [{ at: "rail/from", key: "bare", measured: METAL / 2 }],
    },
    {
      title: "a limit just over the section",
      edit: (file) => {
        file.defaults = { caps: "none" };
        file.criteria = { "open-end-area": "670 mm²" };
      },
      finds: [],
    },
    {
      title: "a limit just under the section",
      edit: (file) => {
        file.defaults = { caps: "none" };
        file.criteria = { "open-end-area": "655 mm²" };
        barOf(file, "rail").criteria = { "open-end-area": "700 mm²" };
      },
      finds: [{ at: "post/to", key: "bare", measured: METAL }],
    },
    {
      // The top of the post stands 1000 mm over the floor, the rail 500 mm.
      title: "open ends above the reach of hands",
      edit: (file) => {
        file.defaults = { caps: "none" };
        file.criteria = { "touch-height": "999 mm" };
      },
      finds: [{ at: "rail/to", key: "bare", measured: METAL }],
    },
    {
      // Four posts and sheets make a box round the tee, open where its door swings: hands come in.
      title: "behind sheets, but with one side open",
      edit: boxed(["-x", "+x", "+y"]),
      finds: [
        { at: "rail/to", key: "bare", measured: METAL },
        { at: "post/to", key: "bare", measured: METAL },
      ],
    },
    { title: "behind sheets on all sides and under a roof", edit: boxed(["-x", "+x", "-y", "+y"]), finds: [] },
    {
      title: "the same over a floor one metre lower",
      edit: (file) => {
        file.defaults = { caps: "none" };
        file.criteria = { "touch-height": "1400 mm" };
        file.floor = { z: -1000 };
      },
      finds: [{ at: "post/from", key: "bare", measured: METAL }],
    },
  ]);
  expect(wrong).toEqual([]);
});
