/** One line of the accuracy table: relative errors of what the library computes, in two lots. */
export interface Comparison {
  readonly quantity: string;
  readonly range: string;
  /** What it is compared with, and whether that was computed here, read, or is from memory. */
  readonly source: string;
  readonly obtained: 'computed here' | 'read' | 'from memory';
  /** File of the test that runs the same rows, from the root of the repository. */
  readonly test: string;
  /** Errors of rows that constants were fitted to; none where nothing was fitted. */
  readonly fitted: readonly number[];
  /** Errors of rows that nothing was fitted to. */
  readonly heldOut: readonly number[];
}

export const largest = (errors: readonly number[]): number =>
  errors.reduce((most, error) => Math.max(most, Math.abs(error)), 0);

const rms = (errors: readonly number[]): number =>
  Math.sqrt(errors.reduce((sum, error) => sum + error * error, 0) / errors.length);

/** An error in percent with two digits, not more than the rows can show. */
export function percent(error: number): string {
  if (error < 1e-5) return 'below 0.001 %';
  return `${Number((100 * error).toPrecision(2))} %`;
}

function lot(errors: readonly number[]): string {
  return errors.length === 0
    ? '| | '
    : `${errors.length} | ${percent(largest(errors))} | ${percent(rms(errors))}`;
}

/** The accuracy table as Markdown. */
export function accuracyTable(comparisons: readonly Comparison[]): string {
  const head = [
    '| quantity | range | fitted: rows | largest | rms | held out: rows | largest | rms | compared with | that is | test |',
    '| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |',
  ];
  const lines = comparisons.map(({ quantity, range, fitted, heldOut, source, obtained, test }) =>
    `| ${quantity} | ${range} | ${lot(fitted)} | ${lot(heldOut)} | ${source} | ${obtained} | \`${test}\` |`.replace(
      /\| {2,}/gu,
      '| ',
    ),
  );
  return [...head, ...lines].join('\n');
}
