import { describe, test } from 'vitest';
import { integrate } from '../../lib/numeric/integrator/integrate.js';
import { fine } from './mass-on-spring.js';
import { expectRow, motionRow, number } from './motion-rows.js';

describe('terminal speeds', () => {
  const fall = (m: number, g: number, drag: (v: number) => number, to: number) =>
    integrate(
      {
        size: 2,
        rates: (_time, [, v], rates) => {
          rates[0] = v as number;
          rates[1] = g - drag(v as number) / m;
        },
      },
      { from: 0, to, state: [0, 0], ...fine },
    ).state;

  test('linear_fall', () => {
    const row = motionRow('linear_fall');
    const state = fall(number(row, 'm'), number(row, 'g'), (v) => number(row, 'c') * v, number(row, 't'));
    expectRow(row, [state[1] ?? 0]);
  });

  test('quadratic_fall', () => {
    const row = motionRow('quadratic_fall');
    const state = fall(number(row, 'm'), number(row, 'g'), (v) => number(row, 'a') * v * v, number(row, 't'));
    expectRow(row, [state[1] ?? 0, state[0] ?? 0]);
  });
});
