import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

const COMMAND = "python3";
const LONGEST_RUN = 120_000;
const MOST_OUTPUT = 16 << 20;
const SCRIPTS = fileURLToPath(new URL(".", import.meta.url));

/** The version of scipy on this machine; undefined where there is none. */
export function scipyVersion(): string | undefined {
  const { status, stdout } = spawnSync(COMMAND, ["-c", "import scipy; print(scipy.__version__)"], { encoding: "utf8" });
  return status === 0 ? stdout.trim() : undefined;
}

/** Gives a script beside this file JSON and returns the JSON that it prints. */
export function runPlain(script: string, input: unknown): unknown {
  const env = { ...process.env, OMP_NUM_THREADS: "1", OPENBLAS_NUM_THREADS: "1", PYTHONDONTWRITEBYTECODE: "1" };
  const run = spawnSync(COMMAND, [SCRIPTS + script], {
    input: JSON.stringify(input),
    encoding: "utf8",
    timeout: LONGEST_RUN,
    maxBuffer: MOST_OUTPUT,
    env,
  });
  if (run.status !== 0) throw new Error(`${script} failed: ${run.stderr.slice(-2000)}`);
  return JSON.parse(run.stdout);
}
