import { copyFileSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makePlace, type Place } from "./run.ts";

let place: Place;
beforeAll(async () => {
  place = await makePlace("real");
  copyFileSync("docs/demo/first-bench.frame.json", join(place.folder, "bench.frame.json"));
});
afterAll(() => place.remove());

describe("trysquare section", () => {
  it("prints properties in mm and in inches", async () => {
    const mm = await place.run(["section", "40x40-8"]);
    expect(mm.stdout).toMatch(/^40x40-8/);
    expect(mm.stdout).toMatch(/\n {2}A {2,}663 mm² {2,}area\n/);
    expect(mm.stdout).toMatch(/\n {2}mass {2,}1\.79 kg\/m/);
    expect(mm.stdout).toMatch(/\n {2}Iy {2,}9\.65 cm⁴/);
    // Two axes of symmetry: no product. The error is that which docs/method/section.md promises.
    expect(mm.stdout).toMatch(/\n {2}Iyz {2,}0 cm⁴/);
    expect(Number(/torsion; right within ±([\d.]+) %/.exec(mm.stdout)?.[1])).toBeLessThan(0.5);
    const inches = await place.run(["section", "40x40-8", "--units", "in"]);
    // 662.7 mm² = 1.03 in².
    expect(inches.stdout).toMatch(/\n {2}A {2,}1\.03 in²/);
    expect([mm.code, mm.stderr, inches.code]).toEqual([0, "", 0]);
  });

  it("gives SI in json, and draws into a file", async () => {
    const { code, stdout } = await place.run(["section", "40x80-8", "--as", "json", "--picture", "section.svg"]);
    const { section, massPerLength } = JSON.parse(stdout) as { section: { A: number }; massPerLength: number };
    expect(massPerLength).toBeCloseTo(section.A * 2700, 9);
    expect(readFileSync(join(place.folder, "section.svg"), "utf8")).toMatch(/^<svg [\s\S]*<\/svg>\n$/);
    expect(code).toBe(0);
  });

  it("lists the profiles in stock when none is named", async () => {
    const { code, stdout } = await place.run(["section"]);
    expect(stdout).toMatch(/\n {2}40x40-8 +40 mm × 40 mm, slot 8, standard\n/);
    expect(stdout).toMatch(/\n {2}1x1-1\/4 /);
    expect(code).toBe(0);
  });

  it.each([
    ["4040", "there are 40x40-"],
    ["nope", "`trysquare section` lists them all"],
  ])("says what there is instead of %s", async (name, words) => {
    const { code, stderr } = await place.run(["section", name]);
    expect(stderr).toContain(words);
    expect(code).toBe(2);
  });

  it("knows a profile by a near name only when told", async () => {
    const { code, stdout, stderr } = await place.run(["section", "45x135-11"]);
    expect(stderr).toContain('there is no profile "45x135-11"; did you mean 45x135-10?');
    expect([code, stdout]).toEqual([2, ""]);
  });
});

describe("trysquare statics", () => {
  it("sums every free body to nothing", async () => {
    const { code, stdout } = await place.run(["statics", "bench.frame.json", "--as", "json", "--bar", "front"]);
    const { bodies } = JSON.parse(stdout) as {
      bodies: { combination: string; residual: number; applied: { force: number[] }; bar?: { My: number } }[];
    };
    expect(bodies.length).toBeGreaterThan(20);
    for (const body of bodies) expect(body.residual, body.combination).toBeLessThan(1e-9);
    expect(bodies.every((body) => body.bar !== undefined)).toBe(true);
    expect(code).toBe(0);
  });

  it("says in words what each foot gives", async () => {
    const { stdout } = await place.run(["statics", "bench.frame.json"]);
    expect(stdout).toContain("self-weight + trays; joints typical\n");
    expect(stdout).toMatch(/leg-1\.foot {4}0 N, 0 N, \d+ N\n/);
    expect(stdout).toMatch(/free bodies; at most \d\.\de-\d+ left over\.\n$/);
  });

  it("says why it has no forces for a bar that nothing fastens", async () => {
    const frame = JSON.parse(readFileSync(join(place.folder, "bench.frame.json"), "utf8")) as { bars: unknown[] };
    frame.bars.push({ id: "alone", profile: "40x40-8", from: [200, 300, 400], to: [900, 300, 400] });
    place.write("alone.frame.json", JSON.stringify(frame));
    const { code, stderr, stdout } = await place.run(["statics", "alone.frame.json", "--bar", "alone"]);
    expect(stderr).toContain("--bar alone: nothing fastens it to the rest of the frame");
    expect(code).toBe(0);
    expect(stdout).toContain("free bodies");
  });

  it("refuses a bar that is not there, and a frame that stands on nothing", async () => {
    const wrong = await place.run(["statics", "bench.frame.json", "--bar", "frnt"]);
    expect(wrong.stderr).toContain("did you mean front?");
    expect(wrong.code).toBe(2);
    const frame = JSON.parse(readFileSync(join(place.folder, "bench.frame.json"), "utf8")) as { stands?: unknown };
    delete frame.stands;
    place.write("hanging.frame.json", JSON.stringify(frame));
    const hanging = await place.run(["statics", "hanging.frame.json"]);
    expect(hanging.stderr).toContain("what the frame stands on");
    expect([hanging.code, hanging.stdout]).toEqual([3, ""]);
  });
});
