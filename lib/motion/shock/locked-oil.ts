import { InputError } from '../../base/input-error.js';
import type { MovingShock } from './moving-shock.js';

/** The refusal of a shock whose gas has no room left on the way: when, where, and how much lacks for the rest of the travel. */
export class LockedOil extends InputError {
  /** [s] */
  readonly time: number;
  /** [m] */
  readonly travel: number;
  /** [m³] */
  readonly missing: number;

  constructor({ gas, shaftArea, stroke }: MovingShock, time: number, travel: number, room: number) {
    const missing = shaftArea * Math.max(0, stroke - travel);
    super({
      field: 'gas.capacity',
      value: gas.capacity,
      unit: 'm³',
      accepted:
        `more: the oil locks at ${time} s and a travel of ${travel} m, where shaft and cavity take ` +
        `${shaftArea * travel + room}; the rest of the travel needs another ${missing}, in`,
    });
    this.time = time;
    this.travel = travel;
    this.missing = missing;
  }
}
