import { defaultServerConditions } from "vite";
import { defineConfig } from "vitest/config";

// Our packages are read from source (custom export condition), so that tests need no build.
const resolve = { conditions: ["source", ...defaultServerConditions] };
const ssr = { resolve };

export default defineConfig({
  test: {
    projects: [
      {
        resolve,
        ssr,
        test: {
          name: "unit",
          include: [
            "packages/*/src/**/*.test.{ts,tsx}",
            "packages/*/test/**/*.test.ts",
            "checks/**/*.test.ts",
            "simulator/**/*.test.ts",
            "tools/**/*.test.ts",
            "benchmarks/**/*.test.ts",
          ],
          exclude: ["**/node_modules/**", "**/dist/**"],
          setupFiles: ["./tools/test-setup.ts"],
          testTimeout: 60_000,
        },
      },
      {
        resolve,
        ssr,
        test: {
          name: "e2e",
          // After all others: a walk is timed by the hand that walks it, not by what else the machine does.
          sequence: { groupOrder: 1 },
          include: ["e2e/**/*.test.ts"],
          setupFiles: ["./tools/test-setup.ts"],
          testTimeout: 180_000,
          hookTimeout: 180_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
