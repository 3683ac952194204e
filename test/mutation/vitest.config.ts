import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

// Only the tests of the physics: a change in it must be seen by them, not by a picture of a page.
// vitest reads its configuration from the default export.
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    include: ['test/{published,laws,fluid,flow,damper}/**/*.test.ts'],
    setupFiles: ['test/fast-check-seed.ts'],
  },
});
