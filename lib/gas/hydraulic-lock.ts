import { InputError } from '../base/input-error.js';

/**
 * Says that the oil fills the shock before the wanted position: it would have to burst or stop.
 *
 * @public
 */
export class HydraulicLock extends InputError {
  /** Position at which the shaft stops [m]; below 0 where it would be pushed out past full extension. */
  readonly lockPosition: number;

  constructor(position: number, lockPosition: number) {
    super({
      field: 'position',
      value: position,
      unit: 'm',
      accepted: `below the hydraulic lock at ${lockPosition}`,
    });
    this.lockPosition = lockPosition;
  }
}
