import { expect, it } from "vitest";
import { placements } from "../../src/facts/placements.ts";
import { edited, kitItem, tee } from "../rules/base-frames.ts";
import { known, near, one } from "./known.ts";

it("a bracket below puts its screws 22 mm from the corner at x = 20, z = 480, on the slot of either bar", () => {
  const [bracket] = known(placements, tee()).connectors;
  const [a, b] = one(bracket).screws;
  // 5 mm of bracket under each head.
  expect(a?.seat).toEqual(near([42, 0, 475]));
  expect(b?.seat).toEqual(near([25, 0, 458]));
  const landings = [a, b].map((screw) => (screw?.into.kind === "nut" ? screw.into.landing : undefined));
  expect(landings[0]).toMatchObject({ bar: "rail", face: "C", station: expect.closeTo(0.042, 12) });
  expect(landings[0]?.toEnd).toEqual({ end: "from", distance: expect.closeTo(0.022, 12) });
  expect(landings[1]).toMatchObject({ bar: "post", face: "A", station: expect.closeTo(0.458, 12) });
  for (const landing of landings) expect(landing?.off).toBeCloseTo(0, 12);
});

it("an end screw: head behind lips of 4 mm, 25 − 4 = 21 mm in the core, key through 40 mm of post", () => {
  const file = edited(tee(), (base) => {
    Object.assign(kitItem(base), { connector: "end-screw-8" });
    delete kitItem(base).on;
  });
  const placed = one(known(placements, file).connectors[0]);
  const screw = one(placed.screws[0]);
  expect(screw.seat).toEqual(near([16, 0, 500]));
  expect(screw.into).toMatchObject({ kind: "bore", engaged: expect.closeTo(0.021, 12) });
  expect(screw.drive.point).toEqual(near([-20, 0, 500]));
});
