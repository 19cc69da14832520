import { chmodSync, mkdirSync, readdirSync, readFileSync, statSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { whole } from "../../src/model/generated/report-check.generated.js";
import { makePlace, type Place } from "./run.ts";

let place: Place;
beforeAll(async () => {
  place = await makePlace();
  place.write("a.frame.json", '{"verdict":"hold","findings":2}');
  place.write("b.frame.json", "{}");
  place.write("torn.frame.json", "{");
  place.write("many.frame.json", '{"verdict":"hold","findings":9000}');
});
afterAll(() => place.remove());

describe("the ticket on standard output", () => {
  it("arrives whole through a pipe, however long", async () => {
    const { stdout } = await place.run(["inspect", "many.frame.json"]);
    expect(stdout.length).toBeGreaterThan(2 * 65_536);
    expect(stdout).toContain("rail-8999");
    expect(stdout).toMatch(/a licensed engineer decide\.\n$/);
  });

  it("arrives whole at a slow reader", async () => {
    const { stdout } = await place.shell(
      "$T inspect many.frame.json | (sleep 0.3; wc -c); $T inspect many.frame.json --to whole.txt; wc -c < whole.txt",
    );
    const [piped, filed] = stdout.trim().split(/\s+/);
    expect(piped).toBe(filed);
  });

  it("is the same in every language, time zone, folder order and argument order", async () => {
    const usual = await place.run(["inspect", "a.frame.json", "b.frame.json"]);
    for (const env of [
      { LANG: "tr_TR.UTF-8", LC_ALL: "tr_TR.UTF-8" },
      { TZ: "Pacific/Kiritimati" },
      { COLUMNS: "40", TERM: "dumb", HOME: "/nowhere" },
    ]) {
      expect(await place.run(["inspect", "b.frame.json", "a.frame.json"], { env })).toEqual(usual);
    }
    expect((await place.run(["inspect", "./b.frame.json", "[ab].frame.json"])).stdout).toBe(usual.stdout);
  });

  it("is coloured only when asked, and NO_COLOR and FORCE_COLOR are heard", async () => {
    const args = ["inspect", "a.frame.json"];
    expect((await place.run(args)).stdout).not.toContain("\u001b");
    expect((await place.run([...args, "--colour", "always"])).stdout).toContain("\u001b[");
    expect((await place.run(args, { env: { FORCE_COLOR: "1" } })).stdout).toContain("\u001b[");
    expect((await place.run(args, { env: { FORCE_COLOR: "1", NO_COLOR: "1" } })).stdout).not.toContain("\u001b");
    await place.run([...args, "--to", "plain.txt"], { env: { FORCE_COLOR: "3" } });
    await place.run([...args, "--to", "coloured.txt", "--colour", "always"]);
    expect((await place.shell("grep -c $'\\x1b' plain.txt coloured.txt")).stdout).toMatch(
      /^plain.txt:0\ncoloured.txt:[1-9]/,
    );
  });

  it("shows hostile file names and part names as escapes, also on standard error", async () => {
    const name = "x\u001b[2J\u202e\u200b\r.frame.json";
    place.write(name, '{"verdict":"hold","findings":1,"name":"\\u001b[31m\\u202erail"}');
    place.write("y\u001b[2J.txt", "");
    const results = [
      await place.run(["inspect", name]),
      await place.run(["inspect", "no\u001b[2J.json"]),
      await place.run(["inspect", name, "--to", "y\u001b[2J.txt/z"]),
    ];
    for (const { stdout, stderr } of results)
      expect((stdout + stderr).replaceAll("\n", "")).not.toMatch(/[\p{Cc}\p{Cf}]/u);
    expect(results[0]?.stdout).toContain("\\u001b[31m\\u202erail (line 1)");
    expect(results.map((result) => result.code)).toEqual([1, 2, 4]);
  });
});

describe("machine reports on standard output", () => {
  it.each([
    ["findings", ["inspect", "a.frame.json"], 1],
    ["a torn file", ["inspect", "torn.frame.json", "a.frame.json"], 3],
    ["no file", ["inspect", "nowhere"], 2],
    ["unusable arguments", ["inspect", "a.frame.json", "--what"], 2],
    ["an unusable house file", ["inspect", "a.frame.json", "--house", "torn.frame.json"], 2],
    ["another report that cannot be delivered", ["inspect", "a.frame.json", "--as", "text", "--to", "no/where"], 4],
  ])("are one valid document with %s", async (_, args, code) => {
    const json = await place.run([...args, "--as", "json"]);
    expect(json.code).toBe(code);
    const document: unknown = JSON.parse(json.stdout);
    expect(whole(document), JSON.stringify(whole.errors)).toBe(true);
    const sarif = await place.run([...args, "--as", "sarif"]);
    expect(sarif.code).toBe(code);
    const { runs } = JSON.parse(sarif.stdout) as { runs: { invocations: { executionSuccessful: boolean }[] }[] };
    expect(runs[0]?.invocations[0]?.executionSuccessful).toBe(code === 1 || code === 4);
  });
});

describe("several reports of one run", () => {
  it("are written each to its place, with the ticket on standard output", async () => {
    const { code, stdout } = await place.run([
      "inspect",
      "a.frame.json",
      "--as",
      "sarif",
      "--to",
      "out.sarif",
      "--as",
      "json",
      "--to",
      "out.json",
    ]);
    expect(code).toBe(1);
    expect(stdout).toContain("a.frame.json · 1 bar");
    expect(JSON.parse(readFileSync(join(place.folder, "out.sarif"), "utf8"))).toMatchObject({ version: "2.1.0" });
    expect(JSON.parse(readFileSync(join(place.folder, "out.json"), "utf8"))).toMatchObject({ formatVersion: "1.0" });
  });

  it("leave standard output empty when the ticket has a file", async () => {
    const { stdout } = await place.run(["inspect", "a.frame.json", "--to", "ticket.txt"]);
    expect(stdout).toBe("");
    expect(readFileSync(join(place.folder, "ticket.txt"), "utf8")).toContain("HOLD");
  });

  it("go on when one of them cannot be delivered", async () => {
    const { code, stdout } = await place.run(["inspect", "a.frame.json", "--as", "json", "--to", "no/where.json"]);
    expect(code).toBe(4);
    expect(stdout).toContain("a licensed engineer decide.");
  });

  it("are refused whole when the disk takes no more, and the old file stands", async () => {
    place.write("full/old.txt", "old");
    const { stdout, stderr } = await place.shell(
      "ulimit -f 16; $T inspect many.frame.json --to full/old.txt; echo $?; cat full/old.txt; ls -A full",
    );
    expect(stdout).toBe("4\noldold.txt\n");
    expect(stderr).toContain("the file would become too large");
  });

  it("keep the mode of a file they replace, and leave no temporary file", async () => {
    const path = place.write("mode/old.txt", "old");
    chmodSync(path, 0o640);
    await place.run(["inspect", "a.frame.json", "--to", "mode/old.txt"]);
    expect(statSync(path).mode & 0o777).toBe(0o640);
    expect(readFileSync(path, "utf8")).not.toBe("old");
    expect(readdirSync(join(place.folder, "mode"))).toEqual(["old.txt"]);
  });

  it("follow a link inside the folder and refuse one that leads outside", async () => {
    const outside = join(place.folder, "..", "outside.txt");
    writeFileSync(outside, "mine");
    mkdirSync(join(place.folder, "links"));
    symlinkSync(outside, join(place.folder, "links", "out.txt"));
    place.write("links/inside.txt", "old");
    symlinkSync("inside.txt", join(place.folder, "links", "in.txt"));
    expect((await place.run(["inspect", "b.frame.json", "--to", "links/out.txt"])).code).toBe(4);
    expect(readFileSync(outside, "utf8")).toBe("mine");
    expect((await place.run(["inspect", "b.frame.json", "--to", "links/in.txt"])).code).toBe(0);
    expect(readFileSync(join(place.folder, "links", "inside.txt"), "utf8")).toContain("ACCEPT");
  });
});
