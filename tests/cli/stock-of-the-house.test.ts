import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makePlace, type Place } from "./run.ts";

let place: Place;
beforeAll(async () => {
  place = await makePlace("real");
  // A profile that only the workshop of this house has.
  const series = { name: "yard-40", about: "40 mm, from the yard", pitch: 40, slotSize: "8", weight: "standard" };
  const shape = {
    slot: { opening: 8.2, lip: 4.2, cavity: 18, depth: 12.5, web: 2.6 },
    bore: { diameter: 6.8, thread: "M8" },
    ...{ cornerRadius: 4, cornerWall: 1.9, cellWall: 2.2, closedWall: 2 },
    ...{ lipRating: "7.5 kN", lipSource: "pull-out test", torques: { M8: 12 } },
  };
  const stock = {
    format: 1,
    units: "mm-N-kg",
    title: "Yard",
    series: [{ ...series, material: "6060-T66", stockLength: "5.6 m", ...shape }],
    profiles: [{ kind: "generated", name: "yard-40x40", series: "yard-40", columns: 1, rows: 1 }],
  };
  place.write("shed/yard.stock.json", JSON.stringify(stock));
  place.write("shed/trysquare.house.json", JSON.stringify({ format: 1, stock: ["./yard.stock.json"] }));
  const bench = readFileSync("docs/rules/frame.unbraced.sound.frame.json", "utf8");
  const changed = bench.replaceAll('"40x40-8"', '"yard-40x40"');
  place.write("shed/bench.frame.json", changed);
  place.write("elsewhere/bench.frame.json", changed);
});
afterAll(() => place.remove());

describe("commands that look at a frame without rules", () => {
  const HOUSE = ["--house", "shed/trysquare.house.json"];
  it.each(["cuts", "statics", "build", "reach"])(
    "%s takes stock from the house, the nearest or the one named",
    async (command) => {
      const near = await place.run([command, "shed/bench.frame.json"]);
      expect(near).toMatchObject({ code: 0, stderr: "" });
      expect(near.stdout).not.toBe("");
      const named = await place.run([command, "elsewhere/bench.frame.json", ...HOUSE]);
      expect(named).toMatchObject({ code: 0, stderr: "" });
      const without = await place.run([command, "elsewhere/bench.frame.json"]);
      expect(without.code).toBe(3);
      expect(without.stderr).toContain("yard-40x40");
    },
  );

  it("lays bars out on the stock length of the house: 5.6 m", async () => {
    const { stdout } = await place.run(["cuts", "shed/bench.frame.json", "--as", "json"]);
    const { plans } = JSON.parse(stdout) as { plans: { profile: string; stock: number }[] };
    expect(plans).toMatchObject([{ profile: "yard-40x40", stock: 5.6 }]);
  });
});
