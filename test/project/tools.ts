import { execFileSync } from 'node:child_process';

/**
 * True where a command runs. On a contributor's machine a test that needs it then skips; under CI, where .ci/run installs
 * everything, its absence is a fault and the test runs and fails.
 */
export function toolRuns(command: string, args: readonly string[]): boolean {
  if (process.env['CI'] === 'true') return true;
  try {
    execFileSync(command, args, { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}
