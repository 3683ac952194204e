/** Says what is wrong with the command line, in lines ready to print. */
export class CommandError extends Error {
  override readonly name = 'CommandError';
}
