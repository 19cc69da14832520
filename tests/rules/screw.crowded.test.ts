import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import { rule } from "../../src/rules/screw.crowded.ts";
import { facingRails, setApart } from "./base-frames.ts";

/*
 * The upper bracket's screw a1 hangs under a face at z = 480 with 5 mm of bracket and 8 mm of head: its key leaves at z = 467,
 * 38 mm long, ending flat at 429. The lower bracket's head tops out at 500 − apart + 20 + 5 + 8 = 533 − apart, straight below.
 * Key to head: 429 − 533 + apart = apart − 104 mm.
 */
const key = (apart: number): number => (apart - 104) / 1000;

it("screw.crowded: key and heads after bolts.hexkey.6 and bolts.head.ISO4762.M8", () => {
  const wrong = proveRule(rule, facingRails(125), [
    { title: "the key just clears", edit: setApart(104.6), finds: [] },
    {
      title: "the key just does not clear",
      edit: setApart(104.4),
      finds: [
        { at: "rail.from/1/a1", key: "key", measured: key(104.4), within: 1e-5 },
        { at: "low.from/1/a1", key: "key", measured: key(104.4), within: 1e-5 },
      ],
    },
    {
      title: "more room asked for than the key has",
      edit: (file) => {
        setApart(105.5)(file);
        file.criteria = { "key-clearance": "1.6 mm" };
      },
      finds: [
        { at: "rail.from/1/a1", key: "key", measured: key(105.5), within: 1e-5 },
        { at: "low.from/1/a1", key: "key", measured: key(105.5), within: 1e-5 },
      ],
    },
    {
      // Heads of one bracket: a1 spans x from 35.5, z from 467 up; b1 stands out to x = 33, z up to 464.5. Apart along x and z alike.
      title: "more room asked for than the two heads in one bracket have",
      edit: (file) => {
        file.criteria = { "key-clearance": "2.6 mm" };
      },
      finds: [
        { at: "rail.from/1/a1", key: "heads", measured: 0.0025 },
        { at: "low.from/1/a1", key: "heads", measured: 0.0025 },
      ],
    },
    {
      title: "no more asked for than the heads have",
      edit: (file) => {
        file.criteria = { "key-clearance": "2.4 mm" };
      },
      finds: [],
    },
  ]);
  expect(wrong).toEqual([]);
});
