import { DashpotError } from '../../base/dashpot-error.js';

/** Says what is wrong with the command line, in lines ready to print. */
export class CommandError extends DashpotError {
  override readonly name = 'CommandError';
}
