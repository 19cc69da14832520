import { execFile } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

const folder = mkdtempSync(join(tmpdir(), "trysquare-"));
const installed = join(folder, "node_modules", "trysquare");

interface Ended {
  readonly code: number;
  readonly text: string;
}

function node(cwd: string, ...args: readonly string[]): Promise<Ended> {
  return new Promise((done) => {
    const env = { PATH: process.env.PATH, NO_COLOR: "1", COLUMNS: "100" };
    const child = execFile(process.execPath, [...args], { cwd, env }, (_, stdout, stderr) =>
      done({ code: child.exitCode ?? -1, text: stdout + stderr }),
    );
  });
}

/** A team's repository: the package among its modules as npm would put it there, and the files of the page. */
beforeAll(async () => {
  mkdirSync(installed, { recursive: true });
  const built = await node(".", "--import", "tsx", ".ci/build.ts", "--to", join(installed, "dist"));
  expect(built.code, built.text).toBe(0);
  for (const path of ["package.json", "bin"]) cpSync(path, join(installed, path), { recursive: true });
  for (const path of ["docs/demo", "docs/house"]) cpSync(path, join(folder, path), { recursive: true });
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("the house of a team that the pages work through", () => {
  it("has a rule that its own proof proves, through the package alone", async () => {
    const { code, text } = await node(folder, "--test", "docs/house/rules");
    expect(text).toMatch(/^# pass 1$/m);
    expect(code, text).toBe(0);
  });

  it("has a rule whose types the package knows, without those of Node", async () => {
    const options = { strict: true, noImplicitAny: false, allowJs: true, checkJs: true, noEmit: true, types: [] };
    const compilerOptions = { ...options, target: "ES2023", lib: ["ES2023"], module: "nodenext" };
    writeFileSync(
      join(folder, "tsconfig.json"),
      JSON.stringify({ compilerOptions, files: ["docs/house/rules/doorway.mjs"] }),
    );
    const { code, text } = await node(folder, resolve("node_modules/typescript/bin/tsc"), "-p", ".");
    expect(code, text).toBe(0);
    // The check sees types, not `any`: an unknown message and a value without its quantity are refused.
    const rule = join(folder, "docs/house/rules/doorway.mjs");
    const sound = readFileSync(rule, "utf8");
    writeFileSync(rule, sound.replace("say.wide(", "say.narrow(").replace("limit: doorWidth }", "limit: 0.9 }"));
    const faulty = await node(folder, resolve("node_modules/typescript/bin/tsc"), "-p", ".");
    writeFileSync(rule, sound);
    expect(faulty.text).toContain("'narrow' does not exist");
    expect(faulty.code).not.toBe(0);
  });

  it("finds what the page shows, and runs no rule unless the command line names the house", async () => {
    const [, words = "", shown = ""] =
      /^```console\n\$ npx trysquare ([^\n]+)\n([\s\S]*?)^```$/m.exec(readFileSync("docs/house.md", "utf8")) ?? [];
    const command = join(installed, "bin/trysquare.js");
    const { code, text } = await node(folder, command, ...words.split(" "));
    expect(shown).toContain("shed:frame.stuck");
    expect(text).toContain(shown);
    expect(code).toBe(1);

    cpSync(join(folder, "docs/house/shed.house.json"), join(folder, "docs/house/trysquare.house.json"));
    cpSync(join(folder, "docs/demo/first-bench.frame.json"), join(folder, "docs/house/bench.frame.json"));
    const found = await node(folder, command, "inspect", "docs/house/bench.frame.json");
    expect(found.text).toContain("--house docs/house/trysquare.house.json");
    expect(found.code).toBe(2);
  });
});
