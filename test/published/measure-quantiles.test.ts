import chiSquareCdf from '@stdlib/stats-base-dists-chisquare-cdf';
import chiSquareExact from '@stdlib/stats-base-dists-chisquare-quantile';
import fExact from '@stdlib/stats-base-dists-f-quantile';
import studentExact from '@stdlib/stats-base-dists-t-quantile';
import { describe, expect, test } from 'vitest';
import { chiSquareQuantile, chiSquareTail, fQuantile, studentQuantile } from '../../lib/numeric/quantiles.js';
import { checkRow } from '../measure/invented-shock.js';
import checks from './measure-checks.json' with { type: 'json' };

describe('quantiles against tables, by mpmath with 40 digits', () => {
  const rows = checks.checks.filter(({ group }) => group === 'quantiles');

  test.each(rows)('$id', ({ inputs, expected }) => {
    const {
      distribution,
      probability = 0,
      degreesOfFreedom,
    } = inputs as {
      distribution?: string;
      probability?: number;
      degreesOfFreedom?: number | readonly number[];
    };
    const [first = 0, second = 0] =
      typeof degreesOfFreedom === 'number' ? [degreesOfFreedom] : (degreesOfFreedom ?? []);
    const [page, exact] =
      distribution === 't'
        ? [studentQuantile(probability, first), studentExact(probability, first)]
        : distribution === 'chi2'
          ? [chiSquareQuantile(probability, first), chiSquareExact(probability, first)]
          : [fQuantile(probability, first, second), fExact(probability, first, second)];
    expect(Math.abs(page / Number(expected) - 1)).toBeLessThan(1e-6);
    expect(Math.abs(exact / Number(expected) - 1)).toBeLessThan(1e-10);
  });

  test('a fit without friction to readings with it is unlikely: chi-square 26.5 with 9 degrees', () => {
    const { inputs, expected } = checkRow<{ x: number; degreesOfFreedom: number }, number>('chi2-tail');
    expect(Math.abs(chiSquareTail(inputs.x, inputs.degreesOfFreedom) / expected - 1)).toBeLessThan(1e-8);
    expect(Math.abs((1 - chiSquareCdf(inputs.x, inputs.degreesOfFreedom)) / expected - 1)).toBeLessThan(1e-8);
  });
});
