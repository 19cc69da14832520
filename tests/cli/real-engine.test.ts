import { copyFileSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { whole } from "../../src/model/generated/report-check.generated.js";
import { makePlace, type Place } from "./run.ts";

let place: Place;
beforeAll(async () => {
  place = await makePlace("real");
  copyFileSync("docs/demo/first-bench.frame.json", join(place.folder, "bench.frame.json"));
  // The rule that the page shows, with the library that the command itself uses.
  const page = readFileSync("docs/house-format.md", "utf8");
  const [, shown = ""] = /^```js\n([\s\S]*?)^```$/m.exec(page) ?? [];
  place.write("rules/short-bar.mjs", shown.replace('from "trysquare"', 'from "../../bundle/index.js"'));
  place.write("team.house.json", '{"format":1,"rules":["rules/short-bar.mjs"],"criteria":{"shortest-bar":"800 mm"}}');
});
afterAll(() => place.remove());

describe("the command with the built-in rules", () => {
  it("accepts a sound bench and says what it looked at", async () => {
    const { code, stdout, stderr } = await place.run(["inspect", "bench.frame.json"]);
    expect(stdout).toContain("bench.frame.json · 12 bars, 16 joints, 1 load case · ACCEPT");
    expect(stdout).toMatch(/\d+ rules ran on \d+ parts: \d+ met, 0 not met, 0 undecided, 0 conceded\./);
    expect([code, stderr]).toEqual([0, ""]);
  });

  it("finds a bar drawn away from the rest, in a valid json report", async () => {
    const text = readFileSync(join(place.folder, "bench.frame.json"), "utf8");
    const frame = JSON.parse(text) as { bars: object[] };
    frame.bars.push({ id: "lost", profile: "40x40-8", from: [0, 0, 3000], to: [500, 0, 3000] });
    place.write("faulty.frame.json", JSON.stringify(frame));
    const { code, stdout } = await place.run(["inspect", "faulty.frame.json", "--as", "json"]);
    const document = JSON.parse(stdout) as { frames: { findings: { rule: string; at: { id: string } }[] }[] };
    expect(whole(document)).toBe(true);
    expect(document.frames[0]?.findings.map(({ rule, at }) => [rule, at.id])).toContainEqual(["bar.adrift", "lost"]);
    expect(code).toBe(1);
  });

  it("runs a team's rule made with the library, at the limit the house sets", async () => {
    const { code, stdout } = await place.run(["inspect", "bench.frame.json", "--house", "team.house.json"]);
    expect(stdout).toMatch(/HOLD {2}is \d+ mm long; 800 mm needed/);
    expect(stdout).toContain("acme:bar.short: limit of the house");
    expect(code).toBe(1);
  });

  it("refuses in a line what is no frame", async () => {
    const { code, stdout } = await place.run(["inspect", "team.house.json"]);
    expect(code).toBe(3);
    expect(stdout).toContain("team.house.json · UNREAD");
  });
});
