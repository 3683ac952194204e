import { describe, expect, test } from 'vitest';
import { type Step, stateWithin } from '../../lib/numeric/integrator/dense-output.js';
import type { DifferentialEquation } from '../../lib/numeric/integrator/differential-equation.js';
import { integrate } from '../../lib/numeric/integrator/integrate.js';
import { IntegrationError } from '../../lib/numeric/integrator/integration-error.js';
import { rosenbrockStep } from '../../lib/numeric/integrator/rosenbrock-step.js';
import { oscillator } from './oscillator.js';

/** State after equal steps of the bare method. */
function equalSteps(equation: DifferentialEquation, start: readonly number[], end: number, count: number) {
  const stepper = rosenbrockStep(equation);
  const state = Float64Array.from(start);
  const length = end / count;
  for (let i = 0; i < count; i++) {
    stepper.prepare(i * length, state, length);
    expect(stepper.attempt(i * length, state, length)).toBe(true);
    state.set(stepper.end);
  }
  return state;
}
describe('one step', () => {
  // With slopes given, as the differences would hide the last digits.
  test('has order 5, also where the rates depend on time', () => {
    const forced: DifferentialEquation = {
      size: 1,
      rates: (time, [y], rates) => {
        rates[0] = -((y as number) ** 2) + Math.cos(time) + Math.sin(time) ** 2;
      },
      slopes: (time, [y], overState, overTime) => {
        overState[0] = -2 * (y as number);
        overTime[0] = -Math.sin(time) + Math.sin(2 * time);
      },
    };
    const error = (count: number) => Math.abs((equalSteps(forced, [0], 1, count)[0] ?? 0) - Math.sin(1));
    expect(Math.log2(error(10) / error(20))).toBeGreaterThan(4.5);
    expect(Math.log2(error(20) / error(40))).toBeGreaterThan(4.7);
  });

  test('differences serve as well as given slopes', () => {
    const given = { ...oscillator, slopes: undefined };
    expect(given.slopes).toBeUndefined();
    const [place, speed] = equalSteps(oscillator, [1, 0], 2, 40);
    expect(place).toBeCloseTo(Math.cos(2), 9);
    expect(speed).toBeCloseTo(-Math.sin(2), 9);
  });

  test('the dense polynomial meets the solution within a step, with order 4', () => {
    const worst = (length: number) => {
      const stepper = rosenbrockStep(oscillator);
      const start = Float64Array.of(1, 0);
      stepper.prepare(0, start, length);
      stepper.attempt(0, start, length);
      const dense = new Float64Array(6);
      stepper.writeDense(dense);
      const step: Step = { time: 0, length, covered: 1, cut: false, start, end: stepper.end, dense };
      const state = new Float64Array(2);
      let largest = 0;
      for (let share = 0; share <= 1; share += 1 / 16) {
        stateWithin(step, share, state);
        largest = Math.max(largest, Math.abs((state[0] ?? 0) - Math.cos(share * length)));
      }
      return largest;
    };
    expect(worst(0.1)).toBeLessThan(1e-7);
    // A local error of order 4 + 1.
    expect(Math.log2(worst(0.2) / worst(0.1))).toBeGreaterThan(4.5);
  });
});

describe('integrate', () => {
  test('the error follows the tolerance', () => {
    for (const relative of [1e-4, 1e-6, 1e-8, 1e-10]) {
      const { state } = integrate(oscillator, {
        from: 0,
        to: 20,
        state: [1, 0],
        relative,
        absolute: [relative, relative],
      });
      expect(Math.abs((state[0] ?? 0) - Math.cos(20))).toBeLessThan(30 * relative);
    }
  });

  test('ends each step at a knot, and at the end itself', () => {
    const ends: number[] = [];
    const { time } = integrate(oscillator, {
      from: 0,
      to: 3,
      state: [1, 0],
      relative: 1e-4,
      absolute: [1e-4, 1e-4],
      knots: [0.5, 1.25, 9],
      onStep: ({ time: start, length }) => ends.push(start + length),
    });
    expect(ends).toEqual(expect.arrayContaining([0.5, 1.25, 3]));
    expect(time).toBe(3);
  });

  test('a rate that bends at a knot costs no accuracy', () => {
    const ramp: DifferentialEquation = {
      size: 1,
      rates: (time, [y], rates) => {
        rates[0] = (time < 0.3 ? 1 : 5) - (y as number);
      },
    };
    const plan = { from: 0, to: 1, state: [0], relative: 1e-8, absolute: [1e-8], knots: [0.3] };
    const atKnot = 1 - Math.exp(-0.3);
    const expected = 5 + (atKnot - 5) * Math.exp(-0.7);
    expect(integrate(ramp, plan).state[0]).toBeCloseTo(expected, 7);
  });

  test('equal runs give equal bytes', () => {
    const run = () =>
      integrate(oscillator, { from: 0, to: 7, state: [1, 0], relative: 1e-6, absolute: [1e-9, 1e-9] });
    expect(run()).toEqual(run());
  });
});

describe('failures carry time and state', () => {
  test('a solution that runs away', () => {
    const runaway: DifferentialEquation = {
      size: 1,
      rates: (_time, [y], rates) => {
        rates[0] = (y as number) ** 2;
      },
    };
    const fails = () => integrate(runaway, { from: 0, to: 2, state: [1], relative: 1e-8, absolute: [1e-8] });
    expect(fails).toThrow(IntegrationError);
    try {
      fails();
    } catch (error) {
      expect((error as IntegrationError).time).toBeCloseTo(1, 6);
      expect((error as IntegrationError).state).toHaveLength(1);
    }
  });

  test('rates that are no number', () => {
    const nothing: DifferentialEquation = { size: 1, rates: (_t, _y, rates) => void rates.fill(Number.NaN) };
    expect(() => integrate(nothing, { from: 0, to: 1, state: [1], relative: 1e-6, absolute: [1] })).toThrow(
      /floor/u,
    );
  });

  test('too many steps', () => {
    expect(() =>
      integrate(oscillator, {
        from: 0,
        to: 1e3,
        state: [1, 0],
        relative: 1e-10,
        absolute: [1e-12, 1e-12],
        stepLimit: 50,
      }),
    ).toThrow(/too many steps/u);
  });
});

// By hand: oil of which the last 20 nm³ are at stake, through a hole that takes Δp = a Q + b Q², beside what flows in; once at rest Q is that, and Δp with it.
test('an unknown that rests on a bend narrower than its error finds its rest, in steps that grow', () => {
  const [a, b, stiffness, whole] = [4.1e5, 2.5e12, 1e15, 2e-11];
  const inflow = (time: number): number => 2e-8 * Math.cos(10 * time);
  const through = (drop: number): number =>
    (Math.sign(drop) * (Math.sqrt(a * a + 4 * b * Math.abs(drop)) - a)) / (2 * b);
  const { steps, state } = integrate(
    {
      size: 1,
      scales: [1e-15],
      rates: (time, [room = 0], rates) => {
        rates[0] = inflow(time) - through(stiffness * (room - whole));
      },
    },
    { from: 0, to: 0.6, state: [whole + 1e-12], relative: 1e-3, absolute: [1e-15], stepLimit: 100_000 },
  );
  const flow = inflow(0.6);
  expect(((state[0] ?? Number.NaN) - whole) / ((a * flow + b * flow * flow) / stiffness)).toBeCloseTo(1, 2);
  expect(steps).toBeLessThan(400);
});
