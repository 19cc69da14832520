import { execFile } from "node:child_process";
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

/** What a rule stands on, copied so that a rule can be started beside the real ones. */
const NEEDED = [
  ".ci",
  ".gitignore",
  "biome.json",
  "docs/rules",
  "package.json",
  "schema",
  "src",
  "tests/defects/fault.ts",
  "tests/defects/faults",
  "tests/demo/inspect-demo.ts",
  "tests/docs/rule-pages.test.ts",
  "tests/rules/base-frames.ts",
  "tsconfig.json",
  "vitest.config.ts",
];

const folder = mkdtempSync(join(tmpdir(), "trysquare-"));
const read = (path: string): string => readFileSync(join(folder, path), "utf8");

interface Ended {
  readonly code: number;
  readonly text: string;
}

/** Runs a module with Node in the copy. */
function node(...args: readonly string[]): Promise<Ended> {
  return new Promise((done) => {
    const child = execFile(
      process.execPath,
      [...args],
      { cwd: folder, env: { PATH: process.env.PATH, NO_COLOR: "1" } },
      (_, stdout, stderr) => done({ code: child.exitCode ?? -1, text: stdout + stderr }),
    );
  });
}
const newRule = (...words: readonly string[]): Promise<Ended> => node("--import", "tsx", ".ci/new-rule.ts", ...words);

beforeAll(() => {
  for (const path of NEEDED) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    cpSync(path, join(folder, path), { recursive: true });
  }
  for (const page of ["README.md", "DEVELOPERS.md"]) writeFileSync(join(folder, page), "# page\n");
  symlinkSync(resolve("node_modules"), join(folder, "node_modules"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("a new rule", () => {
  it("of no proper id is refused, and nothing is written", async () => {
    const refused: readonly (readonly [readonly string[], string])[] = [
      [[], "say one id"],
      [["bar.one", "bar.two"], "say one id"],
      [["Bar.example"], '"Bar.example" is no id'],
      [["../bar.example"], "is no id"],
      [["bar.sags"], "bar.sags exists already: src/rules/bar.sags.ts"],
      [["open-end.area"], "would be called open-end-area, as one of end.bare is"],
    ];
    const answers = await Promise.all(refused.map(([words]) => newRule(...words)));
    expect(answers).toEqual(refused.map(([, why]) => ({ code: 2, text: expect.stringContaining(why) })));
    expect(readdirSync(join(folder, "src/rules"))).toEqual(readdirSync("src/rules"));
  });

  it("is proven, of one form with the others and on its page, as it is written", async () => {
    const { code, text } = await newRule("bar.example");
    expect(text).toContain("bar.example is started");
    expect(code).toBe(0);
    const written = [...text.matchAll(/^ {2}(\w+(?:\/\w+)+\/bar\.example\S+)$/gm)].map(([, path = ""]) => path);
    expect(written).toHaveLength(6);
    for (const path of written) {
      expect(existsSync(join(folder, path)), path).toBe(true);
      expect(read(path)).not.toMatch(/RULE_ID|CRITERION/);
    }
    expect(read("docs/rules/README.md")).toContain("[bar.example](bar.example.md)");
    expect(read("docs/rules/bar.example.md")).toContain("| `bar-example` | 6000 mm |");

    const modules = [
      "src/rules/bar.example.ts",
      "tests/rules/bar.example.test.ts",
      "tests/defects/faults/bar.example.ts",
    ];
    writeFileSync(
      join(folder, "tsconfig.part.json"),
      JSON.stringify({ extends: "./tsconfig.json", files: modules, include: [] }),
    );
    const checks = await Promise.all([
      node("node_modules/typescript/bin/tsc", "--noEmit", "-p", "tsconfig.part.json"),
      node("node_modules/@biomejs/biome/bin/biome", "ci", "--error-on-warnings", ...modules),
      node("node_modules/vitest/vitest.mjs", "run", "-t", "bar.example"),
      node("--import", "tsx", ".ci/generate-index.ts", "--check"),
      node("--import", "tsx", ".ci/generate-docs.ts", "--check"),
    ]);
    for (const check of checks) expect(check.code, check.text).toBe(0);
    expect(checks[2].text).toMatch(/Tests {2}4 passed/);
    expect((await newRule("bar.example")).text).toContain("exists already");
  });
});
