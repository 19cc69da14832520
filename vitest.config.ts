import { availableParallelism } from "node:os";
import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    // Also where a machine has two: it leaves one of them idle otherwise.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    include: ["tests/**/*.test.ts"],
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
