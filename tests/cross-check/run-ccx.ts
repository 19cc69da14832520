import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** Name of the executable of CalculiX, a general finite element solver (GPL; Debian package calculix-ccx). */
const COMMAND = "ccx";
const LONGEST_RUN = 120_000;

/** The version of CalculiX on this machine; undefined when there is none. */
export function ccxVersion(): string | undefined {
  const { error, stdout } = spawnSync(COMMAND, ["-v"], { encoding: "utf8", timeout: LONGEST_RUN });
  return error ? undefined : /Version\s+(\S+)/i.exec(stdout)?.[1];
}

/** Runs a deck and returns its result file. Throws with what CalculiX printed when it fails. */
export function runCcx(deck: string): string {
  const folder = mkdtempSync(join(tmpdir(), "cross-check-"));
  try {
    writeFileSync(join(folder, "frame.inp"), deck);
    const env = { ...process.env, OMP_NUM_THREADS: "1" };
    const run = spawnSync(COMMAND, ["-i", "frame"], { cwd: folder, encoding: "utf8", timeout: LONGEST_RUN, env });
    if (run.status !== 0 || /\*ERROR/.test(run.stdout))
      throw new Error(`${COMMAND} failed: ${run.stdout.slice(-2000)}`);
    return readFileSync(join(folder, "frame.dat"), "utf8");
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
