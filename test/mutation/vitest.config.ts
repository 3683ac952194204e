import { mergeConfig } from 'vitest/config';
import config from '../vitest.config.js';

// Only the tests of the physics: a change in it must be seen by them, not by a picture of a page.
// vitest reads its configuration from the default export.
export default mergeConfig(config, {
  test: { include: ['test/{published,laws,fluid,flow,damper}/**/*.test.ts'] },
});
