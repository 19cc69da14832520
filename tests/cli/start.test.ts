import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { KINDS } from "../../src/cli/start/kinds.ts";
import { frameText } from "../../src/cli/start/layout.ts";
import { wishOf } from "../../src/cli/start/order.ts";
import { isFrameFile } from "../../src/model/validate.ts";
import { inspectText } from "../demo/inspect-demo.ts";
import { makePlace, type Place } from "./run.ts";
import { KIND_NAMES, type Order, SOME_SIZES } from "./start-sizes.ts";

/** Only its door is joined just below the height at which people push. */
const lowGuard: Order = {
  name: "guard",
  profile: "40x40-8",
  units: "mm-N-kg",
  length: "806",
  depth: "869.1",
  height: "1144.1",
};

describe("a frame that start draws", () => {
  it.each([...SOME_SIZES, lowGuard])(
    "comes out accept without a finding: $name of $profile, $length x $depth x $height",
    (order) => {
      const { kind, usual } = KINDS[order.name];
      const text = frameText(order.units, kind.draw(wishOf(kind, usual, order)));
      expect(isFrameFile(JSON.parse(text))).toBe(true);
      const report = inspectText(order.name, text);
      expect(report.problems).toEqual([]);
      expect(report.findings).toEqual([]);
      expect(report.undecided).toEqual([]);
      expect(report).toMatchObject({ verdict: "accept", complete: true });
    },
  );

  it("has one part a line", () => {
    const { kind, usual } = KINDS.bench;
    const text = frameText("mm-N-kg", kind.draw(wishOf(kind, usual, { units: "mm-N-kg" })));
    const { bars } = JSON.parse(text) as { bars: { id: string }[] };
    const lines = text.split("\n");
    for (const { id } of bars) expect(lines.filter((line) => line.startsWith(`    { "id": "${id}", `))).toHaveLength(1);
  });
});

describe("trysquare start", () => {
  let place: Place;
  beforeAll(async () => {
    place = await makePlace("real");
  });
  afterAll(() => place.remove());

  it.each(KIND_NAMES)("writes a %s that inspect accepts", async (name) => {
    expect((await place.run(["start", name, "--to", `${name}.frame.json`])).code).toBe(0);
    expect((await place.run(["inspect", `${name}.frame.json`, "--gate", "note"])).code).toBe(0);
    expect((await place.run(["start", name])).stdout).toBe(
      readFileSync(join(place.folder, `${name}.frame.json`), "utf8"),
    );
  });

  it("reads sizes with units of their own", async () => {
    const { stdout } = await place.run(["start", "bench", "--length", "2 m"]);
    expect(stdout).toContain('"to": [2000, 20, 862]'); // 900 mm less an 18 mm board and half a 40 mm bar
  });

  it("replaces no file", async () => {
    place.write("mine.frame.json", "mine");
    const { code, stderr } = await place.run(["start", "cart", "--to", "mine.frame.json"]);
    expect(code).toBe(2);
    expect(stderr).toContain("mine.frame.json is there already");
    expect(readFileSync(join(place.folder, "mine.frame.json"), "utf8")).toBe("mine");
  });

  it.each([
    ["a kind it does not draw", ["desk"], "bench, guard, cart, rack"],
    ["a length too short", ["bench", "--length", "100"], "has a length from"],
    [
      "a cart so short that a push lifts it",
      ["cart", "--length", "720", "--depth", "520", "--height", "820"],
      // 2 x 100 mm to the casters + 2 x 0.3 x (820 - 18 - 20 + 240) mm = 813.2 mm
      "has a length from 814 to 880 mm",
    ],
    ["a length beyond reason", ["rack", "--length", "1e9"], "has a length from"],
    ["a length beyond every number", ["bench", "--length", "1e400"], 'found "1e400", which is beyond every number'],
    ["a decimal comma", ["bench", "--length", "1,5 m"], 'write "1.5 m"'],
    ["a profile of the other units", ["bench", "--profile", "1.5x1.5-5/16"], "--units in-lbf-lb"],
    ["a double profile", ["bench", "--profile", "40x80-8"], "single profiles"],
    ["a profile too light for the kind", ["guard", "--profile", "30x30-6"], "too light for a guard"],
    ["units nobody has", ["bench", "--units", "furlong"], "in-lbf-lb"],
  ])("refuses %s", async (_, words, told) => {
    const { code, stdout, stderr } = await place.run(["start", ...words, "--to", "refused.frame.json"]);
    expect(code).toBe(2);
    expect(stdout).toBe("");
    expect(stderr).toContain(told);
    expect(existsSync(join(place.folder, "refused.frame.json"))).toBe(false);
  });
});
