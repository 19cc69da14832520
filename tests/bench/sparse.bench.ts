/**
 * Measures the sparse solver: `npx tsx tests/bench/sparse.bench.ts`. CPU seconds, the least of several repeats, against
 * supernodal CHOLMOD on one thread (Debian: apt-get install gcc libsuitesparse-dev libopenblas0-serial), measured in turns
 * in the same minute. Without CHOLMOD that column is left out and the table says so.
 */
import { execFileSync } from "node:child_process";
import { mkdtempSync, realpathSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { analyse } from "../../src/mechanics/sparse/analyse.ts";
import { assembleSymmetric } from "../../src/mechanics/sparse/assemble.ts";
import { factorise } from "../../src/mechanics/sparse/factorise.ts";
import { componentError } from "../../src/mechanics/sparse/refine.ts";
import type { SymmetricMatrix } from "../../src/mechanics/sparse/symmetric-matrix.ts";
import { type GridFrame, gridFrame, rack } from "../mechanics/sparse/frames.ts";

const ROUNDS = 3;
const REPEATS = 4; // in each round

interface Case {
  readonly name: string;
  readonly frame: GridFrame;
  /** Highest ratio of numeric factorisation to CHOLMOD that is acceptable. */
  readonly budget?: number;
}

const CASES: readonly Case[] = [
  { name: "rack, 1,000 bars", frame: rack(77) },
  { name: "rack, 10,000 bars", frame: rack(770), budget: 4 },
  { name: "rack, 50,000 bars", frame: rack(3847) },
  { name: "floor, 10,000 bars", frame: gridFrame(45, 46, 2) },
  { name: "cube, 1,000 bars", frame: gridFrame(7, 7, 8) },
  { name: "cube, 10,000 bars", frame: gridFrame(15, 15, 16), budget: 10 },
];

interface Times {
  readonly analyse: number;
  readonly factorise: number;
  readonly solve: number;
}

interface Solved extends Times {
  /** Largest |x| for loads of 1 on every unknown. */
  readonly largest: number;
}

const folder = mkdtempSync(join(tmpdir(), "sparse-bench-"));
try {
  run();
} finally {
  rmSync(folder, { recursive: true });
}

function run(): void {
  const cholmod = buildCholmod();
  console.log(cholmod.note);
  const lines = [
    ["frame", "unknowns", "order", "Mflop", "analyse", "factorise", "solve", "CHOLMOD", "its solve", "ratio", "budget"],
  ];
  const perBar = new Map<string, number>();
  for (const { name, frame, budget } of CASES) {
    const matrix = assembleSymmetric(frame.unknowns, frame.blocks);
    const analysis = analyse(matrix, frame.nodeOf);
    let own: Solved | undefined;
    let other: Solved | undefined;
    for (let round = 0; round < ROUNDS; round++) {
      own = best(own, measure(matrix, frame.nodeOf));
      if (cholmod.program !== undefined) other = best(other, measureCholmod(cholmod.program, matrix));
    }
    if (own === undefined) continue;
    perBar.set(name, own.factorise / frame.bars);
    if (other !== undefined && !(Math.abs(own.largest - other.largest) < 1e-6 * other.largest)) {
      throw new Error(`${name}: the answers differ, ${own.largest} and ${other.largest}`);
    }
    lines.push([
      name,
      String(frame.unknowns),
      analysis.ordering,
      (analysis.flops[analysis.ordering] / 1e6).toFixed(0),
      ...[own.analyse, own.factorise, own.solve].map(milliseconds),
      ...(other === undefined
        ? ["-", "-", "-"]
        : [milliseconds(other.factorise), milliseconds(other.solve), (own.factorise / other.factorise).toFixed(2)]),
      budget === undefined ? "" : String(budget),
    ]);
  }
  print(lines);
  const growth = (perBar.get("rack, 50,000 bars") ?? Number.NaN) / (perBar.get("rack, 1,000 bars") ?? Number.NaN);
  console.log(
    `factorise, CPU time a bar: rack of 50,000 bars against rack of 1,000 bars ${growth.toFixed(2)} (budget 1.20)`,
  );
}

function cpuSeconds(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}

function measure(matrix: SymmetricMatrix, nodeOf: Int32Array): Solved {
  const b = new Float64Array(matrix.n).fill(1);
  let times: Solved | undefined;
  for (let r = 0; r < REPEATS; r++) {
    const begin = cpuSeconds();
    const analysis = analyse(matrix, nodeOf);
    const analysed = cpuSeconds();
    const factor = factorise(analysis, matrix);
    const factorised = cpuSeconds();
    const x = factor.solve(b, 1);
    const solved = cpuSeconds();
    if (!(componentError(matrix, x, b, 1) < 1e-9)) throw new Error("the solution does not satisfy its equations");
    times = best(times, {
      analyse: analysed - begin,
      factorise: factorised - analysed,
      solve: solved - factorised,
      largest: x.reduce((a, value) => Math.max(a, Math.abs(value)), 0),
    });
  }
  if (times === undefined) throw new Error("nothing was measured");
  return times;
}

function best(a: Solved | undefined, b: Solved): Solved {
  if (a === undefined) return b;
  return {
    analyse: Math.min(a.analyse, b.analyse),
    factorise: Math.min(a.factorise, b.factorise),
    solve: Math.min(a.solve, b.solve),
    largest: b.largest,
  };
}

function buildCholmod(): { readonly program?: string; readonly note: string } {
  const source = fileURLToPath(new URL("cholmod.c", import.meta.url));
  const program = join(folder, "cholmod");
  try {
    const words = ["-O2", "-I/usr/include/suitesparse", source, "-o", program, "-lcholmod", "-lm"];
    execFileSync("cc", words, { stdio: ["ignore", "ignore", "pipe"] });
  } catch {
    return { note: "CHOLMOD is not installed (gcc, libsuitesparse-dev): measured without it, no ratios." };
  }
  return { program, note: `CHOLMOD supernodal, one thread, on ${blas(program)}. Times in ms of CPU.` };
}

function blas(program: string): string {
  const line = execFileSync("ldd", [program], { encoding: "utf8" })
    .split("\n")
    .find((text) => text.includes("libblas"));
  const path = line?.split(/\s+/).find((word) => word.startsWith("/"));
  return path === undefined ? "an unknown BLAS" : realpathSync(path);
}

function measureCholmod(program: string, matrix: SymmetricMatrix): Solved {
  const file = join(folder, "matrix");
  const { colStart, rowIndex, value } = matrix;
  const bytes = (list: Int32Array | Float64Array): Uint8Array =>
    new Uint8Array(list.buffer, list.byteOffset, list.byteLength);
  const head = Int32Array.of(matrix.n, rowIndex.length);
  writeFileSync(file, Buffer.concat([head, colStart, rowIndex, value].map(bytes)));
  const env = { ...process.env, OPENBLAS_NUM_THREADS: "1", OMP_NUM_THREADS: "1" };
  const line = execFileSync(program, [file, String(REPEATS)], { encoding: "utf8", env });
  const [analysed = Number.NaN, factorised = Number.NaN, solved = Number.NaN, largest = Number.NaN] = line
    .split(" ")
    .map(Number);
  return { analyse: analysed, factorise: factorised, solve: solved, largest };
}

function milliseconds(time: number): string {
  return (1000 * time).toFixed(1);
}

function print(lines: readonly (readonly string[])[]): void {
  const widths = (lines[0] ?? []).map((_, c) => Math.max(...lines.map((line) => (line[c] ?? "").length)));
  for (const line of lines) {
    console.log(
      line
        .map((cell, c) => (c === 0 || c === 2 ? cell.padEnd(widths[c] ?? 0) : cell.padStart(widths[c] ?? 0)))
        .join("  "),
    );
  }
}
