import { InputError } from '../../base/input-error.js';

/**
 * Statements of a parts file about one shock that cannot all be true.
 *
 * Its field is the path of keys below the shock, as `compensator.volume`; its sentence is in the units of a bench.
 *
 * @public
 */
export class ShockFault extends InputError {
  /** Keys from the shock to the statement. */
  readonly path: readonly string[];
  /** What is wrong, for a person to read after the path. */
  readonly sentence: string;

  constructor(path: readonly string[], value: number, sentence: string) {
    super({ field: path.join('.'), value, unit: 'm³', accepted: 'as the other statements about the shock' });
    this.path = path;
    this.sentence = sentence;
  }
}
