// Fills the generated parts of the pages: output of commands, files shown whole, tables from the schema, blocks from the rule
// objects. With --check it writes nothing and fails when a page differs from what it would write.
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fillBlocks } from "./docs/marked-blocks.ts";
import { runBlock } from "./docs/run-block.ts";

const check = process.argv.includes("--check");

function filled(page: string): string {
  let text = fillBlocks(page, "file", (path) => `\`\`\`json\n${readFileSync(path, "utf8").trimEnd()}\n\`\`\``);
  text = fillBlocks(text, "run", runBlock);
  return text;
}

const pages = ["README.md", "DEVELOPERS.md", ...readdirSync("docs", { recursive: true, encoding: "utf8" }).map((name) => `docs/${name}`)]
  .filter((path) => path.endsWith(".md"))
  .sort();
const stale: string[] = [];
for (const path of pages) {
  const old = readFileSync(path, "utf8");
  const fresh = filled(old);
  if (fresh === old) continue;
  if (check) stale.push(path);
  else writeFileSync(path, fresh);
}
if (stale.length > 0) {
  console.error(`stale, run npm run generate: ${stale.join(", ")}`);
  process.exitCode = 1;
}
