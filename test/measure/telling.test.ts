import { describe, expect, test } from 'vitest';
import { tellingOf } from '../../lib/measure/answer/telling.js';
import { fitShock } from '../../lib/measure/fit/fit-shock.js';
import { predictionOf } from '../../lib/measure/reading/prediction.js';
import { FitError } from '../../lib/numeric/least-squares/fit-error.js';
import checks from '../published/measure-checks.json' with { type: 'json' };
import {
  allEight,
  checkRow,
  inventedLaw,
  problemA,
  problemB,
  type RowValues,
  readingOfRow,
  stateOfRow,
} from './invented-shock.js';

// The shock is invented; what it shows was computed by NumPy, SciPy and emcee, which share no code with the library.

const rowA = checkRow<{ times: readonly number[]; known: RowValues }, unknown>('shock-A-fit');

describe('what a set of readings can tell', () => {
  type Telling = {
    observations: number;
    singularValues: number[];
    informed: number;
    shrinkage: Record<string, number>;
    relativeForceSd: number[];
  };

  test.each(Object.entries(checks.sets))('%s', (name, observations) => {
    const { inputs, expected } = checkRow<{ at: RowValues }, Telling>(`shock-tell-${name}`);
    const truth = stateOfRow(inputs.at);
    // Readings that are exactly what the shock would show: their fit is where the row looks, but for the pull of the priors.
    const shown = predictionOf(
      inventedLaw,
      observations.map((row) => readingOfRow(row, 1)),
    )(truth);
    expect(shown).toHaveLength(expected.observations);
    const problem = problemB(observations, Array.from(shown));
    const parameters = allEight.map((key) => inputs.at[key] ?? 0);
    const telling = tellingOf({ problem, parameters, standardDeviations: parameters.map(() => 1) });
    expected.singularValues.forEach((value, index) => {
      if (value > 1e-3) expect(Math.abs((telling.singularValues[index] ?? 0) / value - 1)).toBeLessThan(1e-3);
      else expect(telling.singularValues[index] ?? 0).toBeLessThan(0.01);
    });
    expect(telling.combinations).toBe(expected.informed);
  });

  test('readings of one weight cannot part viscosity from friction without a prior', () => {
    const problem = problemA(rowA.inputs.times, rowA.inputs.known);
    expect(() => fitShock({ ...problem, readings: problem.readings.slice(0, 1) })).toThrow(
      'readings[0].times',
    );
    const twice = problem.readings
      .slice(0, 1)
      .flatMap((reading) => [
        reading,
        reading.kind === 'drop' ? { ...reading, timing: 'frames' as const } : reading,
      ]);
    expect(() => fitShock({ ...problem, readings: twice })).toThrow(FitError);
    expect(() => fitShock({ ...problem, readings: twice })).toThrow(
      /cannot tell .*kinematicViscosity.*friction/u,
    );
  });
});
