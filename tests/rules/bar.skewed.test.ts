import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/bar.skewed.ts";
import { barOf, tee } from "./base-frames.ts";

const DEGREE = Math.PI / 180;

/** The rail rises by so many degrees from the post. */
function leaning(degrees: number): (file: FrameFile) => void {
  return (file) => {
    barOf(file, "rail").to = [600, 0, 500 + 600 * Math.tan(degrees * DEGREE)];
  };
}

function turned(degrees: number): (file: FrameFile) => void {
  return (file) => {
    barOf(file, "rail").roll = degrees;
  };
}

it("bar.skewed: lean out of square and twist against the slots", () => {
  const wrong = proveRule(rule, tee(), [
    { title: "leans a little", edit: leaning(0.95), finds: [] },
    { title: "leans too much", edit: leaning(1.05), finds: [{ at: "rail", key: "leans", measured: 1.05 * DEGREE }] },
    {
      title: "leans down too much",
      edit: leaning(-1.05),
      finds: [{ at: "rail", key: "leans", measured: 1.05 * DEGREE }],
    },
    {
      title: "leans as far as a bracket follows",
      edit: leaning(4.9),
      finds: [{ at: "rail", key: "leans", measured: 4.9 * DEGREE }],
    },
    {
      title: "leans so far that no bracket goes on",
      edit: leaning(5.1),
      finds: [{ at: "rail", key: "bent", measured: 5.1 * DEGREE }],
    },
    {
      title: "that far, where the frame says that its brackets go on",
      edit: (file) => {
        leaning(5.1)(file);
        file.criteria = { "slot-bent": 6 };
      },
      finds: [{ at: "rail", key: "leans", measured: 5.1 * DEGREE }],
    },
    { title: "turned a little", edit: turned(0.95), finds: [] },
    { title: "turned too much", edit: turned(1.05), finds: [{ at: "rail", key: "twisted", measured: 1.05 * DEGREE }] },
    // A quarter turn brings another face where the first was.
    { title: "turned by a quarter and a little", edit: turned(90.95), finds: [] },
    {
      title: "turned too little for a quarter",
      edit: turned(88.95),
      finds: [{ at: "rail", key: "twisted", measured: 1.05 * DEGREE }],
    },
    {
      title: "more allowed for the bar",
      edit: (file) => {
        turned(1.05)(file);
        barOf(file, "rail").criteria = { "slot-skew": 1.2 };
      },
      finds: [],
    },
  ]);
  expect(wrong).toEqual([]);
});
