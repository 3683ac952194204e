import { InputError } from '../../base/input-error.js';
import { FitError } from '../../numeric/least-squares/fit-error.js';
import { ConvergenceError } from '../../numeric/root-finding.js';
import { ParameterError } from '../../page/parameters/parameter-error.js';
import { PartsFileError } from '../../parts/source/parts-file-error.js';
import { QuantityError } from '../../units/index.js';

const expected = [ParameterError, PartsFileError, InputError, QuantityError, ConvergenceError, FitError];

/** Whether an error is about what a reader gave; anything else is a fault of ours. */
export function expectedFailure(error: unknown): error is Error {
  return expected.some((kind) => error instanceof kind);
}

/** What is wrong, in the words of the command line; a fault of ours says so. */
export function failureText(error: unknown): string {
  if (expectedFailure(error)) return error.message;
  return `This cannot be calculated, and it should: ${String(error)}`;
}
