import { describe, expect, test } from 'vitest';
import { sealFrictionForce } from '../../lib/damper/seal-friction.js';
import { type BristleFriction, bristleForce, bristleRate } from '../../lib/motion/shock/bristle-friction.js';
import { integrate } from '../../lib/numeric/integrator/integrate.js';
import { recorder } from '../../lib/numeric/integrator/recorder.js';
import { fine } from './mass-on-spring.js';
import { expectRow, list, motionRow, number } from './motion-rows.js';

describe('friction', () => {
  // The row stands on the limit: after three half cycles the spring pulls exactly as hard as friction holds, so that whether a fourth one, of
  // no length, is counted hangs on the last bit. What does not: fall of a whole cycle, place of rest, time of the three.
  test('coulomb_decay', () => {
    const row = motionRow('coulomb_decay');
    const [m, k, friction, start] = ['m', 'k', 'F', 'x0'].map((name) => number(row, name)) as [
      number,
      number,
      number,
      number,
    ];
    let sign = -1;
    const peaks: number[] = [];
    const { time, state } = integrate(
      {
        size: 2,
        rates: (_time, [x, v], rates) => {
          rates[0] = v as number;
          rates[1] = (-k * (x as number) - sign * friction) / m;
        },
      },
      {
        from: 0,
        to: 1,
        state: [start, 0],
        ...fine,
        events: [
          {
            value: (_time, [, v]) => v as number,
            direction: () => (sign < 0 ? 1 : -1),
            happens: (_time, [x]) => {
              peaks.push(x as number);
              sign = -sign;
              return k * Math.abs(x as number) <= friction ? 'stop' : 'restart';
            },
          },
        ],
      },
    );
    const [fall = 0, , wholeTime = 0, rest = 0] = row.expected.flat();
    expect(peaks).toHaveLength(3);
    const found = [start - (peaks[1] ?? 0), time, state[0] ?? 0];
    const expected = [fall, (3 / 4) * wholeTime, rest];
    expectRow({ ...row, expected }, found);
  });

  test('stribeck_values', () => {
    const row = motionRow('stribeck_values');
    const seal = { kineticForce: number(row, 'Fc'), breakawayForce: number(row, 'Fs') };
    expectRow(
      row,
      list(row, 'v').map((v) => sealFrictionForce(seal, v)),
    );
  });

  const bristles = (change: Partial<BristleFriction>): BristleFriction => ({
    kineticForce: 1,
    breakawayForce: 1.5,
    stribeckSpeed: 0.001,
    stiffness: 1e5,
    damping: 0,
    viscous: 0,
    ...change,
  });

  test('dahl_presliding', () => {
    const row = motionRow('dahl_presliding');
    const force = number(row, 'Fc');
    const dahl = bristles({ kineticForce: force, breakawayForce: force, stiffness: number(row, 'sigma0') });
    const speed = 1e-3;
    const forces = list(row, 'x').map((way) => {
      const { state } = integrate(
        {
          size: 1,
          rates: (_time, [z], rates) => {
            rates[0] = bristleRate(dahl, z as number, speed);
          },
          scales: [1e-6],
        },
        { from: 0, to: way / speed, state: [0], relative: 1e-9, absolute: [1e-15] },
      );
      return bristleForce(dahl, state[0] as number, speed);
    });
    expectRow(row, forces);
  });

  test('lugre_steady', () => {
    const row = motionRow('lugre_steady');
    const friction = bristles({ viscous: number(row, 'sigma2') });
    const forces = list(row, 'v').map((v) => {
      // The bend at which the bristles slide.
      const perBend = bristleRate(friction, 1, v) - bristleRate(friction, 0, v);
      return bristleForce(friction, -v / perBend, v);
    });
    expectRow(row, forces);
  });

  test('lugre_stickslip', () => {
    const friction = bristles({ damping: Math.sqrt(1e5), viscous: 0.4 });
    const pulled = (to: number) => {
      const watch = recorder(3, 2, 2, (time, [x, v], values) => {
        values[0] = 2 * (0.1 * time - (x as number));
        values[1] = v as number;
      });
      const { state } = integrate(
        {
          size: 3,
          rates: (time, [x, v, z], rates) => {
            const force = bristleForce(friction, z as number, v as number);
            rates[0] = v as number;
            rates[1] = 2 * (0.1 * time - (x as number)) - force;
            rates[2] = bristleRate(friction, z as number, v as number);
          },
          scales: [1e-3, 1e-4, 1e-6],
        },
        {
          from: 0,
          to,
          state: [0, 0, 0],
          relative: 1e-7,
          absolute: [1e-9, 1e-9, 1e-12],
          onStep: watch.observe,
        },
      );
      return { place: state[0] ?? 0, spring: watch.course(0), speed: watch.course(1).largest };
    };
    const whole = pulled(20);
    expectRow(motionRow('lugre_stickslip'), [
      whole.spring.largest,
      whole.spring.largestTime,
      pulled(10).place,
      whole.place,
      whole.speed,
    ]);
  });
});
