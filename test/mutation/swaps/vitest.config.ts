import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { mergeConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification, type VitestPluginContext } from 'vitest/node';
import common from '../../vitest.config.js';
import type { Fault } from './faults.js';

const fault: Fault = JSON.parse(process.env['DASHPOT_FAULT'] ?? '');
const faulty = fileURLToPath(new URL(`../../../${fault.file}`, import.meta.url));

/** The shortest test files first: one that fails ends the run, and most faults fail many. */
class ShortestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const durations = new Map(files.map((file) => [file, this.#duration(file)]));
    return files.toSorted((a, b) => (durations.get(a) ?? 0) - (durations.get(b) ?? 0));
  }

  /** How long a file took when it last ran [ms]; 0 where it never did. */
  #duration({ project, moduleId }: TestSpecification): number {
    const { cache, config } = this.ctx;
    return cache.getFileTestResults(`${project.name}:${relative(config.root, moduleId)}`)?.duration ?? 0;
  }
}

// vitest reads its configuration from the default export.
export default mergeConfig(common, {
  // What has no fault in it need be translated once only.
  test: {
    sequence: { sequencer: ShortestFirst },
    experimental: { fsModuleCache: true, fsModuleCachePath: 'out/swaps-cache' },
  },
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
