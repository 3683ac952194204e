import { DashpotError } from '../../base/dashpot-error.js';

/**
 * Says everything that is wrong with the values given for parameters, one line for each problem.
 *
 * @public
 */
export class ParameterError extends DashpotError {
  override readonly name = 'ParameterError';
  readonly problems: readonly string[];

  constructor(problems: readonly string[]) {
    super(problems.join('\n'));
    this.problems = problems;
  }
}
