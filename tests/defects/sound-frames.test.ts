import { describe, expect, it } from "vitest";
import { frameText, inspectFrame, SOUND_FRAMES } from "./inspect-frame.ts";

/** What each frame must bring to the suite, as a drawing office would sort its work. */
const KINDS = ["workstation", "trolley", "rack", "guard", "gantry", "stand", "platform", "display", "trestle", "base"];

describe("the sound frames of the defect suite", () => {
  it("are at least twelve, of 8 to 40 bars each, in both unit systems", () => {
    expect(SOUND_FRAMES.length).toBeGreaterThanOrEqual(12);
    for (const kind of KINDS) expect(SOUND_FRAMES.join(" ")).toContain(kind);
    const units = new Set(SOUND_FRAMES.map((name) => (JSON.parse(frameText(name)) as { units: string }).units));
    expect([...units].sort()).toEqual(["in-lbf-lb", "mm-N-kg"]);
  });

  it.each(SOUND_FRAMES)("%s is accepted without a finding, a remark or anything undecided", (name) => {
    const report = inspectFrame(name, frameText(name));
    expect(report.problems).toEqual([]);
    expect(report.findings).toEqual([]);
    expect(report.undecided).toEqual([]);
    expect(report).toMatchObject({ verdict: "accept", complete: true });
    expect(report.counts.bars).toBeGreaterThanOrEqual(8);
    expect(report.counts.bars).toBeLessThanOrEqual(40);
  });
});
