import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: "core",
          environment: "node",
          include: ["test/**/*.test.ts"],
          exclude: ["test/browser/**"],
          testTimeout: 30_000,
        },
      },
      {
        test: {
          name: "browser",
          environment: "node",
          include: ["test/browser/**/*.test.ts"],
          // One browser at a time: two of them on a small machine time each other out.
          fileParallelism: false,
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
