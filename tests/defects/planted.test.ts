import { describe, expect, it } from "vitest";
import { builtInRules } from "../../src/rules/index.generated.ts";
import { frameText, SOUND_FRAMES } from "./inspect-frame.ts";
import { allFaults, trialsOf, unplanted } from "./plant.ts";

const faults = await allFaults();

describe("planted faults", () => {
  it("are there for every rule, and missed by name where one has none", () => {
    const ids = builtInRules.map(({ id }) => id);
    expect(unplanted(ids, faults)).toEqual([]);
    expect(unplanted([...ids, "guard.of-paper"], faults)).toEqual(["guard.of-paper"]);
    expect(unplanted(ids, [])).toEqual(ids);
  });

  it("are there for every message of every rule but one", () => {
    const planted = new Set(faults.map(({ fault: { rule, key } }) => `${rule}/${key}`));
    const told = builtInRules.flatMap(({ id, messages }) => Object.keys(messages).map((key) => `${id}/${key}`));
    // Only a sheet that is no rectangle is asked that, and no sound frame has one: a triangle in tests/rules/panel.misfit.test.ts.
    expect(told.filter((one) => !planted.has(one))).toEqual(["panel.misfit/leaves"]);
  });

  it("name rules, messages and frames that there are, in files named after them", () => {
    const rules = new Map(builtInRules.map((rule) => [rule.id, Object.keys(rule.messages)]));
    for (const { name, fault } of faults) {
      expect(name.startsWith(fault.rule), name).toBe(true);
      expect(rules.get(fault.rule), name).toContain(fault.key);
      for (const frame of Object.keys(fault.spots)) expect(SOUND_FRAMES, name).toContain(frame);
      for (const rule of Object.keys(fault.consequences ?? {}))
        expect([...rules.keys()], name).toContain(rule.split("/")[0]);
    }
  });

  // One fault of every rule, in the shortest frame it is planted in; `npm run bench:defects` plants all of them in all frames.
  const firsts = [...new Map(faults.toReversed().map((named) => [named.fault.rule, named])).values()].reverse();
  it.each(firsts)("$fault.rule: $fault.slip", (named) => {
    const [frame = ""] = Object.keys(named.fault.spots).sort((a, b) => frameText(a).length - frameText(b).length);
    for (const trial of trialsOf(named, frame, true)) {
      expect(trial.trouble).toBeUndefined();
      expect(trial.strange).toEqual([]);
      expect(trial.found).toBe(true);
    }
  });
});
