import { describe, expect, test } from 'vitest';
import { type Step, stateWithin } from '../../lib/numeric/integrator/dense-output.js';
import type { DifferentialEquation } from '../../lib/numeric/integrator/differential-equation.js';
import type { Event } from '../../lib/numeric/integrator/events.js';
import { integrate } from '../../lib/numeric/integrator/integrate.js';
import { IntegrationError } from '../../lib/numeric/integrator/integration-error.js';
import { rosenbrockStep } from '../../lib/numeric/integrator/rosenbrock-step.js';

const oscillator: DifferentialEquation = {
  size: 2,
  rates: (_time, [place, speed], rates) => {
    rates[0] = speed as number;
    rates[1] = -(place as number);
  },
};

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

const quiet = { relative: 1e-10, absolute: [1e-12, 1e-12] };

describe('events', () => {
  const seen = (directions: -1 | 1): number[] => {
    const times: number[] = [];
    const event: Event = {
      value: (_time, state) => state[0] as number,
      direction: () => directions,
      happens: (time) => {
        times.push(time);
        return 'restart';
      },
    };
    integrate(oscillator, { from: 0, to: 10, state: [1, 0], ...quiet, events: [event] });
    return times;
  };

  test('only crossings of the wanted direction count', () => {
    const quarter = Math.PI / 2;
    for (const [direction, expected] of [
      [-1, [quarter, 5 * quarter]],
      [1, [3 * quarter]],
    ] as const) {
      const times = seen(direction);
      expect(times).toHaveLength(expected.length);
      times.forEach((time, i) => {
        expect(time).toBeCloseTo(expected[i] ?? 0, 8);
      });
    }
  });

  test('the first of two in one step wins, and a stop stops', () => {
    const at = (level: number, happens: Event['happens']): Event => ({
      value: (_time, state) => (state[0] as number) - level,
      direction: () => -1,
      happens,
    });
    const order: number[] = [];
    const events = [
      at(0.5, () => 'stop'),
      at(0.500001, (time) => {
        order.push(time);
        return 'restart';
      }),
    ];
    const result = integrate(oscillator, { from: 0, to: 10, state: [1, 0], ...quiet, events });
    expect(order).toHaveLength(1);
    expect(result.stopped).toBe(true);
    expect(result.time).toBeCloseTo(Math.acos(0.5), 9);
    expect(result.state[0]).toBeLessThanOrEqual(0.5);
  });

  test('a value that comes back within a step is seen', () => {
    const times: number[] = [];
    const still: DifferentialEquation = { size: 1, rates: (_t, _y, rates) => void rates.fill(0) };
    const dip: Event = {
      value: (time) => (time - 0.5) ** 2 - 0.04,
      direction: () => -1,
      happens: (time) => {
        times.push(time);
        return 'restart';
      },
    };
    integrate(still, {
      from: 0,
      to: 1,
      state: [1],
      relative: 1e-6,
      absolute: [1],
      firstStep: 1,
      events: [dip],
    });
    expect(times[0]).toBeCloseTo(0.3, 12);
  });

  test('a flag flipped on the zero itself is not flipped back by it', () => {
    // A mass falls onto a spring and leaves it again: one contact, one leave.
    let touching = false;
    const times: number[] = [];
    const equation: DifferentialEquation = {
      size: 2,
      rates: (_time, [place, speed], rates) => {
        rates[0] = speed as number;
        rates[1] = -9.80665 - (touching ? 1e4 * (place as number) : 0);
      },
    };
    const contact: Event = {
      value: (_time, state) => state[0] as number,
      direction: () => (touching ? 1 : -1),
      happens: (time) => {
        times.push(time);
        touching = !touching;
        return 'restart';
      },
    };
    const { state } = integrate(equation, { from: 0, to: 0.6, state: [0.2, 0], ...quiet, events: [contact] });
    expect(times).toHaveLength(2);
    expect(times[0]).toBeCloseTo(Math.sqrt(0.4 / 9.80665), 9);
    const energy = 9.80665 * (state[0] ?? 0) + (state[1] ?? 0) ** 2 / 2;
    expect(energy).toBeCloseTo(9.80665 * 0.2, 8);
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
    expect(() => integrate(oscillator, { from: 0, to: 1e3, state: [1, 0], ...quiet, stepLimit: 50 })).toThrow(
      /too many steps/u,
    );
  });
});
