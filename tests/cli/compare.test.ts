import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makePlace, type Place } from "./run.ts";

let place: Place;
/** A bench of eight bars as a draughtsman changed it. */
function revision(name: string, edit: (bench: { bars: { id: string }[]; loads: { line: number }[] }) => void): void {
  const bench = JSON.parse(readFileSync("docs/rules/frame.unbraced.sound.frame.json", "utf8"));
  edit(bench);
  place.write(name, JSON.stringify(bench));
}

beforeAll(async () => {
  place = await makePlace("real");
  revision("as-drawn.frame.json", () => {});
  revision("bare.frame.json", (bench) => Object.assign(bench, { notes: "again" }));
  revision("lost-bar.frame.json", ({ bars }) => {
    bars.push(Object.assign({ id: "lost" }, { profile: "40x40-8", from: [0, 0, 3000], to: [500, 0, 3000] }));
  });
  revision("doubtful.frame.json", ({ loads }) => {
    for (const load of loads) load.line = 0.00001;
  });
  place.write("torn.frame.json", '{ "format": 1, ');
});
afterAll(() => place.remove());

const compare = (...args: readonly string[]) => place.run(["compare", ...args]);

describe("the exit code of compare", () => {
  it("is 0 where nothing got worse", async () => {
    const { code, stdout } = await compare("as-drawn.frame.json", "bare.frame.json");
    expect(stdout).toContain("no new findings, 0 worse");
    expect(code).toBe(0);
  });

  it("is 1 for a new finding at the gate, and 0 for the same finding in both", async () => {
    expect(await compare("as-drawn.frame.json", "lost-bar.frame.json")).toMatchObject({ code: 1 });
    expect(await compare("lost-bar.frame.json", "lost-bar.frame.json")).toMatchObject({ code: 0 });
  });

  it("is 0 with the gate open, and where the faulty bar went away", async () => {
    expect(await compare("as-drawn.frame.json", "lost-bar.frame.json", "--gate", "none")).toMatchObject({ code: 0 });
    expect(await compare("lost-bar.frame.json", "as-drawn.frame.json")).toMatchObject({ code: 0 });
  });

  it("is 1 where the verdict got graver by a doubtful value, without a finding", async () => {
    const { code, stdout } = await compare("as-drawn.frame.json", "doubtful.frame.json");
    expect(stdout).toContain("(ACCEPT) to doubtful.frame.json (HOLD)");
    expect(stdout).toContain("no new findings, 0 worse");
    expect(code).toBe(1);
    expect(await compare("as-drawn.frame.json", "doubtful.frame.json", "--gate", "reject")).toMatchObject({ code: 0 });
  });

  it("is 3 where one of the two cannot be read", async () => {
    const { code, stdout, stderr } = await compare("as-drawn.frame.json", "torn.frame.json");
    expect(code).toBe(3);
    expect(stderr).toContain("torn.frame.json:1:");
    expect(stdout).toContain("Nothing was compared");
    expect(stdout).not.toContain("0 worse");
    const json = JSON.parse((await compare("lost-bar.frame.json", "torn.frame.json", "--as", "json")).stdout);
    expect(json).not.toHaveProperty("findings");
  });
});

describe("where compare puts its output", () => {
  const read = (name: string): string => readFileSync(join(place.folder, name), "utf8");

  it("writes a page, whole, and nothing to standard output", async () => {
    const { code, stdout } = await compare(
      "as-drawn.frame.json",
      "lost-bar.frame.json",
      "--as",
      "html",
      "--to",
      "page.html",
    );
    expect({ code, stdout }).toEqual({ code: 1, stdout: "" });
    const page = read("page.html");
    expect(page.startsWith("<!doctype html>")).toBe(true);
    expect(page.endsWith("</html>\n")).toBe(true);
    expect(page).toContain("lost");
    const shown = await compare("as-drawn.frame.json", "lost-bar.frame.json", "--as", "html");
    expect(shown.stdout).toBe(page);
  });

  it("writes text and json into files too", async () => {
    const [text, json] = [[], ["--as", "json"]].map((as) => ["as-drawn.frame.json", "bare.frame.json", ...as]);
    await compare(...(text ?? []), "--to", "page.txt");
    expect(read("page.txt")).toBe((await compare(...(text ?? []))).stdout);
    await compare(...(json ?? []), "--to", "page.json");
    expect(JSON.parse(read("page.json"))).toMatchObject({ findings: { new: [] } });
  });

  it("refuses to write over what it reads, or under the name of a frame", async () => {
    const before = read("bare.frame.json");
    const over = await compare("as-drawn.frame.json", "bare.frame.json", "--as", "html", "--to", "bare.frame.json");
    expect(over.code).toBe(2);
    expect(over.stderr).toContain("would replace bare.frame.json");
    expect(read("bare.frame.json")).toBe(before);
    expect(await compare("as-drawn.frame.json", "bare.frame.json", "--to", "c.frame.json")).toMatchObject({ code: 2 });
    expect(existsSync(join(place.folder, "c.frame.json"))).toBe(false);
  });

  it("exits with 4 where the page cannot be delivered", async () => {
    const { code, stderr } = await compare("as-drawn.frame.json", "bare.frame.json", "--to", "no-such-folder/c.html");
    expect(code).toBe(4);
    expect(stderr).toContain("no-such-folder");
  });

  it("writes the page of a file that cannot be read as well", async () => {
    const { code } = await compare("as-drawn.frame.json", "torn.frame.json", "--as", "html", "--to", "torn.html");
    expect(code).toBe(3);
    expect(read("torn.html")).toContain("neither parts nor findings can be compared");
  });
});
