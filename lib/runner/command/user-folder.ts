/**
 * The folder that the user stands in: npm starts a script in the folder of the package, and says where the user stood.
 *
 * @param environment - of this process
 * @param here - the folder of this process
 */
export function userFolder(environment: Readonly<Record<string, string | undefined>>, here: string): string {
  return environment['npm_lifecycle_event'] === 'start' ? (environment['INIT_CWD'] ?? here) : here;
}
