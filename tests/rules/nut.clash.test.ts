import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/nut.clash.ts";
import { barOf, facingRails, setApart } from "./base-frames.ts";

/** A bar under the rail, tied to it from above at this distance from the rail's from point, mm. */
const tiedUnder = (at: number) => (file: FrameFile) => {
  setApart(300)(file);
  file.bars.push({ id: "under", profile: "40x40-8", from: [70, 0, 460], to: [600, 0, 460] });
  file.ties = [{ id: "doubled", bars: ["rail", "under"], part: "side-tie-8", at: [at] }];
};

/* Screws b1 sit in the post at 480 − 22 = 458 mm and at 500 − apart + 20 + 22 = 542 − apart: with nuts 20 mm long, apart − 104 mm stay free. */
it("nut.clash: length of slot between two nuts", () => {
  const wrong = proveRule(rule, facingRails(120), [
    { title: "just beside each other", edit: setApart(104.1), finds: [] },
    { title: "touching", edit: setApart(104), finds: [] },
    {
      title: "just into each other",
      edit: setApart(103.9),
      finds: [{ at: "post", key: "clash", measured: -0.0001, within: 1e-5 }],
    },
    {
      title: "room asked for in one bar",
      edit: (file) => {
        setApart(108)(file);
        barOf(file, "post").criteria = { "nut-spacing": "5 mm" };
      },
      finds: [{ at: "post", key: "clash", measured: 0.004 }],
    },
    {
      title: "room asked for in another bar",
      edit: (file) => {
        setApart(108)(file);
        barOf(file, "rail").criteria = { "nut-spacing": "5 mm" };
      },
      finds: [],
    },
    {
      // The bracket's nut fills the rail from 32 to 52 mm; the head of a tie, 14 mm, as far as 7 mm before its screw.
      title: "the head of a tie beside a nut",
      edit: tiedUnder(59),
      finds: [],
    },
    {
      title: "the head of a tie in a nut",
      edit: tiedUnder(58.5),
      finds: [{ at: "rail", key: "clash", measured: -0.0005 }],
    },
    {
      // Drop-in nuts are 16 mm long: apart − 100 mm stay free.
      title: "shorter nuts",
      edit: (file) => {
        setApart(103.9)(file);
        file.defaults = { nut: "drop-in" };
      },
      finds: [],
    },
  ]);
  expect(wrong).toEqual([]);
});
