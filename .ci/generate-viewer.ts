// Bundles the viewer that an inspection sheet carries, so that a sheet needs nothing beside itself. With --check it only says whether it is stale.
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { build } from "esbuild";

const target = "src/report/sheet/viewer.generated.json";
const { outputFiles } = await build({
  entryPoints: ["src/viewer/sheet.ts"],
  bundle: true,
  minify: true,
  format: "iife",
  target: "es2020",
  charset: "ascii",
  legalComments: "none",
  write: false,
});
// No text of a script element may hold the end of one.
const script = (outputFiles[0]?.text ?? "").trimEnd().replaceAll("</", "<\\/");
const text = `${JSON.stringify({ script })}\n`;
if (!process.argv.includes("--check")) writeFileSync(target, text);
else if (!existsSync(target) || readFileSync(target, "utf8") !== text) {
  console.error(`stale, run npm run generate: ${target}`);
  process.exitCode = 1;
}
