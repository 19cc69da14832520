import { spawnSync } from "node:child_process";

/** The width of a line of output in the pages. */
const COLUMNS = "100";

/** What the command prints, run from the sources at the root of the project, as a block with the line that was typed. */
export function runBlock(words: string): string {
  const args = words.split(" ");
  const { stdout, stderr } = spawnSync(process.execPath, ["--import", "tsx", "src/cli/cli.ts", ...args], {
    encoding: "utf8",
    env: { PATH: process.env.PATH, COLUMNS },
  });
  return `\`\`\`console\n$ npx trysquare ${words}\n${(stdout + stderr).trimEnd()}\n\`\`\``;
}
