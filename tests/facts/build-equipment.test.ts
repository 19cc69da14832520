import { describe, expect, it } from "vitest";
import { buildSheetOf } from "../../src/cli/build-sheet-of.ts";
import { buildOrder } from "../../src/facts/build-order.ts";
import { buildPlan } from "../../src/facts/build-plan.ts";
import { factOf } from "../../src/facts/fact.ts";
import { lifted } from "../../src/facts/lifted.ts";
import { noSettings } from "../../src/house/settings.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { buildText } from "../../src/report/build/text.ts";
import { edited } from "../rules/base-frames.ts";
import { railUnderBeam } from "./build-frames.ts";
import { frameOf, one } from "./known.ts";

/** The beam carries a winch of 30 kg, more than the 25 kg that one lifts (ISO 11228-1) and less than the 33 kg that two do. */
function winched(groups: NonNullable<FrameFile["groups"]>) {
  const frame = frameOf(
    edited(railUnderBeam(), (file) => {
      file.masses = [{ id: "winch", mass: 30, centre: [300, 0, 850], on: ["beam"] }];
      file.groups = groups;
    }),
  );
  const sheet = buildSheetOf("winch.frame.json", frame, noSettings("2027-03-31"));
  return { frame, order: factOf(buildOrder, frame), text: [...buildText(sheet)].join("") };
}

describe("equipment", () => {
  it("of a group is bolted on once the group is square, before it is lifted in", () => {
    const { frame, order, text } = winched([{ id: "portal", parts: ["post-1", "post-2", "beam", "winch"] }]);
    const step = one(order.steps.find(({ what }) => what === "equipment"));
    expect([step.assembly, step.places.map(({ id }) => id)]).toEqual(["portal", ["winch"]]);
    const before = one(order.steps[step.number - 2]);
    expect([before.what, before.assembly]).toEqual(["square", "portal"]);
    expect(one(order.placedAt("rail"))).toBeGreaterThan(step.number);
    expect(text).toContain(`${step.number}  Bolt on winch, 30 kg, more than one person lifts: 2 people.`);
    expect(factOf(buildPlan, frame).flatMap(({ steps }) => steps.flatMap(({ equipment }) => equipment))).toHaveLength(
      1,
    );
  });

  it("that no group names goes on once the frame stands, after its last screw", () => {
    const { order, text } = winched([]);
    const step = one(order.steps.find(({ what }) => what === "equipment"));
    expect(step.assembly).toBe("");
    expect(
      Math.max(...order.steps.filter(({ tightens }) => tightens.length > 0).map(({ number }) => number)),
    ).toBeLessThan(step.number);
    expect(text).toContain("Once it stands, bolt on winch, 30 kg, more than one person lifts: 2 people.");
  });

  it("of a group of one part is bolted on that before it goes in, and lifted with every piece it is in", () => {
    const { frame, order, text } = winched([{ id: "hoist", parts: ["beam", "winch"] }]);
    expect(order.placedAt("winch")).toBe(order.placedAt("beam"));
    expect(order.steps.some(({ what }) => what === "equipment")).toBe(false);
    expect(text).toContain("Before it goes in, bolt on winch, 30 kg, more than one person lifts: 2 people.");
    expect(one(factOf(lifted, frame).find(({ what }) => what === "beam")).mass).toBeGreaterThan(30);
  });
});
