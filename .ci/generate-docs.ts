// Fills the generated parts of the pages: output of commands, files shown whole, tables from the schema, blocks from the rule
// objects. With --check it writes nothing and fails when a page differs from what it would write.
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { builtInRules } from "../src/rules/index.generated.ts";
import { fillBlocks } from "./docs/marked-blocks.ts";
import { ruleBlock } from "./docs/rule-block.ts";
import { runBlock } from "./docs/run-block.ts";
import { schemaBlock } from "./docs/schema-block.ts";
import { stockBlock } from "./docs/stock-block.ts";

const check = process.argv.includes("--check");

function ruleList(): string {
  const rows = builtInRules.map(
    ({ id, level, group, title }) => `| [${id}](${id}.md) | ${level} | ${group} | ${title} |`,
  );
  return ["| rule | level | group | a sound frame |", "| --- | --- | --- | --- |", ...rows].join("\n");
}

/** A file shown whole. */
function fileBlock(path: string): string {
  const language = path.endsWith(".json") ? "json" : "js";
  return `\`\`\`${language}\n${readFileSync(path, "utf8").trimEnd()}\n\`\`\``;
}

function filled(path: string, page: string): string {
  let text = fillBlocks(page, "file", fileBlock);
  text = fillBlocks(text, "run", runBlock);
  text = fillBlocks(text, "rules", ruleList);
  text = fillBlocks(text, "schema", schemaBlock);
  text = fillBlocks(text, "stock", stockBlock);
  const rule = builtInRules.find(({ id }) => path === `docs/rules/${id}.md`);
  if (rule) text = fillBlocks(text, "generated", () => ruleBlock(rule));
  return text;
}

const pages = [
  "README.md",
  "DEVELOPERS.md",
  ...readdirSync("docs", { recursive: true, encoding: "utf8" }).map((name) => `docs/${name}`),
]
  .filter((path) => path.endsWith(".md"))
  .sort();
const stale: string[] = [];
for (const path of pages) {
  const old = readFileSync(path, "utf8");
  const fresh = filled(path, old);
  if (fresh === old) continue;
  if (check) stale.push(path);
  else writeFileSync(path, fresh);
}
if (stale.length > 0) {
  console.error(`stale, run npm run generate: ${stale.join(", ")}`);
  process.exitCode = 1;
}
