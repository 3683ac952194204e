import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';
import { createVitest, type TestModule, type TestSpecification, type Vitest } from 'vitest/node';
import type { Fault } from './faults.js';

/** Some tests to run with a fault in the sources, or without. */
export interface Question {
  readonly fault?: Fault | undefined;
  /** Test files, in the order in which they run, each with the names of its tests that are wanted; all of them without. */
  readonly tests: readonly { readonly file: string; readonly names?: RegExp | undefined }[];
  /** Whether the first test that fails ends the run. */
  readonly bail: boolean;
}

/** What came of it. */
export interface Verdict {
  /** Whether it was ended from outside, for want of an end. */
  readonly endless?: boolean;
  /** The first test that failed and what it said, and its file where it has one. */
  readonly failed?: { readonly said: string; readonly file?: string | undefined } | undefined;
  /** How long each test took in the files that passed, by file and name [ms]. */
  readonly durations: readonly (readonly [file: string, name: string, duration: number])[];
}

const root = fileURLToPath(new URL('../../..', import.meta.url));

let fault: Fault | undefined;

/** Puts the fault of the question into its file. */
const oneFault: Plugin = {
  name: 'one-fault',
  enforce: 'pre',
  transform: (source: string, id: string) =>
    fault !== undefined && id === root + fault.file
      ? source.slice(0, fault.start) + fault.text + source.slice(fault.end)
      : undefined,
};

/** vitest with the settings of the quick tests, which translates each file once for as long as this process lives; the tests run in a new process each time. */
async function quickTests(): Promise<Vitest> {
  const forever = 3_600_000;
  return await createVitest(
    'test',
    {
      config: false,
      root,
      watch: false,
      update: 'none',
      isolate: false,
      maxWorkers: 1,
      setupFiles: ['test/fast-check-seed.ts'],
      include: ['test/**/*.test.ts'],
      exclude: ['test/**/*.{slow,browser}.test.ts'],
      testTimeout: forever,
      hookTimeout: forever,
      reporters: [{}],
      sequence: {
        sequencer: class {
          readonly shard = async (specs: TestSpecification[]) => specs;
          readonly sort = async (specs: TestSpecification[]) => specs;
        },
      },
    },
    { plugins: [oneFault] },
  );
}

/** The first failure of a run. */
function firstFailure(modules: readonly TestModule[], errors: readonly unknown[]): Verdict['failed'] {
  for (const module of modules) {
    const said = failureOf(module);
    if (said !== undefined)
      return { said: `${module.relativeModuleId}: ${said}`, file: module.relativeModuleId };
  }
  const [error] = errors;
  return error === undefined ? undefined : { said: String(error instanceof Error ? error.message : error) };
}

function failureOf(module: TestModule): string | undefined {
  for (const { message } of module.errors()) return message;
  for (const test of module.children.allTests('failed')) {
    return `${test.fullName}: ${test.result().errors?.[0]?.message}`;
  }
  return module.state() === 'failed' ? 'a hook failed' : undefined;
}

async function answer(vitest: Vitest, question: Question): Promise<Verdict> {
  if (fault !== undefined) vitest.invalidateFile(root + fault.file);
  fault = question.fault;
  if (fault !== undefined) vitest.invalidateFile(root + fault.file);
  const [project] = vitest.projects;
  if (project === undefined) throw new Error('vitest has no project');
  vitest.config.bail = question.bail ? 1 : 0;
  project.config.bail = vitest.config.bail;
  const specifications = question.tests.map(({ file, names }) =>
    project.createSpecification(root + file, names === undefined ? {} : { testNamePattern: names }),
  );
  const { testModules, unhandledErrors } = await vitest.runTestSpecifications(specifications);
  const asked = testModules.filter(({ moduleId }) =>
    specifications.some((specification) => specification.moduleId === moduleId),
  );
  const durations = asked
    .filter((module) => module.state() === 'passed')
    .flatMap((module) =>
      [...module.children.allTests('passed')].map(
        (test) => [module.relativeModuleId, test.fullName, test.diagnostic()?.duration ?? 0] as const,
      ),
    );
  return { failed: firstFailure(asked, unhandledErrors), durations };
}

if (process.send !== undefined) {
  const vitest = await quickTests();
  process.on('message', (question: Question) => {
    answer(vitest, question).then(
      (verdict) => process.send?.(verdict),
      (error: unknown) => {
        console.error(error);
        process.exit(1);
      },
    );
  });
  process.on('disconnect', () => process.exit(0));
}
