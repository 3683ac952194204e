import { fileURLToPath } from 'node:url';
import { mergeConfig } from 'vitest/config';
import type { VitestPluginContext } from 'vitest/node';
import common from '../../vitest.config.js';
import type { Fault } from './faults.js';

const fault: Fault = JSON.parse(process.env['DASHPOT_FAULT'] ?? '');
const faulty = fileURLToPath(new URL(`../../../${fault.file}`, import.meta.url));

// vitest reads its configuration from the default export.
export default mergeConfig(common, {
  // What has no fault in it need be translated once only.
  test: { experimental: { fsModuleCache: true, fsModuleCachePath: 'out/swaps-cache' } },
  plugins: [
    {
      name: 'one-fault',
      enforce: 'pre',
      configureVitest: ({ experimental_defineCacheKeyGenerator }: VitestPluginContext) => {
        experimental_defineCacheKeyGenerator(({ id }) => (id === faulty ? false : undefined));
      },
      transform: (source: string, id: string) =>
        id === faulty ? source.slice(0, fault.start) + fault.text + source.slice(fault.end) : undefined,
    },
  ],
});
