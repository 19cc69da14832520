import { expect, it } from "vitest";
import { lifted } from "../../src/facts/lifted.ts";
import { sectionOf } from "../../src/facts/sections.ts";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/build.too-heavy.ts";
import { frameOf, known } from "../facts/known.ts";
import { barOf, tee } from "./base-frames.ts";

// A bar of 2700 kg/m³ (EN 1999-1-1, 3.2.5) over the area of its section.
const [profile] = frameOf(tee()).bars.map((bar) => bar.profile);
if (!profile) throw new Error("no bar");
const PER_METRE = 2700 * sectionOf(profile).A;

/** A post of this mass, kg. */
const post = (mass: number) => (file: FrameFile) => {
  barOf(file, "post").to = [0, 0, (mass / PER_METRE) * 1000];
};
const set = (criteria: NonNullable<FrameFile["criteria"]>, edit: (file: FrameFile) => void) => (file: FrameFile) => {
  edit(file);
  file.criteria = criteria;
};

/** The post of 4 kg and a motor of so many kg, in one group. */
const grouped = (motor: number) => (file: FrameFile) => {
  post(4)(file);
  file.masses = [{ id: "motor", mass: motor, centre: [0, 0, 300], on: ["post"] }];
  file.groups = [{ id: "driven", parts: ["post", "motor"] }];
};

const way = { "lift-travel": "600 mm", "lift-reach": "400 mm", "lift-height": "750 mm" };

it("build.too-heavy: ISO 11228-1, 25 kg for one, two thirds of both for two: 33.3 kg; index of NIOSH 94-110 (safety.iso11228.mref, safety.niosh.metric.*)", () => {
  const wrong = proveRule(rule, tee(), [
    { title: "just within for two", edit: post(33.3), finds: [] },
    {
      title: "just beyond for two",
      edit: post(33.4),
      finds: [{ at: "post", key: "heavy", measured: 33.4, within: 1e-3 }],
    },
    { title: "just within for one", edit: set({ lifters: 1 }, post(24.9)), finds: [] },
    {
      title: "just beyond for one",
      edit: set({ lifters: 1 }, post(25.1)),
      finds: [{ at: "post", key: "heavy", measured: 25.1, within: 1e-3 }],
    },
    { title: "three lift half of each: 37.5 kg", edit: set({ lifters: 3 }, post(37.4)), finds: [] },
    {
      title: "beyond for three",
      edit: set({ lifters: 3 }, post(37.6)),
      finds: [{ at: "post", key: "heavy", measured: 37.6, within: 1e-3 }],
    },
    { title: "a hoist", edit: set({ lifters: 0 }, post(80)), finds: [] },
    {
      title: "women build",
      edit: set({ lifters: 1, "lift-mass": "20 kg" }, post(20.1)),
      finds: [{ at: "post", key: "heavy", measured: 20.1, within: 1e-3 }],
    },
    // safety.niosh.metric.frame18: 18 kg held 40 cm off at 75 cm, moved 60 cm: 12.8656 kg recommended, index 1.39908.
    { title: "just within", edit: set({ ...way, "lifting-index": 1.4 }, post(18)), finds: [] },
    {
      title: "just beyond",
      edit: set({ ...way, "lifting-index": 1.398 }, post(18)),
      finds: [{ at: "post", key: "strained", measured: 1.39908, within: 1e-3 }],
    },
    // safety.niosh.metric.panel12: 6.48485 kg recommended, index 1.85047.
    {
      title: "far off, low, turned and badly held",
      edit: set(
        {
          "lift-reach": "550 mm",
          "lift-height": "200 mm",
          "lift-travel": "1000 mm",
          "lift-turn": "30°",
          "lift-grip-factor": 0.95,
          "lifting-index": 1.84,
        },
        post(12),
      ),
      finds: [{ at: "post", key: "strained", measured: 1.85047, within: 1e-3 }],
    },
    {
      title: "often",
      edit: set({ ...way, "lift-frequency-factor": 0.65 }, post(18)),
      finds: [{ at: "post", key: "strained", measured: 1.39908 / 0.65, within: 1e-3 }],
    },
    // Equipment that a group names is lifted with it: 4 kg of bar and 29.2 kg, 4 kg and 29.5 kg.
    { title: "a group with a motor, just within", edit: grouped(29.2), finds: [] },
    {
      title: "a group with a motor, just beyond",
      edit: grouped(29.5),
      finds: [{ at: "post", key: "heavy", measured: 33.5, within: 1e-3 }],
    },
    {
      title: "a motor put on once the frame stands",
      edit: (file) => {
        grouped(45)(file);
        delete file.groups;
      },
      finds: [],
    },
  ]);
  expect(wrong).toEqual([]);
});

it("weighs a group of several parts with the equipment it names", () => {
  const weigh = (motor: boolean): number => {
    const file = tee();
    file.masses = [{ id: "motor", mass: 45, centre: [0, 0, 300], on: ["post"] }];
    file.groups = [{ id: "both", parts: ["rail", "post", ...(motor ? ["motor"] : [])] }];
    return Math.max(...known(lifted, file).map((one) => one.mass));
  };
  expect(weigh(true) - weigh(false)).toBeCloseTo(45, 9);
});
