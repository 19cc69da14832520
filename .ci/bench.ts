// Runs every bench, one after the other, each printing its own table. Times are for comparing on one machine, never for judging.
import { spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";

const wanted = process.argv.slice(2);
for (const file of readdirSync("tests/bench")
  .filter((name) => name.endsWith(".bench.ts"))
  .sort()) {
  if (wanted.length > 0 && !wanted.some((word) => file.startsWith(word))) continue;
  console.log(`\n${file}`);
  const { status } = spawnSync(process.execPath, ["--import", "tsx", `tests/bench/${file}`], { stdio: "inherit" });
  if (status !== 0) process.exitCode = status ?? 1;
}
