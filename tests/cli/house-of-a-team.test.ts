import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makePlace, type Place } from "./run.ts";

let place: Place;
beforeAll(async () => {
  place = await makePlace();
  place.write("plain/a.frame.json", '{"verdict":"hold","findings":1}');
  place.write("team/a.frame.json", "{}");
  place.write("team/trysquare.house.json", '{"format":1,"rules":["gap.mjs"],"strictness":{"acme:joint.gap":"reject"}}');
  place.write(
    "team/gap.mjs",
    `import { writeFileSync } from "node:fs";
     writeFileSync("ran", "");
     export const rule = { api: 1, id: "acme:joint.gap", title: "Gaps are closed", group: "joints", level: "hold", basis: ["own"], needs: {},
       criteria: {}, messages: { open: { text: "is open" } }, *inspect() { yield { kind: "stated", at: { kind: "joint", id: "j" } }; } };`,
  );
  place.write("odd/trysquare.house.json", '{"format":1,"strictness":{"bar.sgas":"off"}}');
  place.write("odd/a.frame.json", "{}");
});
afterAll(() => place.remove());

describe("a house file", () => {
  it("that is merely found beside frames runs no code, and says how to be trusted", async () => {
    const { code, stderr } = await place.run(["inspect", "plain", "team"]);
    expect(code).toBe(2);
    expect(stderr).toContain("team/trysquare.house.json lists rules of a team");
    expect(stderr).toContain("--house team/trysquare.house.json");
    expect((await place.run(["house", "team/a.frame.json"])).stdout).toContain("team/gap.mjs");
    expect((await place.run(["house", "--house", "team/trysquare.house.json"])).code).toBe(0);
    expect((await place.shell("test -e ran; echo $?")).stdout).toBe("1\n");
  });

  it("that the command line names brings its rules, listed with the others", async () => {
    const { code, stdout } = await place.run([
      "inspect",
      "team",
      "plain",
      "--house",
      "team/trysquare.house.json",
      "--as",
      "json",
    ]);
    expect(code).toBe(1);
    const { rules, frames } = JSON.parse(stdout) as {
      rules: { id: string }[];
      frames: { findings: { rule: string }[] }[];
    };
    expect(rules.map((rule) => rule.id)).toEqual(["bar.sags", "acme:joint.gap"]);
    expect(frames.map(({ findings }) => findings.map((finding) => finding.rule))).toEqual([
      ["bar.sags", "acme:joint.gap"],
      ["acme:joint.gap"],
    ]);
    expect((await place.shell("test -e ran; echo $?")).stdout).toBe("0\n");
  });

  it("that names an unknown rule is refused with place and suggestion before anything is inspected", async () => {
    const { code, stderr, stdout } = await place.run(["inspect", "odd", "plain"]);
    expect(code).toBe(2);
    expect(stdout).toBe("");
    expect(stderr).toContain(
      'odd/trysquare.house.json:1:27, at /strictness/bar.sgas: found rule "bar.sgas", which does not exist',
    );
    expect(stderr).toContain('write "bar.sags"');
  });

  it("holds for frames below it, and the nearest one counts", async () => {
    place.write("near/trysquare.house.json", '{"format":1,"strictness":{"bar.sags":"note"}}');
    place.write("near/deep/er/a.frame.json", "{}");
    place.write("near/a.frame.json", "{}");
    place.write("near/deep/trysquare.house.json", '{"format":1,"strictness":{"bar.sags":"off"}}');
    expect((await place.run(["house", "near/deep/er/a.frame.json"])).stdout).toContain(
      "bar.sags: off, not hold; says near/deep/trysquare.house.json",
    );
    expect((await place.run(["house", "near/a.frame.json"])).stdout).toContain("bar.sags: note, not hold");
    expect((await place.run(["house"])).stdout).toContain("There is no house file");
    expect(await place.run(["house", "near/nofile.frame.json"])).toMatchObject({ code: 2, stdout: "" });
  });
});
