import { csvParse } from 'd3-dsv';
import * as z from 'zod/mini';
import { requireShape, someText } from '../../base/shape.js';
import type { DayTemperature } from '../../decisions/day/day-plan.js';
import { PartsFileError, type PartsFileProblem } from '../source/parts-file-error.js';
import { daySchema } from './plan-schema.js';

const largestFile = 1_000_000;

/**
 * Reads the oil temperatures of a day from a CSV file with the columns `time` and `temperature`, such as `08:30,12 °C`; other columns are
 * passed over, times rise.
 *
 * @param text - the file, comma-separated (RFC 4180), at most 1 MB
 * @param fileName - name of the file, for the error
 * @throws PartsFileError with every problem, line by line
 * @public
 */
export function readDay(text: string, fileName = 'day file'): readonly DayTemperature[] {
  requireShape({ text, fileName }, { text: someText, fileName: someText });
  const problems: PartsFileProblem[] = [];
  const report = (line: number, path: string, message: string): void => {
    problems.push({ line, column: 1, path, message });
  };
  if (text.length > largestFile)
    report(1, '', `the file must have at most 1 MB, got ${(text.length / 1e6).toFixed(2)} MB`);
  const rows = problems.length > 0 ? [] : csvParse(text.replace(/^\uFEFF/u, ''));
  if (problems.length === 0 && rows.length === 0)
    report(1, '', 'the file must have a line "time,temperature" and a line for each reading');
  const readings = rows.flatMap((row, index): DayTemperature[] => {
    const { time, temperature } = row;
    const parsed = z.safeParse(daySchema, { time: time?.trim(), temperature: temperature?.trim() });
    if (parsed.success) return [parsed.data];
    for (const { path, message } of parsed.error.issues) report(index + 2, path.join('.'), message);
    return [];
  });
  readings.forEach(({ time }, index) => {
    const before = readings[index - 1];
    if (problems.length === 0 && before !== undefined && time <= before.time)
      report(index + 2, 'time', 'must be later than the time before it');
  });
  if (problems.length > 0) throw new PartsFileError(fileName, problems);
  return readings;
}
