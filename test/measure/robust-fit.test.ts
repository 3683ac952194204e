import { describe, expect, test } from 'vitest';
import { fitShock, type ShockFit } from '../../lib/measure/fit/fit-shock.js';
import { huberLoss, studentLoss } from '../../lib/numeric/least-squares/robust-loss.js';
import checks from '../published/measure-checks.json' with { type: 'json' };
import {
  checkRow,
  inventedLaw,
  type RowName,
  type RowValues,
  readingOfRow,
  stateOfRow,
  unknownOfRow,
} from './invented-shock.js';

// The shock is invented; what it shows was computed by NumPy, SciPy and emcee, which share no code with the library.

describe('dyno readings with two bad ones', () => {
  const { inputs, expected } = checkRow<
    { known: RowValues },
    Record<
      'linear' | 'huber' | 'cauchy' | 'without outliers',
      Record<string, number> & { sd: number[] | null }
    >
  >('shock-C');
  const { v, force } = checks.datasets['shock-dyno'];
  const unknowns: readonly RowName[] = ['lnNu', 'd', 'F', 'offset'];
  const problem = (kept: (index: number) => boolean) => ({
    law: inventedLaw,
    known: stateOfRow(inputs.known),
    unknowns: unknowns.map((name) => unknownOfRow(name, false)),
    readings: v.flatMap((speed, index) =>
      kept(index)
        ? [readingOfRow({ kind: 'dyno', v: speed, x: 0.014, T: 295.15, u: 0.15 }, force[index] ?? 0)]
        : [],
    ),
  });
  const all = problem(() => true);

  const compare = (fit: ShockFit, row: Record<string, number>) => {
    expect(Math.abs((fit.state.kinematicViscosity * 1e6) / (row['nu'] ?? 0) - 1)).toBeLessThan(1e-4);
    expect(Math.abs(fit.state.holeDiameter / (row['d'] ?? 0) - 1)).toBeLessThan(1e-5);
    expect(fit.state.friction).toBeCloseTo(row['F'] ?? 0, 4);
    expect(fit.state.sensorZero).toBeCloseTo(row['offset'] ?? 0, 4);
  };

  test('plain squares are led astray by 50 mm²/s; Huber and Cauchy are not', () => {
    const plain = fitShock(all);
    compare(plain, expected.linear);
    plain.standardDeviations.forEach((deviation, index) => {
      expect(Math.abs(deviation / (expected.linear.sd?.[index] ?? 0) - 1)).toBeLessThan(1e-3);
    });
    compare(fitShock(all, huberLoss(1)), expected.huber);
    compare(fitShock(all, studentLoss(1)), expected.cauchy);
    compare(fitShock(problem((index) => index !== 7 && index !== 33)), expected['without outliers']);
  });

  test('Student with 4 degrees of freedom, the default, stays within 2 % of the truth', () => {
    expect(Math.abs((fitShock(all, studentLoss()).state.kinematicViscosity * 1e6) / 385 - 1)).toBeLessThan(
      0.02,
    );
  });
});
