import { InputError } from '../../../lib/base/input-error.js';
import { defineNotebook } from '../../../lib/page/index.js';

/** A notebook invented for the tests: it answers files whose first oil is called "plenty" and no others. */
export const notebook = defineNotebook({
  name: 'wants-plenty',
  order: 3,
  title: 'A page in want',
  question: 'Is there plenty?',
  parameters: {},
  run({ oils: [first] }) {
    if (first?.name !== 'plenty')
      throw new InputError({ field: 'first oil', value: first?.name ?? '', accepted: '"plenty"' });
    return { answer: 'There is plenty.', blocks: [], sources: [] };
  },
});
