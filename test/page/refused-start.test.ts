import { expect, test } from 'vitest';
import { InputError } from '../../lib/base/input-error.js';
import { defineNotebook, quantity } from '../../lib/page/index.js';
import { runNotebook } from '../../lib/page/run-notebook.js';

test('a law that refuses what a setting would begin at is told in a key of the file', () => {
  const notebook = defineNotebook({
    name: 'sample',
    order: 1,
    title: 'Sample',
    question: 'What?',
    parameters: {
      middle: quantity({
        dimension: 'speed',
        unit: 'mm/s',
        label: 'Middle',
        help: 'A speed.',
        default: 100,
        min: 1,
        max: 1000,
        step: 1,
        inFile: () => {
          throw new InputError({
            field: 'force',
            value: 11,
            unit: 'N',
            accepted: 'one that drives no faster',
          });
        },
      }),
    },
    run: () => ({ answer: 'Yes.', blocks: [], sources: [] }),
  });
  const parts = { oils: [], pistons: [], shocks: [], builds: [] } as never;
  expect(() => runNotebook(notebook, parts, {})).toThrow(
    /^builds must be of parts nearer to those of a small shock/u,
  );
});
