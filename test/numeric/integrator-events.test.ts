import { describe, expect, test } from 'vitest';
import type { DifferentialEquation } from '../../lib/numeric/integrator/differential-equation.js';
import type { Event } from '../../lib/numeric/integrator/events.js';
import { integrate } from '../../lib/numeric/integrator/integrate.js';
import { oscillator } from './oscillator.js';

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
