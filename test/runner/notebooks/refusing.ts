import { InputError } from '../../../lib/base/input-error.js';
import { defineNotebook } from '../../../lib/page/index.js';

/** A notebook invented for the tests: it refuses whatever it gets. */
export const notebook = defineNotebook({
  name: 'refusing',
  order: 2,
  title: 'A refusal',
  question: 'What does it say?',
  parameters: {},
  run() {
    throw new InputError({ field: 'speed', value: -1, unit: 'm/s', accepted: 'greater than 0' });
  },
});
