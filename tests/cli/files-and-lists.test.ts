import { mkdirSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makePlace, type Place } from "./run.ts";

let place: Place;
beforeAll(async () => {
  place = await makePlace();
  for (const name of ["b", "a", "Z", "sub/c", "sub/deep/d", "odd[1]", "sub/.hidden/e", "é"])
    place.write(`f/${name}.frame.json`, "{}");
  place.write("f/sub/other.json", "{}");
  mkdirSync(join(place.folder, "outside"));
  place.write("outside/x.frame.json", "{}");
  symlinkSync("../outside", join(place.folder, "f", "link"));
});
afterAll(() => place.remove());

async function inspected(args: readonly string[], cwd?: string): Promise<readonly string[]> {
  const { stdout } = await place.run(["inspect", ...args, "--as", "json"], cwd === undefined ? {} : { cwd });
  return (JSON.parse(stdout) as { frames: { file: string }[] }).frames.map((frame) => frame.file);
}

describe("the files of a run", () => {
  it("are those named, each once, by the code units of their names", async () => {
    expect(
      await inspected([
        "f/b.frame.json",
        "f/é.frame.json",
        "f/a.frame.json",
        "f/Z.frame.json",
        "./f/../f/a.frame.json",
      ]),
    ).toEqual(["f/Z.frame.json", "f/a.frame.json", "f/b.frame.json", "f/é.frame.json"]);
  });

  it("are the frame files in a folder, at any depth, links not followed", async () => {
    expect(await inspected(["f/sub"])).toEqual(["f/sub/c.frame.json", "f/sub/deep/d.frame.json"]);
    expect(await inspected(["f"])).not.toContain("f/link/x.frame.json");
  });

  it("are those a pattern matches; a file whose name looks like a pattern is itself", async () => {
    expect(await inspected(["f/*.frame.json"])).toHaveLength(5);
    expect(await inspected(["f/sub/**/*.json"])).toEqual([
      "f/sub/c.frame.json",
      "f/sub/deep/d.frame.json",
      "f/sub/other.json",
    ]);
    expect(await inspected(["f/{a,b}.frame.json"])).toEqual(["f/a.frame.json", "f/b.frame.json"]);
    expect(await inspected(["f/odd[1].frame.json"])).toEqual(["f/odd[1].frame.json"]);
  });

  it("are named from the working folder, never absolutely", async () => {
    expect(await inspected([join(place.folder, "f/a.frame.json")])).toEqual(["f/a.frame.json"]);
    expect(await inspected(["../f/a.frame.json"], join(place.folder, "outside"))).toEqual(["../f/a.frame.json"]);
    const { stdout, stderr } = await place.run(["inspect", join(place.folder, "f"), "--as", "sarif"]);
    expect(stdout + stderr).not.toContain(place.folder);
  });

  it("may be many: flat memory and no file left open", async () => {
    for (let i = 0; i < 1500; i++) place.write(`many/${i}.frame.json`, "{}");
    const { stdout, code } = await place.shell("ulimit -n 64; $T inspect many | tail -1");
    expect([stdout, code]).toEqual(["1500 frames: 1500 accept · no findings\n", 0]);
  });
});

describe("trysquare rules", () => {
  it("lists rules by group, or one in full, as text or json", async () => {
    expect((await place.run(["rules"])).stdout).toBe("bars\n  bar.sags  hold  Bars stay straight under load\n\n");
    const { stdout } = await place.run(["rules", "bar.sags"]);
    expect(stdout).toContain("criterion sag: span / 300\n  how far a bar may sag; common practice\n");
    expect(stdout).toContain("says: sags <sag>\n");
    const json = JSON.parse((await place.run(["rules", "bar.sags", "--as", "json"])).stdout) as {
      rules: { id: string }[];
    };
    expect(json.rules.map((rule) => rule.id)).toEqual(["bar.sags"]);
  });
});
