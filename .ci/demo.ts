// Inspects the demo frames, first the sound ones, then the same with faults: what a newcomer runs first. It builds each time, so that
// what is shown comes from these sources.
import { execFileSync, spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";

execFileSync(process.execPath, ["--import", "tsx", ".ci/build.ts", "--no-types"], { stdio: "ignore" });
const frames = readdirSync("docs/demo")
  .filter((name) => name.endsWith(".frame.json"))
  .map((name) => `docs/demo/${name}`)
  .sort();
const sound = frames.filter((name) => !name.includes("-faulty"));
const faulty = frames.filter((name) => name.includes("-faulty"));
for (const set of [sound, faulty]) {
  const { status } = spawnSync(process.execPath, ["bin/trysquare.js", "inspect", ...set, "--gate", "none"], {
    stdio: "inherit",
  });
  if (status !== 0) process.exitCode = status ?? 1;
}
