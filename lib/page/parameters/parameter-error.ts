import { DashpotError } from '../../base/dashpot-error.js';
import type { PartList } from './parameters.js';

/**
 * Says everything that is wrong with the values given for parameters, one line for each problem.
 *
 * @public
 */
export class ParameterError extends DashpotError {
  override readonly name = 'ParameterError';
  readonly problems: readonly string[];
  /** Lists of the parts file that a value is to be taken from, and that are empty. */
  readonly emptyLists: readonly PartList[];

  constructor(problems: readonly string[], emptyLists: readonly PartList[] = []) {
    super(problems.join('\n'));
    this.problems = problems;
    this.emptyLists = emptyLists;
  }
}
