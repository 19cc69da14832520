import { availableParallelism } from "node:os";
import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    // Also where a machine has two: it leaves one of them idle otherwise.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    // Nothing here keeps state beyond a frame: files share what a worker has read and compiled, which halves the time they take.
    isolate: false,
    // Most of what is computed lives shortly: with room for it less time goes into collecting it.
    execArgv: ["--max-semi-space-size=64"],
    include: ["tests/**/*.test.ts"],
    testTimeout: 180_000,
    hookTimeout: 180_000,
  },
});
