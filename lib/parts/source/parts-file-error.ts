import { DashpotError } from '../../base/dashpot-error.js';

/**
 * One thing that is wrong with a parts file, and where.
 *
 * @public
 */
export interface PartsFileProblem {
  /** Line in the file, from 1. */
  readonly line: number;
  /** Column in the line, from 1. */
  readonly column: number;
  /** Field, for example `pistons[1].holes[0].diameter`; empty for the file as a whole. */
  readonly path: string;
  /** What is wrong and what is accepted. */
  readonly message: string;
}

/** How many problems are written out. */
export const mostReported = 20;

/**
 * Says everything that is wrong with a parts file. Its message has one line for each problem,
 * `my-parts.yaml:12:15 pistons[1].holes[0].diameter: must be greater than 0 mm, got "-1.7 mm"`.
 *
 * @public
 */
export class PartsFileError extends DashpotError {
  override readonly name = 'PartsFileError';
  /** Name of the file as the caller gave it. */
  readonly fileName: string;
  /** The first problems in the order of the file, 20 at most. */
  readonly problems: readonly PartsFileProblem[];
  /** How many problems there are in all. */
  readonly problemCount: number;

  constructor(fileName: string, problems: readonly PartsFileProblem[]) {
    const inOrder = [...problems].sort((a, b) => a.line - b.line || a.column - b.column);
    const reported = inOrder.slice(0, mostReported);
    const lines = reported.map(
      ({ line, column, path, message }) =>
        `${fileName}:${line}:${column} ${path === '' ? '' : `${path}: `}${message}`,
    );
    const left = problems.length - reported.length;
    super([...lines, ...(left > 0 ? [`and ${left} more`] : [])].join('\n'));
    this.fileName = fileName;
    this.problems = reported;
    this.problemCount = problems.length;
  }
}
