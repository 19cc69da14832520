import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import { rule } from "../../src/rules/end.raw.ts";
import { barOf, tee } from "./base-frames.ts";

it("end.raw: ends that the file leaves as sawn are named, within the reach of hands", () => {
  const wrong = proveRule(rule, tee(), [
    {
      title: "everything as sawn",
      edit: (file) => {
        file.defaults = { ends: "raw" };
      },
      finds: ["post/from", "post/to", "rail/from", "rail/to"].map((at) => ({ at, key: "raw" })),
    },
    {
      title: "one end as sawn",
      edit: (file) => {
        barOf(file, "rail").ends = { to: { edge: "raw" } };
      },
      finds: [{ at: "rail/to", key: "raw" }],
    },
    {
      title: "one end deburred among ends as sawn",
      edit: (file) => {
        file.defaults = { ends: "raw" };
        barOf(file, "post").ends = { both: { edge: "deburred" } };
      },
      finds: [
        { at: "rail/from", key: "raw" },
        { at: "rail/to", key: "raw" },
      ],
    },
    {
      title: "as sawn, out of reach but for the foot of the post",
      edit: (file) => {
        file.defaults = { ends: "raw" };
        file.criteria = { "touch-height": "499 mm" };
      },
      finds: [{ at: "post/from", key: "raw" }],
    },
    {
      title: "caps off, edges deburred",
      edit: (file) => {
        file.defaults = { caps: "none" };
      },
      finds: [],
    },
  ]);
  expect(wrong).toEqual([]);
});
