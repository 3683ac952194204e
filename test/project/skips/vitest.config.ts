import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { reporters } from '../../no-skips.js';

// vitest reads its configuration from the default export.
export default defineConfig({
  root: fileURLToPath(new URL('.', import.meta.url)),
  test: { include: ['*.fixture.ts'], reporters },
});
