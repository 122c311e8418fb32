import { availableParallelism } from "node:os";
import { defineConfig } from "vitest/config";

/** Two projects: everything that needs no page runs under Node alone; components get a document. */
export default defineConfig({
  test: {
    // Many tests wait for a gauge, a browser or a disk: one worker more than cores keeps the machine busy meanwhile.
    maxWorkers: availableParallelism() + 1,
    testTimeout: 20_000,
    hookTimeout: 30_000,
    projects: [
      {
        test: {
          name: "node",
          environment: "node",
          setupFiles: ["test/support/propertySeed.ts"],
          include: ["test/**/*.test.ts"],
          exclude: ["test/renderer/**", "test/bench/**", "test/soak/**"],
          testTimeout: 20_000,
          hookTimeout: 60_000,
        },
      },
      {
        test: {
          name: "page",
          environment: "jsdom",
          setupFiles: ["test/support/propertySeed.ts"],
          include: ["test/renderer/**/*.test.{ts,tsx}"],
          testTimeout: 20_000,
        },
      },
    ],
  },
});
