import { copyFileSync, existsSync, readFileSync } from "node:fs";
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
      "  doubler/1/h1: hex-key-6 by its short arm does not go in: 32 mm free before under, 38 mm needed; covered in the end\n",
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
