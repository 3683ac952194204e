import { DashpotError } from '../../base/dashpot-error.js';

/**
 * Why a fit gave no answer: `rank-deficient` where the readings cannot tell some parameters apart, `stalled` where the steps ended away from a
 * minimum, `not-finite` where the model has no value.
 *
 * @public
 */
export type FitFault = 'rank-deficient' | 'stalled' | 'not-finite';

/**
 * Signals that a fit ended without an answer. A place where the steps merely stopped is never passed on as a result.
 *
 * @public
 */
export class FitError extends DashpotError {
  override readonly name = 'FitError';
  readonly fault: FitFault;
  /** Where it ended, one number a parameter. */
  readonly parameters: readonly number[];
  /** Indices of the parameters that cannot be told apart, or cannot be told at all; empty for other faults. */
  readonly indices: readonly number[];

  constructor(
    fault: FitFault,
    message: string,
    parameters: readonly number[],
    indices: readonly number[] = [],
  ) {
    super(message);
    this.fault = fault;
    this.parameters = parameters;
    this.indices = indices;
  }
}
