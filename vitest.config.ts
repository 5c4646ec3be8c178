import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    typecheck: {
      enabled: true,
      include: ["tests/**/*.test-d.ts"],
      tsconfig: "tests/tsconfig.json",
    },
    // Two cores: more workers only make the browser tests late.
    maxWorkers: 2,
    testTimeout: 40_000,
    // What is awaited on a page comes late where the machine is busy.
    expect: { poll: { timeout: 10_000 } },
    hookTimeout: 60_000,
  },
});
