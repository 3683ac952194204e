import { describe, test } from 'vitest';
import { integrate } from '../../lib/numeric/integrator/integrate.js';
import { fine, massOnSpring } from './mass-on-spring.js';
import { expectRow, motionRow, number } from './motion-rows.js';

describe('a mass on a spring', () => {
  test('logdec_z0.1', () => {
    const row = motionRow('logdec_z0.1');
    const zeta = number(row, 'zeta');
    const period = (2 * Math.PI) / Math.sqrt(1 - zeta ** 2);
    const { place } = massOnSpring(1, 2 * zeta, 1, [1, 0], period);
    expectRow(row, [-Math.log(place)]);
  });

  test.each(['free_underdamped_x', 'free_critical_x'])('%s', (id) => {
    const row = motionRow(id);
    const [m, c, k] = ['m', 'c', 'k'].map((name) => number(row, name)) as [number, number, number];
    const start = [number(row, 'x0'), number(row, 'v0')] as const;
    expectRow(row, [massOnSpring(m, c, k, start, number(row, 't')).place]);
  });

  test('overshoot_z0.4037', () => {
    const row = motionRow('overshoot_z0.4037');
    const { largest } = massOnSpring(1, 2 * number(row, 'zeta'), 1, [0, 0], 6, () => [1, 0]);
    expectRow(row, [largest - 1]);
  });

  test('peak_time', () => {
    const row = motionRow('peak_time');
    const omega = number(row, 'omega');
    let peak = 0;
    integrate(
      {
        size: 2,
        rates: (_time, [x, v], rates) => {
          rates[0] = v as number;
          rates[1] = omega ** 2 * (1 - (x as number)) - 2 * number(row, 'zeta') * omega * (v as number);
        },
      },
      {
        from: 0,
        to: 0.2,
        state: [0, 0],
        relative: 1e-12,
        absolute: [1e-14, 1e-13],
        events: [
          {
            value: (_time, [, v]) => v as number,
            direction: () => -1,
            happens: (time) => {
              peak = time;
              return 'stop';
            },
          },
        ],
      },
    );
    expectRow(row, [peak]);
  });

  test.each([
    ['transmissibility_sqrt2', [0.05, 0.3, 1]],
    ['transmissibility_r1_z0.2', [0.2]],
  ] as const)('%s', (id, zetas) => {
    const row = motionRow(id);
    const ratio = number(row, 'r');
    const amplitudes = zetas.map((zeta) => {
      const base = (time: number) => [Math.sin(ratio * time), ratio * Math.cos(ratio * time)] as const;
      const period = (2 * Math.PI) / ratio;
      // Until what it started with has died away to 1e-12.
      const cycles = Math.ceil(28 / zeta / period);
      const at = (share: number) =>
        massOnSpring(1, 2 * zeta, 1, [0, 0], (cycles + share) * period, base, fine).place;
      return Math.hypot(at(0), at(0.25));
    });
    expectRow(row, amplitudes);
  });
});
