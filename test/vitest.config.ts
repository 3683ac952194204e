import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { reporters } from './no-skips.js';

const long = 'test/**/*.long.test.ts';
const slow = 'test/**/*.slow.test.ts';
const browser = 'test/**/*.browser.test.ts';
const thorough = 'test/**/*.thorough.test.ts';

// Generous: a limit is there to end what hangs, and a machine may be ten times as busy as it should be.
const patience = 300_000;

/** Starts the browser of a project. */
const shared = 'test/live/shared-browser.ts';

/** Thresholds of layers. */
function floor(layers: readonly string[], branches: number): Record<string, { branches: number }> {
  return Object.fromEntries(layers.map((layer) => [`lib/${layer}/**`, { branches }]));
}

// vitest reads its configuration from the default export.
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    testTimeout: patience,
    // One hook renders every page, which takes a minute of work alone.
    hookTimeout: 3 * patience,
    expect: { poll: { timeout: patience / 2, interval: 50 } },
    reporters,
    setupFiles: ['test/fast-check-seed.ts'],
    maxWorkers: availableParallelism(),
    projects: [
      {
        extends: true,
        test: {
          name: 'quick',
          isolate: false,
          include: ['test/**/*.test.ts'],
          exclude: [long, slow, browser, thorough],
        },
      },
      { extends: true, test: { name: 'long', isolate: false, include: [long] } },
      { extends: true, test: { name: 'slow', include: [slow] } },
      { extends: true, test: { name: 'browser', isolate: false, include: [browser], globalSetup: shared } },
      { extends: true, test: { name: 'thorough', include: [thorough], globalSetup: shared } },
    ],
    coverage: {
      include: ['lib/**/*.ts'],
      // What runs in a browser or by itself is driven from outside, where its branches are not counted.
      exclude: [
        'lib/live/**',
        'lib/runner/main.ts',
        'lib/runner/watch/**',
        'lib/runner/packed/**',
        '**/index.ts',
        '**/*.d.ts',
      ],
      reporter: ['text-summary', 'json-summary'],
      reportsDirectory: 'out/coverage',
      // Part of the branches [%] that the tests of each layer must take.
      thresholds: {
        ...floor(['base', 'numeric', 'fluid', 'flow', 'gas', 'damper', 'fill', 'motion', 'measure'], 95),
        ...floor(['decisions', 'units', 'parts', 'plot', 'page', 'workers', 'runner'], 85),
      },
    },
  },
});
