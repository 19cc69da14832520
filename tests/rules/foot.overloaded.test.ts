import { describe, expect, it } from "vitest";
import { GRAVITY } from "../../src/facts/acting.ts";
import { factOf } from "../../src/facts/fact.ts";
import { footPushes } from "../../src/facts/foot-pushes.ts";
import { gathered, masses } from "../../src/facts/mass.ts";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/foot.overloaded.ts";
import { referenceCheck } from "../references/load-reference.ts";
import { gatedOnThree, moreByHand } from "./gated-table.ts";
import { frameFrom, table } from "./table.ts";

/** A table with a block of this mass, kg, over a point of the plan, mm. */
function blocked(mass: number, x = 0, y = 0): FrameFile {
  const file = table();
  file.masses = [{ id: "block", mass, centre: [x, y, 900], box: [400, 400, 100], on: ["top"], fixed: true }];
  return file;
}

const weightOf = (file: FrameFile): number => {
  const all = factOf(masses, frameFrom(file));
  // A foot does not bear itself.
  const carried = [...all.own, ...all.fixed].filter(({ ref }) => ref.kind !== "stand");
  return gathered(carried).mass * GRAVITY;
};
const hardest = (file: FrameFile): number =>
  factOf(footPushes, frameFrom(file)).reduce(
    (most, { push, odd }) => Math.max(most, push.measured, odd?.push.measured ?? 0),
    0,
  );

describe("push on feet", () => {
  it("is a quarter of the weight on each of four feet on an even floor", () => {
    const file = blocked(200);
    // Masses and loads are summed apart, by two facts.
    for (const { push } of factOf(footPushes, frameFrom(file)))
      expect(push.measured / (weightOf(file) / 4)).toBeCloseTo(1, 2);
  });

  it("loads.castor.ecc: W/4 (1 + 2 e/a) with the weight e off the middle (rigid base)", () => {
    const check = referenceCheck("loads", "loads.castor.ecc");
    // The reference: 3000 N, 150 mm off the middle of 1000 mm. Here a block so heavy that the table hardly counts.
    const file = blocked(1e5, 150);
    expect((hardest(file) / weightOf(file)) * 3000).toBeCloseTo(Number(check.expected.value), -1);
  });

  it("loads.castor.ecc: the same with equipment in the middle that is pulled out so far, whatever carries it", () => {
    const check = referenceCheck("loads", "loads.castor.ecc");
    const reference = Number(check.expected.value) / 3000;
    const drawers = (count: number, out: number, interlock: boolean, more: object = {}): number => {
      const file = table();
      const masses = Array.from({ length: count }, (_, i) => ({
        id: `drawer-${i + 1}`,
        mass: 1e5 / count,
        centre: [0, 0, 500],
        on: ["low-1", "low-2"],
        fixed: true,
        slides: { by: [out, 0, 0], interlock },
        ...more,
      }));
      Object.assign(file, { masses });
      return hardest(file) / (weightOf(table()) + 1e5 * GRAVITY);
    };
    expect(drawers(1, 150, true)).toBeCloseTo(reference, 2);
    // On one bar across the way out: the bar takes the moment.
    expect(drawers(1, 150, true, { on: ["low-3"] })).toBeCloseTo(reference, 2);
    // One of two, twice as far; both of two.
    expect(drawers(2, 300, true)).toBeCloseTo(reference, 2);
    expect(drawers(2, 150, false)).toBeCloseTo(reference, 2);
    // Taken off in use: then the frame alone.
    expect(drawers(1, 150, true, { fixed: false })).toBeCloseTo(reference, 2);
  });

  it("is half the weight on each of two feet across the corner where a stiff frame stands on an uneven floor", () => {
    const file = blocked(20);
    file.floor = { uneven: 20 };
    expect(hardest(file) / (weightOf(file) / 2)).toBeCloseTo(1, 1);
  });

  it("is told with the door that stands open, where shut the foot bears enough", () => {
    // Three feet: what stands over leg-1 comes down there.
    const laden = (mass: number): FrameFile => {
      const file = gatedOnThree();
      const block = { id: "block", mass, centre: [-500, -300, 900], on: ["front"], fixed: true };
      return { ...file, masses: [...(file.masses ?? []), block] } as unknown as FrameFile;
    };
    const shut = (file: FrameFile): number =>
      factOf(footPushes, frameFrom(file)).find(({ foot }) => foot.ref.id === "leg-1.foot")?.push.measured ?? 0;
    const [more] = moreByHand(Math.PI / 2);
    const capacity = 4000;
    const most = 1 + (capacity - more - shut(laden(1))) / GRAVITY;
    const wrong = proveRule(rule, laden(1), [
      {
        title: "a little less than it bears with the gate open",
        edit: (file) => Object.assign(file, laden(most - 1)),
        finds: [],
      },
      {
        title: "a little more, and less than it bears with the gate shut",
        edit: (file) => Object.assign(file, laden(most + 1)),
        finds: [
          {
            at: "leg-1.foot",
            key: "overloaded",
            measured: shut(laden(most + 1)) + more,
            within: 1e-4,
          },
        ],
      },
      {
        title: "a criterion that asks of casters alone",
        edit: (file) => Object.assign(file, laden(most - 1), { criteria: { "rolling-factor": 2 } }),
        finds: [],
      },
    ]);
    expect(shut(laden(most + 1))).toBeLessThan(capacity);
    expect(wrong).toEqual([]);
  });

  it("proves the rule", () => {
    // Four casters of 700 N, half as much again for rolling: 4 × 700 / 1.5 N of weight in all (more than loads.castor.3of4 asks).
    const most = (4 * 700) / 1.5 / GRAVITY - weightOf(rollingWith(0)) / GRAVITY;
    const wrong = proveRule(rule, table(), [
      { title: "casters with a little less than they bear", edit: roll(0.97 * most), finds: [] },
      {
        title: "casters with a little more than they bear",
        edit: roll(1.03 * most),
        finds: [1, 2, 3, 4].map((i) => ({
          at: `leg-${i}.caster`,
          key: "overloaded",
          measured: (1.5 * weightOf(rollingWith(1.03 * most))) / 4,
          within: 0.01,
        })),
      },
      {
        title: "that load on casters known to bear four alike",
        edit: (file) => {
          roll(1.03 * most)(file);
          file.criteria = { "rolling-factor": 1 };
        },
        finds: [],
      },
      {
        // 0.9 of what the wheels bear on an even floor, 1.5 × W/4; across the corner two bear W/2 each, a third more.
        title: "that stand on two wheels across the corner of an uneven floor",
        edit: (file) => {
          roll(0.9 * most)(file);
          file.floor = { uneven: 50 };
        },
        finds: [1, 2, 3, 4].map((i) => ({
          at: `leg-${i}.caster`,
          key: "overloaded",
          measured: weightOf(rollingWith(0.9 * most)) / 2,
          within: 0.02,
        })),
      },
      {
        title: "feet that stay where they are bear their share alone",
        edit: (file) => {
          Object.assign(file, blocked(1000));
        },
        finds: [],
      },
    ]);
    expect(wrong).toEqual([]);
  });
});

function roll(mass: number): (file: FrameFile) => void {
  return (file) => {
    if (mass > 0) Object.assign(file, blocked(mass));
    file.stands = [{ part: "caster-75-plate", bars: ["leg-1", "leg-2", "leg-3", "leg-4"] }];
    for (const bar of file.bars.slice(0, 4)) bar.from = [bar.from[0] as number, bar.from[1] as number, 100];
  };
}

function rollingWith(mass: number): FrameFile {
  const file = table();
  roll(mass)(file);
  return file;
}
