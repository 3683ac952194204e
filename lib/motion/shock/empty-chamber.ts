import { InputError } from '../../base/input-error.js';
import type { MovingShock } from './moving-shock.js';

/** The refusal of a shock whose piston comes to the end of a chamber. */
export function emptyChamber({ farVolume }: MovingShock, time: number, travel: number): InputError {
  return new InputError({
    field: 'farVolume',
    value: farVolume,
    unit: 'm³',
    accepted: `more, or the stops stiffer: a chamber runs out of oil at ${time} s and a travel of ${travel} m; in`,
  });
}
