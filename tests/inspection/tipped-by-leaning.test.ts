import { expect, it } from "vitest";
import { tippedByLeaning } from "../../src/inspection/tipped-by-leaning.ts";
import { rule as overstressed } from "../../src/rules/bar.overstressed.ts";
import { rule as gap } from "../../src/rules/joint.gap.ts";
import { frameFrom, table } from "../rules/table.ts";

// An empty table of 252 N on feet 1000 x 600 mm apart, leant on 0.8 m up: 1.35 × 252 N × 0.5 m / 0.8 m = 213 N tips it along x and 128 N
// along y, less than 1.5 × 250 N. With 40 kg bolted to its middle, 870 N in all, 544 N tip it along x and still 326 N along y.
it.each([
  [0, "+x, -x, +y or -y"],
  [40, "+y or -y"],
  [1000, undefined],
])("says which way a person who leans tips a table with %i kg on it, by moments about its feet", (mass, ways) => {
  const file = table();
  if (mass > 0) file.masses = [{ id: "block", mass, centre: [0, 0, 800], on: ["top"], fixed: true }];
  expect(tippedByLeaning(frameFrom(file), [overstressed])).toEqual(
    ways === undefined
      ? []
      : [`a person who leans on it along ${ways} tips it: what bars and joints bear until then is not judged`],
  );
});

it("says nothing where no rule asks how strong the frame is", () => {
  expect(tippedByLeaning(frameFrom(table()), [gap])).toEqual([]);
});
