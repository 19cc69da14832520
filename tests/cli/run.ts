import { spawn } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { build } from "esbuild";

export interface Ended {
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly stdout: string;
  readonly stderr: string;
}

export interface Place {
  readonly folder: string;
  write(name: string, text: string): string;
  run(args: readonly string[], options?: RunOptions): Promise<Ended>;
  /** In a shell, where $T stands for the command. */
  shell(script: string): Promise<Ended>;
  remove(): void;
}

export interface RunOptions {
  readonly env?: Readonly<Record<string, string>>;
  readonly cwd?: string;
}

function collect(
  command: string,
  args: readonly string[],
  cwd: string,
  env: Readonly<Record<string, string>>,
): Promise<Ended> {
  return new Promise((done, fail) => {
    const child = spawn(command, args, {
      cwd,
      env: { PATH: process.env.PATH ?? "", ...env },
      stdio: ["ignore", "pipe", "pipe"],
    });
    const stdout: Buffer[] = [];
    const stderr: Buffer[] = [];
    child.stdout.on("data", (chunk: Buffer) => stdout.push(chunk));
    child.stderr.on("data", (chunk: Buffer) => stderr.push(chunk));
    child.on("error", fail);
    child.on("close", (code, signal) => {
      done({ code, signal, stdout: Buffer.concat(stdout).toString(), stderr: Buffer.concat(stderr).toString() });
    });
  });
}

/** A temporary folder with the command bundled from the sources: with an engine that reports to order, or with the real one. */
export async function makePlace(engine: "to order" | "real" = "to order"): Promise<Place> {
  const root = mkdtempSync(join(tmpdir(), "trysquare-"));
  const folder = join(root, "work");
  mkdirSync(folder);
  symlinkSync(resolve("node_modules"), join(root, "node_modules"));
  const fake = { cli: "tests/cli/fake-trysquare.ts", worker: "tests/cli/fake-worker.ts" };
  const real = { cli: "src/cli/cli.ts", worker: "src/host/worker.ts", index: "src/index.ts" };
  await build({
    entryPoints: engine === "real" ? real : fake,
    outdir: join(root, "bundle"),
    bundle: true,
    splitting: true,
    format: "esm",
    platform: "node",
    packages: "external",
    logLevel: "error",
  });
  writeFileSync(join(root, "bundle", "package.json"), '{"type":"module"}');
  const command = join(root, "bundle", "cli.js");
  return {
    folder,
    write(name, text) {
      const path = join(folder, name);
      mkdirSync(dirname(path), { recursive: true });
      writeFileSync(path, text);
      return path;
    },
    run: (args, { env = {}, cwd = folder } = {}) => collect(process.execPath, [command, ...args], cwd, env),
    shell: (script) => collect("/bin/bash", ["-c", script], folder, { T: `${process.execPath} ${command}` }),
    remove: () => rmSync(root, { recursive: true, force: true }),
  };
}
