import { repositoryWorkshop } from './build/repository-workshop.js';
import { type ExitCode, type Surroundings as Place, runWith } from './run-with.js';

/** Where a run finds and leaves things, and where it speaks. */
export interface Surroundings extends Omit<Place, 'workshop'> {
  readonly notebookFolder: string;
  readonly version: string;
}

/** Runs the command with its arguments, on the sources of the repository. */
export function runCommand(
  args: readonly string[],
  { notebookFolder, version, ...place }: Surroundings,
): Promise<ExitCode> {
  return runWith(args, { ...place, workshop: repositoryWorkshop(notebookFolder, version) });
}
