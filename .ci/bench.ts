// Runs every bench, one after the other, each printing its own table. Times are for comparing on one machine, never for judging.
import { spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";

const wanted = process.argv.slice(2);
for (const file of readdirSync("tests/bench")
  .filter((name) => name.endsWith(".bench.ts"))
  .sort()) {
  if (wanted.length > 0 && !wanted.some((word) => file.startsWith(word))) continue;
  console.log(`\n${file}`);
  // Budgets are CPU seconds of one core: memory is cleared on it as well, not by helpers on others that wait for each other.
  const args = ["--single-threaded-gc", "--import", "tsx", `tests/bench/${file}`];
  const { status } = spawnSync(process.execPath, args, { stdio: "inherit" });
  if (status !== 0) process.exitCode = status ?? 1;
}
