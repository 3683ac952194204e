/**
 * What every error of this library is: bad input, a search that does not settle, a file that cannot be read.
 *
 * @public
 */
export class DashpotError extends Error {
  override readonly name: string = 'DashpotError';
}
