import { execFileSync } from "node:child_process";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makePlace, type Place } from "./run.ts";

let place: Place;
beforeAll(async () => {
  place = await makePlace();
  place.write("sound.frame.json", "{}");
  place.write("note.frame.json", '{"note":true,"findings":1}');
  place.write("hold.frame.json", '{"verdict":"hold","findings":1}');
  place.write("reject.frame.json", '{"verdict":"reject","findings":1}');
  place.write("torn.frame.json", "{");
  place.write("failing.frame.json", '{"fail":true}');
  place.write("crashing.frame.json", '{"crash":"out of steel"}');
  place.write("empty/nothing.txt", "");
  execFileSync("mkfifo", [`${place.folder}/pipe.frame.json`]);
});
afterAll(() => place.remove());

describe("the exit code", () => {
  it.each([
    ["all is sound", "sound.frame.json", 0],
    ["a note stands below the standard gate", "note.frame.json", 0],
    ["a hold stands at the standard gate", "hold.frame.json", 1],
    ["a reject stands above the standard gate", "reject.frame.json", 1],
    ["a hold stands below the gate", "hold.frame.json --gate reject", 0],
    ["a reject stands at the gate", "reject.frame.json --gate reject", 1],
    ["a note stands at the gate", "note.frame.json --gate note", 1],
    ["there is no gate", "reject.frame.json --gate none", 0],
    ["a frame cannot be read", "torn.frame.json", 3],
    ["a frame cannot be read beside findings: the graver code counts", "torn.frame.json reject.frame.json", 3],
    ["a frame cannot be read where there is no gate", "torn.frame.json --gate none", 3],
    ["a rule failed", "failing.frame.json", 3],
    ["the engine failed on one of two frames", "crashing.frame.json sound.frame.json", 3],
    ["a file is a pipe that nobody writes", "pipe.frame.json", 3],
  ])("is right when %s", async (_, words, code) => {
    expect((await place.run(["inspect", ...words.split(" ")])).code).toBe(code);
  });

  it.each([
    ["no command", [], "a command is missing"],
    ["an unknown command", ["inspct", "x"], 'there is no command "inspct"; did you mean inspect?'],
    ["an unknown option", ["inspect", "--gatte", "hold", "x"], "there is no option --gatte; did you mean --gate?"],
    ["no file", ["inspect"], "inspect needs at least 1 word after it: <files>"],
    ["a file that does not exist", ["inspect", "nowhere.json"], "no file matches nowhere.json"],
    ["a pattern that matches nothing", ["inspect", "sound.frame.json", "zz*.json"], "no file matches zz*.json"],
    ["a folder without frames", ["inspect", "empty"], "there is no *.frame.json in the folder empty"],
    ["an unknown gate", ["inspect", "--gate", "loud", "sound.frame.json"], "note, hold, reject, none"],
    ["an unknown form", ["inspect", "--as", "yaml", "sound.frame.json"], 'there is no report form "yaml"'],
    ["an option without its word", ["inspect", "sound.frame.json", "--as"], "needs a word after it"],
    [
      "two reports for standard output",
      ["inspect", "--as", "text", "--as", "text", "sound.frame.json"],
      "two reports for standard output",
    ],
    [
      "a report that would replace its input",
      ["inspect", "sound.frame.json", "--to", "./sound.frame.json"],
      "would replace sound.frame.json",
    ],
    [
      "a report that would replace the house",
      ["inspect", "sound.frame.json", "--house", "note.frame.json", "--to", "note.frame.json"],
      "would replace note.frame.json",
    ],
    ["more words than a command takes", ["rules", "a", "b"], "too many words: rules takes 1, not 2"],
    ["no kind", ["start"], "start needs 1 word after it: <kind>"],
    [
      "a level that is none",
      ["inspect", "sound.frame.json", "--gate", "loud"],
      '--gate does not take "loud": allowed choices are note',
    ],
    ["an empty name", ["inspect", ""], 'no file is called ""'],
    [
      "an empty target",
      ["inspect", "sound.frame.json", "--as", "json", "--to", ""],
      "--to is empty: name a file after it",
    ],
    [
      "a report named like a frame",
      ["inspect", "sound.frame.json", "--as", "json", "--to", "new.frame.json"],
      "--to new.frame.json is the name of a frame file",
    ],
    [
      "a report named like a house",
      ["inspect", "sound.frame.json", "--to", "trysquare.house.json"],
      "is the name of a house file",
    ],
    ["a list named like stock", ["cuts", "sound.frame.json", "--to", "My.Stock.JSON"], "is the name of a stock file"],
    [
      "a sheet named like a frame",
      ["sheet", "sound.frame.json", "--to", "a.frame.json"],
      "is the name of a frame file",
    ],
    [
      "a picture that would replace a frame",
      ["section", "40x40-8", "--picture", "sound.frame.json"],
      "--picture sound.frame.json is the name of a frame file",
    ],
    ["a first frame named like stock", ["start", "bench", "--to", "a.stock.json"], "name it a.frame.json"],
    ["a house file that does not exist", ["inspect", "sound.frame.json", "--house", "no.json"], "it does not exist"],
    ["an unknown rule", ["rules", "bar.sgas"], "did you mean bar.sags?"],
  ])("is 2 for %s, and says so in one line or two", async (_, args, words) => {
    const { code, stderr, stdout } = await place.run(args);
    expect(code).toBe(2);
    expect(stderr).toContain(words);
    expect(stderr.trim().split("\n").length).toBeLessThanOrEqual(2);
    expect(stderr).not.toMatch(/error:|at .*\.m?js/);
    expect(stdout).toBe("");
  });

  it.each([
    ["a folder", "empty"],
    ["a name in no folder", "nowhere/out.txt"],
    ["a device", "/dev/null"],
  ])("is 4 when the report should go to %s", async (_, target) => {
    const { code, stderr } = await place.run(["inspect", "reject.frame.json", "--to", target]);
    expect(code).toBe(4);
    expect(stderr).toContain(`the report could not be written to`);
  });

  it.each(["cuts", "build", "reach", "statics", "house"])(
    "is 2 when %s is asked about a frame that is not there",
    async (command) => {
      const { code, stderr } = await place.run([command, "none.frame.json"]);
      expect(code).toBe(2);
      expect(stderr).toContain("none.frame.json: it does not exist");
      expect(stderr).not.toContain("itself failed");
    },
  );

  it("is 4 when standard output is full, also for help", async () => {
    for (const words of ["inspect reject.frame.json", "inspect sound.frame.json --as json", "--help", "rules"]) {
      const { stderr, stdout } = await place.shell(`$T ${words} > /dev/full; echo $?`);
      expect(stdout).toBe("4\n");
      expect(stderr).toContain("standard output: the disk is full");
    }
  });

  it("is 4 when the reader goes away", async () => {
    place.write("many.frame.json", '{"verdict":"hold","findings":5000}');
    const { stdout } = await place.shell(`$T inspect many.frame.json | head -c 10 > /dev/null; echo $\{PIPESTATUS[0]}`);
    expect(stdout).toBe("4\n");
  });

  it("is 0 for help and version", async () => {
    expect(await place.run(["--version"])).toMatchObject({ code: 0, stdout: "0.0.0-test\n", stderr: "" });
    for (const args of [["--help"], ["help"], ["help", "inspect"]])
      expect(await place.run(args)).toMatchObject({ code: 0, stderr: "" });
    expect((await place.run(["inspect", "--help"])).stdout).toContain("--gate <level>");
  });
});
