import type { ShockFit } from '../../lib/measure/fit/fit-shock.js';
import { dataOf, predictionOf } from '../../lib/measure/reading/prediction.js';
import type { MeasuredShockCase } from '../base/measured-shocks.js';
import { possibleMeasurements } from '../base/possible-measurements.js';

/** A reading that two causes would have come out differently. */
export interface TellingReading {
  readonly name: string;
  readonly minutes: number;
  /** How far apart they put it, in standard uncertainties of all its numbers together. */
  readonly apart: number;
}

/** Fewer standard uncertainties than this tell nothing. */
export const tellsApart = 2;

/** The reading that would best tell one cause from another. */
export function tellingReading(
  measured: MeasuredShockCase,
  first: ShockFit,
  second: ShockFit,
): TellingReading {
  const found = possibleMeasurements(measured).map(({ name, minutes, readings }) => {
    const predict = predictionOf(measured.problem.law, readings);
    const [one, other] = [predict(first.state), predict(second.state)];
    const squares = readings.flatMap(dataOf).map(({ reading, uncertainty }) => {
      return (((one[reading] ?? 0) - (other[reading] ?? 0)) / uncertainty) ** 2;
    });
    // A weight that one of them does not let move tells them apart best of all, but gives no time.
    const apart = Math.sqrt(squares.reduce((sum, square) => sum + square, 0));
    return { name, minutes, apart: Number.isFinite(apart) ? apart : 0 };
  });
  return found.reduce((best, one) => (one.apart > best.apart ? one : best));
}
