import { copyFileSync, existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makePlace, type Place } from "./run.ts";

let place: Place;
beforeAll(async () => {
  place = await makePlace("real");
  copyFileSync("docs/rules/screw.no-room.fault.frame.json", join(place.folder, "table.frame.json"));
});
afterAll(() => place.remove());

describe("trysquare reach", () => {
  it("names for every screw the tool and what stops it", async () => {
    const { code, stdout } = await place.run(["reach", "table.frame.json"]);
    expect(stdout).toMatch(/^table\.frame\.json, \d+ screws\n/);
    expect(stdout).toContain(
      "  doubler/1/h1: hex-key-6 by its short arm does not go in: 32 mm free before under, 38 mm needed; covered in the end; no move along its slot was found that frees it\n",
    );
    expect(stdout).toMatch(/ {2}leg-1\.to\/1\/a1: hex-key-6 by its short arm turns [\d.]+°, 60° needed/);
    expect(code).toBe(0);
  });

  it("shows every way on one screw, and draws the one chosen", async () => {
    const { stdout } = await place.run(["reach", "table.frame.json", "leg-1.to/1/a1", "--picture", "key.svg"]);
    // The end of the ordinary key lies between two bars, that of the long one beyond them: there the hand has all that is looked for.
    expect(stdout).toMatch(
      /hex-key-6 by its short arm .*; the hand has 34.3 mm across\n[\s\S]*hex-key-long-6 by its short arm .*; the hand has 150 mm or more across\n/,
    );
    for (const way of ["hex-key-6 by its long arm", "t-handle-6 by its shaft", "bit-ratchet-6 by its bit"])
      expect(stdout).toContain(way);
    expect(readFileSync(join(place.folder, "key.svg"), "utf8")).toMatch(/^<svg [\s\S]*<\/svg>\n$/);
  });

  // Wherever that plate goes the rail looks at it: no move helps. Past a rail that ends in front of it, one does.
  it("names the least move along the slot that frees a screw, or says that none was found", async () => {
    expect((await place.run(["reach", "table.frame.json", "doubler/1/h1"])).stdout).toContain(
      "No move along its slot was found that frees it.\n",
    );
    const short = JSON.parse(readFileSync(join(place.folder, "table.frame.json"), "utf8")) as {
      bars: { id: string; to: number[]; ends?: object }[];
      joints: { bars: string[] }[];
    };
    const under = short.bars.find(({ id }) => id === "under");
    if (!under) throw new Error("no bar under the plate");
    under.to[0] = 0;
    for (const joint of short.joints) if (joint.bars[0] === "under") joint.bars = ["under/from"];
    under.ends = { to: { cut: "as-drawn" } };
    writeFileSync(join(place.folder, "short.frame.json"), JSON.stringify(short));
    const all = (await place.run(["reach", "short.frame.json"])).stdout;
    const [, by = "", end = ""] =
      /doubler\/1\/h1: .*; free once doubler is moved (\d+) mm towards (\S+)\n/.exec(all) ?? [];
    const json = JSON.parse(
      (await place.run(["reach", "short.frame.json", "doubler/1/h1", "--as", "json"])).stdout,
    ) as {
      screws: { leastMove: { moves: string; by: number; towards: string } }[];
    };
    expect(json.screws[0]?.leastMove).toEqual({ moves: "doubler", by: Number(by) / 1000, towards: end });
    expect(end).toBe("front/to");
  });

  it("gives SI in json", async () => {
    const { stdout } = await place.run(["reach", "table.frame.json", "doubler/1/h1", "--as", "json"]);
    const { screws } = JSON.parse(stdout) as {
      screws: { ways: { freeLength: number; lengthNeeded: number; handWidth: null }[] }[];
    };
    expect(screws[0]?.ways[0]?.freeLength).toBeCloseTo(0.032, 9);
    expect(screws[0]?.ways[0]?.lengthNeeded).toBeCloseTo(0.038, 9);
    expect(screws[0]?.ways[0]?.handWidth).toBeNull();
  });

  it("refuses a screw that is not there, a picture of all screws, and one over the frame", async () => {
    const wrong = await place.run(["reach", "table.frame.json", "leg-1.to/1/a2"]);
    expect(wrong.stderr).toContain('has no screw "leg-1.to/1/a2"; did you mean leg-1.to/1/a1?');
    const all = await place.run(["reach", "table.frame.json", "--picture", "all.svg"]);
    expect(all.stderr).toContain("--picture draws one screw: name it after the file");
    const over = await place.run(["reach", "table.frame.json", "leg-1.to/1/a1", "--picture", "table.frame.json"]);
    expect(over.stderr).toContain("would replace table.frame.json");
    expect([wrong.code, all.code, over.code]).toEqual([2, 2, 2]);
    expect(existsSync(join(place.folder, "all.svg"))).toBe(false);
  });
});
