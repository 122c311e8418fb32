import { defineConfig } from "vitest/config";

/** Two projects: everything that needs no page runs under Node alone; components get a document. */
export default defineConfig({
  test: {
    maxWorkers: "100%", // vitest would leave one core idle; with two that is half the machine
    testTimeout: 20_000,
    hookTimeout: 30_000,
    projects: [
      {
        test: {
          name: "node",
          environment: "node",
          include: ["test/**/*.test.ts"],
          exclude: ["test/renderer/**", "test/bench/**", "test/soak/**"],
          testTimeout: 20_000,
          hookTimeout: 60_000,
        },
      },
      { test: { name: "page", environment: "jsdom", include: ["test/renderer/**/*.test.{ts,tsx}"] } },
    ],
  },
});
