import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/joint.loosens.ts";
import { barData } from "./gantry.ts";
import { hungRails, RAIL } from "./hung-rails.ts";

const TRUSTED = 819;
/** The force on a rail for which its end passes this much in service, N. */
const inService = (shear: number): number => 2 * shear - barData("40x40-8").weight * RAIL;
const ends = ["back.from", "back.to", "front.from", "front.to"];
const all = (shear: number) =>
  ends.map((at) => ({ at, key: "loosens", measured: (0.5 * shear) / TRUSTED, within: 0.012 }));

function base(): FrameFile {
  return { ...hungRails(inService(780)), site: { vibration: "strong" } };
}

function passing(shear: number, more: (file: FrameFile) => void = () => undefined): (file: FrameFile) => void {
  return (file) => {
    file.loads = [{ case: "goods", on: ["front", "back"], force: inService(shear), at: "middle" }];
    more(file);
  };
}

it("joint.loosens: half of the weight comes and goes on one screw", () => {
  const wrong = proveRule(rule, base(), [
    { title: "a heavier load", edit: passing(860), finds: all(860) },
    { title: "nothing shakes", edit: passing(860, (file) => delete file.site), finds: [] },
    {
      title: "light vibration",
      edit: passing(860, (file) => {
        file.site = { vibration: "light" };
      }),
      finds: [],
    },
    {
      title: "thread lock",
      edit: passing(860, (file) => {
        file.defaults = { lock: "thread-lock" };
      }),
      finds: [],
    },
    {
      title: "smoother faces",
      edit: passing(780, (file) => {
        file.criteria = { "joint-friction": 0.14 };
      }),
      finds: all((780 * 0.15) / 0.14),
    },
    {
      title: "a larger factor",
      edit: passing(780, (file) => {
        file.criteria = { "slip-factor": 1.35 };
      }),
      finds: all((780 * 1.35) / 1.25),
    },
    {
      title: "a stricter house",
      edit: passing(780, (file) => {
        file.criteria = { "loosening-utilisation": 0.4 };
      }),
      finds: all(780),
    },
  ]);
  expect(wrong).toEqual([]);
});
