import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { reporters } from './no-skips.js';

const slow = 'test/**/*.slow.test.ts';
const browser = 'test/**/*.browser.test.ts';

// Generous: a limit is there to end what hangs, and a machine may be ten times as busy as it should be.
const patience = 300_000;

// vitest reads its configuration from the default export.
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    testTimeout: patience,
    hookTimeout: patience,
    expect: { poll: { timeout: patience / 2, interval: 50 } },
    reporters,
    setupFiles: ['test/fast-check-seed.ts'],
    maxWorkers: availableParallelism(),
    projects: [
      {
        extends: true,
        test: { name: 'quick', isolate: false, include: ['test/**/*.test.ts'], exclude: [slow, browser] },
      },
      { extends: true, test: { name: 'slow', include: [slow] } },
      {
        extends: true,
        test: { name: 'browser', include: [browser], globalSetup: 'test/live/shared-browser.ts' },
      },
    ],
    coverage: {
      include: ['lib/**/*.ts'],
      exclude: ['lib/runner/main.ts'],
      reporter: ['text-summary', 'json-summary'],
    },
  },
});
