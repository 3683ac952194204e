import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

// vitest reads its configuration from the default export.
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['test/**/*.test.ts'],
    // A browser on a busy machine takes its time.
    expect: { poll: { timeout: 20_000, interval: 50 } },
    setupFiles: ['test/fast-check-seed.ts'],
    coverage: {
      include: ['lib/**/*.ts'],
      exclude: ['lib/runner/main.ts'],
      reporter: ['text-summary', 'json-summary'],
    },
  },
});
