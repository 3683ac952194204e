import { DashpotError } from '../../base/dashpot-error.js';

/**
 * Signals that an integration could not go on; carries time and state so that the case can be repeated.
 *
 * @public
 */
export class IntegrationError extends DashpotError {
  override readonly name = 'IntegrationError';
  /** Time reached [s]. */
  readonly time: number;
  /** State reached, in the order of the equation. */
  readonly state: readonly number[];

  constructor(reason: string, time: number, state: ArrayLike<number>) {
    const shown = Array.from(state);
    super(`the integration stopped at ${time} s: ${reason}; state ${shown.join(', ')}`);
    this.time = time;
    this.state = shown;
  }
}
