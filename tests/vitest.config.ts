/** Settings of the tests that need no browser. `tests/run.mjs` runs them with the browser tests after them. */
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    exclude: ['tests/browser/**'],
    // Two cores are what the smallest supported machine has; real databases and workers start inside the tests.
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 120_000,
    reporters: process.env.VEILSTEP_TEST_REPORT
      ? ['default', ['json', { outputFile: process.env.VEILSTEP_TEST_REPORT }]]
      : ['default'],
    restoreMocks: true,
  },
});
