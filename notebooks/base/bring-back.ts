import { choice } from '../../lib/page/parameters/declare-parameters.js';

/** The control of what should come back: one declaration for every page. */
export const bringBack = choice({
  label: 'Bring back',
  help: 'What should come back: the same curve is the damping at the speeds that count; the same landing is how far the shaft goes in when the wheel drops from the height below.',
  options: ['same curve', 'same landing'],
  default: 'same curve',
});
