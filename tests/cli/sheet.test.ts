import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makePlace, type Place } from "./run.ts";

let place: Place;
beforeAll(async () => {
  place = await makePlace("real");
  const bench = readFileSync("docs/rules/frame.unbraced.sound.frame.json", "utf8");
  place.write("sound.frame.json", bench);
  const { bars, ...rest } = JSON.parse(bench);
  const lost = { id: "lost", profile: "40x40-8", from: [0, 0, 3000], to: [500, 0, 3000] };
  place.write("faulty.frame.json", JSON.stringify({ ...rest, bars: [...bars, lost] }));
  place.write("torn.frame.json", '{ "format": 1, ');
});
afterAll(() => place.remove());

const sheet = (...args: readonly string[]) => place.run(["sheet", ...args]);
const read = (name: string): string => readFileSync(join(place.folder, name), "utf8");

describe("trysquare sheet", () => {
  it("exits with 0 for a sound frame, and writes one whole page and nothing to standard output", async () => {
    expect(await sheet("sound.frame.json", "--to", "sound.html")).toMatchObject({ code: 0, stdout: "", stderr: "" });
    const page = read("sound.html");
    expect(page.startsWith("<!doctype html>")).toBe(true);
    expect(page.endsWith("</html>\n")).toBe(true);
    expect(page).toContain("ACCEPT");
  });

  it("writes the same bytes to standard output", async () => {
    const { stdout } = await sheet("sound.frame.json");
    await sheet("sound.frame.json", "--to", "again.html");
    expect(stdout).toBe(read("again.html"));
  });

  it("exits with 1 for a finding at the gate, and 0 with the gate open", async () => {
    expect(await sheet("faulty.frame.json", "--to", "faulty.html")).toMatchObject({ code: 1 });
    expect(read("faulty.html")).toContain('data-at="bar lost"');
    expect(await sheet("faulty.frame.json", "--gate", "none", "--to", "open.html")).toMatchObject({ code: 0 });
    expect(read("open.html")).toBe(read("faulty.html"));
  });

  it("exits with 3 for a file that cannot be read, and its sheet says so", async () => {
    expect(await sheet("torn.frame.json", "--to", "torn.html")).toMatchObject({ code: 3 });
    expect(read("torn.html")).toContain("UNREAD");
    expect(await sheet("nowhere.frame.json", "--to", "nowhere.html")).toMatchObject({ code: 3 });
  });

  it("exits with 2 where the target is what is read, a source by its name, or empty", async () => {
    const before = read("sound.frame.json");
    const over = await sheet("sound.frame.json", "--to", "sound.frame.json");
    expect(over.code).toBe(2);
    expect(over.stderr).toContain("would replace sound.frame.json");
    expect(read("sound.frame.json")).toBe(before);
    for (const name of ["new.frame.json", "trysquare.house.json"]) {
      expect(await sheet("sound.frame.json", "--to", name)).toMatchObject({ code: 2, stdout: "" });
      expect(existsSync(join(place.folder, name))).toBe(false);
    }
    expect(await sheet("sound.frame.json", "--to", "")).toMatchObject({ code: 2 });
  });

  it("exits with 4 where the sheet cannot be delivered", async () => {
    const { code, stderr } = await sheet("sound.frame.json", "--to", "no-such-folder/sheet.html");
    expect(code).toBe(4);
    expect(stderr).toContain("no-such-folder");
  });
});
