import { InputError } from '../../base/input-error.js';
import { ConvergenceError } from '../../numeric/root-finding.js';
import { ParameterError } from '../../page/parameters/parameter-error.js';
import { PartsFileError } from '../../parts/source/parts-file-error.js';
import { QuantityError } from '../../units/index.js';

const expected = [ParameterError, PartsFileError, InputError, QuantityError, ConvergenceError];

/** What is wrong, in the words of the command line; anything else is a fault of ours and says so. */
export function failureText(error: unknown): string {
  if (error instanceof Error && expected.some((kind) => error instanceof kind)) return error.message;
  return `This cannot be calculated, and it should: ${String(error)}`;
}
