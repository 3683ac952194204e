import { describe, expect, test } from 'vitest';
import type { DifferentialEquation } from '../../lib/numeric/integrator/differential-equation.js';
import { integrate } from '../../lib/numeric/integrator/integrate.js';
import { rosenbrockStep } from '../../lib/numeric/integrator/rosenbrock-step.js';
import { relativeError } from './published-rows.js';
import { stiffProblems } from './stiff-problems.js';

describe('stiff test problems', () => {
  test.each(stiffProblems)('$name ($source)', ({ equation, start, end, expected, rtol, absolute }) => {
    const { state, steps } = integrate(equation, {
      from: 0,
      to: end,
      state: start,
      relative: 1e-7,
      absolute,
      firstStep: 1e-6,
    });
    expected.forEach((value, i) => {
      expect(relativeError(state[i] ?? Number.NaN, value)).toBeLessThan(rtol);
    });
    expect(steps).toBeLessThan(10_000);
  });
});

// Prothero & Robinson, Math. Comp. 28 (1974) 145: a stiff solution that ordinary methods follow with less than their order.
describe('Prothero and Robinson', () => {
  const equation = (rate: number): DifferentialEquation => ({
    size: 1,
    rates: (time, [y], rates) => {
      rates[0] = rate * ((y as number) - Math.cos(time)) - Math.sin(time);
    },
    slopes: (time, _state, overState, overTime) => {
      overState[0] = rate;
      overTime[0] = rate * Math.sin(time) - Math.cos(time);
    },
  });

  test.each([-100, -1e6])('rate %d: the cosine within 1e-6', (rate) => {
    const { state } = integrate(equation(rate), {
      from: 0,
      to: 2,
      state: [1],
      relative: 1e-7,
      absolute: [1e-7],
    });
    expect(relativeError(state[0] ?? 0, Math.cos(2))).toBeLessThan(1e-6);
  });

  test('ten equal steps at rate -1e6 miss by less than 1e-10', () => {
    const stepper = rosenbrockStep(equation(-1e6));
    const state = Float64Array.of(1);
    for (let i = 0; i < 10; i++) {
      stepper.prepare(i * 0.2, state, 0.2);
      stepper.attempt(i * 0.2, state, 0.2);
      state.set(stepper.end);
    }
    expect(Math.abs((state[0] ?? 0) - Math.cos(2))).toBeLessThan(1e-10);
  });
});

// Steinebach, BIT Numer. Math. 63 (2023) 27; the values were computed by a program of its own from the published coefficients.
describe('stability function of one step', () => {
  const grown = (z: number): number => {
    const stepper = rosenbrockStep({
      size: 1,
      rates: (_time, [y], rates) => {
        rates[0] = z * (y as number);
      },
      slopes: (_time, _state, overState, overTime) => {
        overState[0] = z;
        overTime[0] = 0;
      },
    });
    const state = Float64Array.of(1);
    stepper.prepare(0, state, 1);
    stepper.attempt(0, state, 1);
    return stepper.end[0] ?? Number.NaN;
  };

  test.each([
    [-0.5, 0.6065306849405006],
    [-1, 0.3678803089370504],
    [-10, -0.04037298377965677],
  ])('R(%d)', (z, expected) => {
    expect(relativeError(grown(z), expected)).toBeLessThan(1e-9);
  });

  test('vanishes far to the left (L-stable)', () => expect(Math.abs(grown(-1e12))).toBeLessThan(1e-10));
});

// y' = -y², y(0) = 1, y(1) = 1/2.
test('order 5 (Steinebach 2023)', () => {
  const error = (count: number): number => {
    const stepper = rosenbrockStep({
      size: 1,
      rates: (_time, [y], rates) => {
        rates[0] = -((y as number) ** 2);
      },
      slopes: (_time, [y], overState, overTime) => {
        overState[0] = -2 * (y as number);
        overTime[0] = 0;
      },
    });
    const state = Float64Array.of(1);
    for (let i = 0; i < count; i++) {
      stepper.prepare(i / count, state, 1 / count);
      stepper.attempt(i / count, state, 1 / count);
      state.set(stepper.end);
    }
    return Math.abs((state[0] ?? 0) - 0.5);
  };
  expect(relativeError(Math.log2(error(10) / error(20)), 5)).toBeLessThan(0.06);
});

// A ball dropped from 0.3 m that keeps 0.8 of its speed: a geometric series; from t = √(2h/g)(1+e)/(1−e) on it rests.
test('impacts of a bouncing ball', () => {
  const g = 9.80665;
  const impacts: number[] = [];
  integrate(
    {
      size: 2,
      rates: (_time, [, speed], rates) => {
        rates[0] = speed as number;
        rates[1] = -g;
      },
    },
    {
      from: 0,
      to: 1.6,
      state: [0.3, 0],
      relative: 1e-10,
      absolute: [1e-12, 1e-12],
      events: [
        {
          value: (_time, [height]) => height as number,
          direction: () => -1,
          happens: (time, state) => {
            impacts.push(time);
            state[0] = 0;
            state[1] = -0.8 * (state[1] as number);
            return 'restart';
          },
        },
      ],
    },
  );
  const expected = [
    0.2473519209116349, 0.6431149943702508, 0.9597254531371435, 1.2130138201506577, 1.415644513761469,
    1.577749068650118,
  ];
  expect(impacts).toHaveLength(expected.length);
  expected.forEach((time, i) => {
    expect(relativeError(impacts[i] ?? 0, time)).toBeLessThan(1e-10);
  });
});
