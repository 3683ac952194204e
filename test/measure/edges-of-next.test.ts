import { describe, expect, test } from 'vitest';
import { nextMeasurement } from '../../lib/measure/answer/next-measurement.js';
import type { ShockLaw } from '../../lib/measure/model/shock-law.js';
import { FitError } from '../../lib/numeric/least-squares/fit-error.js';
import { inventedLaw } from './invented-shock.js';
import { oneHole } from './one-hole.js';

const { diameter, pin, problem } = oneHole;

describe('what to measure next', () => {
  const gauge = { name: 'gauge', minutes: 2, readings: [pin(1.3e-3)] };
  const question = { speeds: [0.3], position: 0.014, temperature: 295.15, lawDeviation: 0 };
  const prior = { mean: 1.3e-3, standardDeviation: 50e-6 };
  const start = problem({ unknowns: [{ ...diameter, prior }], readings: [] });

  test('where only one thing can be measured, that: it leaves 1 in √101 of the doubt', () => {
    const advice = nextMeasurement(start, [[1.3e-3]], [gauge], question);
    expect(advice.next.names).toEqual(['gauge']);
    expect(advice.pairs).toEqual([]);
    expect(advice.next.after / advice.now).toBeCloseTo(1 / Math.sqrt(101), 6);
  });

  test('nothing to measure, nothing to know and nowhere to judge are refused', () => {
    expect(() => nextMeasurement(start, [[1.3e-3]], [], question)).toThrow('candidates must be 1 or more');
    expect(() => nextMeasurement(start, [], [gauge], question)).toThrow('at must be 1 or more');
    expect(() => nextMeasurement(start, [[1.3e-3]], [gauge], { ...question, speeds: [] })).toThrow(
      'speeds must be 1 or more',
    );
    expect(() => nextMeasurement(start, [[1.3e-3]], [{ ...gauge, minutes: 0 }], question)).toThrow(
      'candidates[0].minutes must be greater than 0',
    );
  });

  test('a parameter that nothing tells, and a law without a value, are said', () => {
    const fault = (call: () => unknown) => {
      try {
        call();
      } catch (error) {
        if (error instanceof FitError) return error.fault;
      }
      return undefined;
    };
    const open = problem({ readings: [] });
    expect(fault(() => nextMeasurement(open, [[1.3e-3]], [gauge], question))).toBe('rank-deficient');
    const lost: ShockLaw = (state) => {
      const shock = inventedLaw(state);
      return { ...shock, at: (t) => ({ ...shock.at(t), dampingForce: () => Number.NaN }) };
    };
    expect(fault(() => nextMeasurement({ ...start, law: lost }, [[1.3e-3]], [gauge], question))).toBe(
      'not-finite',
    );
  });
});
