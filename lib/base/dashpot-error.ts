import { visibleText } from './visible-text.js';

/**
 * What every error of this library is: bad input, a search that does not settle, a file that cannot be read. Signs in its message
 * that a terminal would obey are written out, whatever name or text they came in.
 *
 * @public
 */
export class DashpotError extends Error {
  override readonly name: string = 'DashpotError';

  constructor(message = '', options?: ErrorOptions) {
    super(visibleText(message), options);
  }
}
