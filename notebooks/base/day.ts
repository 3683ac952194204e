import { quantity } from '../../lib/page/parameters/declare-parameters.js';
import type { Parts } from '../../lib/parts/parts.js';
import { temperature } from './quantities.js';

/** Oil temperature where the file says nothing [K]. */
export const benchTemperature = 293.15;

/** Coldest and hottest oil of the day that a file lists [K]. */
function extreme({ day }: Parts, pick: (...temperatures: number[]) => number): number | undefined {
  return day === undefined || day.length === 0
    ? undefined
    : pick(...day.map(({ temperature: reading }) => reading));
}

/** The controls of temperature: one declaration for every page. They begin at what the file says of its day and of its first build. */
export const oilTemperature = quantity({
  ...temperature,
  label: 'Oil temperature',
  help: 'Temperature of the oil.',
  default: 20,
  inFile: ({ builds }) => builds[0]?.wanted?.temperature,
});
export const coldestOil = quantity({
  ...temperature,
  label: 'Coldest',
  help: 'Coldest oil of the day.',
  default: 8,
  inFile: (parts) => extreme(parts, Math.min),
});
export const hottestOil = quantity({
  ...temperature,
  label: 'Hottest',
  help: 'Hottest oil of the day.',
  default: 38,
  inFile: (parts) => extreme(parts, Math.max),
});
