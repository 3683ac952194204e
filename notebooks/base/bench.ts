import { quantity } from '../../lib/page/parameters/declare-parameters.js';
import { assembleShock } from '../../lib/parts/assembly/assembled-shock.js';
import type { Parts } from '../../lib/parts/parts.js';
import { temperature } from './quantities.js';

/** Most bubbles that a control allows [m³]. */
const mostFreeAir = 0.5e-6;

function firstFreeAir({ builds: [build] }: Parts): number | undefined {
  return build && Math.min(assembleShock(build).closed.closing.freeAir, mostFreeAir);
}

/** The controls of the bench: one declaration for every page. They begin at what the file says of its first build. */
export const benchOil = quantity({
  ...temperature,
  label: 'Bench',
  help: 'Temperature of oil and parts while you fill.',
  default: 20,
  inFile: ({ builds }) => builds[0]?.shock.closing?.temperature,
});
export const bubblesLeft = quantity({
  dimension: 'volume',
  unit: 'ml',
  label: 'Air in the oil',
  help: 'Air left in the oil as bubbles when the shock is closed.',
  default: 0.03,
  min: 0,
  max: 1e6 * mostFreeAir,
  step: 0.005,
  inFile: firstFreeAir,
});
