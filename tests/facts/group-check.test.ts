import { describe, expect, it } from "vitest";
import { checkGroups } from "../../src/facts/group-check.ts";
import type { Borne, ClampForce, ClampGroup } from "../../src/facts/joint-forces.ts";
import { elasticGroup } from "../../src/mechanics/fasteners/elastic-group.ts";
import { randomNumbers } from "../mechanics/random-frame.ts";

/** A group with its elastic shares times `part`; each screw holds 800 N. */
function shared(at: ClampGroup["at"], load: ClampGroup["load"], part = 1): Borne {
  const group: ClampGroup = { at, load };
  const { forces } = elasticGroup(
    at.map((place) => ({ at: place })),
    load,
  );
  const clamps = forces.map(([x, y]) => ({ shear: part * Math.hypot(x, y), pull: 0, bent: 0, group }) as ClampForce);
  return { clamps, turns: [] };
}
const check = (borne: Borne) => () => checkGroups(borne, () => 800);

describe("elastic shares beside the instantaneous centre (Drucker, Prager and Greenberg 1952)", () => {
  it("pass for groups of every shape, also where some screws hold less", () => {
    const random = randomNumbers(4);
    for (let k = 0; k < 20; k++) {
      const at = Array.from({ length: 2 + (k % 4) }, () => [random() / 10, random() / 10] as const);
      const load = {
        force: [300 * random(), -200 * random()] as const,
        at: [0.2 * random(), 0.1] as const,
        moment: 20 * random(),
      };
      expect(check(shared(at, load))).not.toThrow();
      expect(() => checkGroups(shared(at, load), ({ shear }) => 300 + shear)).not.toThrow();
    }
  });

  it("fail where they do not balance the load: two in a row, 2 c / √(c² + s²) of one, c = s²/e", () => {
    const [s, e] = [0.02, 0.12];
    const row = [
      [0, -s],
      [0, s],
    ] as const;
    const load = { force: [0, -600] as const, at: [e, 0] as const };
    // Elastic: half the load and P e / 2 s across, so the factor is 800 / 1824.8; about the centre it is the same for two in a row.
    expect(check(shared(row, load))).not.toThrow();
    expect(check(shared(row, load, 0.99))).toThrow(/instantaneous centre check/);
  });

  it("leave a group alone that nothing loads, and screws by themselves", () => {
    expect(
      check(
        shared(
          [
            [0, 0],
            [0.1, 0],
          ],
          { force: [0, 0], at: [0, 0] },
        ),
      ),
    ).not.toThrow();
    expect(check({ clamps: [{ shear: 500, pull: 0, bent: 0 } as ClampForce], turns: [] })).not.toThrow();
  });
});
