import { describe, expect, test } from 'vitest';
import { InputError } from '../../lib/base/input-error.js';
import { fitQuality } from '../../lib/measure/answer/fit-quality.js';
import { lawDeviation, measuredSpeeds } from '../../lib/measure/answer/measured-speeds.js';
import { posteriorOf } from '../../lib/measure/answer/posterior.js';
import { profileInterval } from '../../lib/measure/answer/profile.js';
import { tellingOf } from '../../lib/measure/answer/telling.js';
import { fitShock } from '../../lib/measure/fit/fit-shock.js';
import { statedUnknowns } from '../../lib/measure/fit/prior.js';
import type { Unknown } from '../../lib/measure/fit/unknown.js';
import type { ShockLaw } from '../../lib/measure/model/shock-law.js';
import type { Reading } from '../../lib/measure/reading/reading.js';
import { FitError } from '../../lib/numeric/least-squares/fit-error.js';
import { coordinate, spreadOf } from '../../lib/numeric/sampling/draws.js';
import { inventedLaw } from './invented-shock.js';
import { oneHole } from './one-hole.js';

const { truth, diameter, viscosity, pin, ball, problem } = oneHole;
/** The law of a shock that has none below a diameter [m]. */
const onlyAbove =
  (least: number, error: Error): ShockLaw =>
  (state) => {
    if (state.holeDiameter < least) throw error;
    return inventedLaw(state);
  };
const noLaw = new InputError({ field: 'holeDiameter', value: 0, accepted: 'more' });

describe('one hole and one pin gauge', () => {
  const fit = fitShock(problem());

  test('the hole is what the gauge says, and as sure', () => {
    expect(fit.parameters[0]).toBeCloseTo(1.3e-3, 12);
    expect((fit.standardDeviations[0] ?? 0) / 5e-6).toBeCloseTo(1, 8);
  });

  test('the interval of 95 % is 1.96 uncertainties to each side, and ends at the least value', () => {
    const [low, high] = profileInterval(fit, 'holeDiameter');
    expect((1.3e-3 - low) / 5e-6).toBeCloseTo(1.959964, 5);
    expect((high - 1.3e-3) / 5e-6).toBeCloseTo(1.959964, 5);
    const bounded = fitShock(problem({ unknowns: [{ ...diameter, least: 1.295e-3 }] }));
    expect(profileInterval(bounded, 'holeDiameter')).toEqual([1.295e-3, expect.closeTo(high, 10)]);
  });

  test('the interval of what is not unknown is refused, with what is', () => {
    expect(() => profileInterval(fit, 'friction')).toThrow('quantity must be one of holeDiameter');
  });

  test('as many readings as unknowns leave nothing to judge the scatter by', () => {
    expect(fit.degreesOfFreedom).toBe(0);
    expect(fitQuality(fit)).toEqual({
      scatterChance: 1,
      birgeRatio: 1,
      runsChance: undefined,
      verdict: 'plausible',
    });
  });

  test('without a prior the readings are all that is known', () => {
    expect(tellingOf(fit).shrinkage).toEqual([{ quantity: 'holeDiameter', ratio: 0 }]);
  });
});

test('a density that was weighed is the density', () => {
  const density: Unknown = { quantity: 'density', scale: 'plain' };
  const weighed: Reading = { kind: 'density', density: 955, temperature: 298.15, uncertainty: 2 };
  // The invented oil has a density of its own, whatever the state says.
  const call = () => fitShock(problem({ unknowns: [density], readings: [weighed] }));
  expect(call).toThrow('the readings do not tell density');
  const asked: ShockLaw = (state) => {
    const shock = inventedLaw(state);
    return { ...shock, at: (temperature) => ({ ...shock.at(temperature), density: state.density }) };
  };
  const found = fitShock(problem({ law: asked, unknowns: [density], readings: [weighed] }));
  expect(found.parameters[0]).toBeCloseTo(955, 6);
  expect(found.standardDeviations[0]).toBeCloseTo(2, 6);
});

describe('a law that ends', () => {
  test('cuts the posterior: a normal distribution from 1 below its mean on has the mean φ(1)/Φ(1) = 0.2876', () => {
    // 0.241971/0.841345, from tables of the normal distribution.
    const fit = fitShock(problem({ law: onlyAbove(1.295e-3, noLaw) }));
    const draws = posteriorOf(fit, 32_768, 3);
    const { mean } = spreadOf(coordinate(draws, 0), draws.weights, []);
    expect((mean - 1.3e-3) / 5e-6).toBeCloseTo(0.2876, 1);
    expect(Math.min(...coordinate(draws, 0).filter((_, index) => draws.weights[index]))).toBeGreaterThan(
      1.295e-3,
    );
  });

  test('on both sides of the start gives no slope, said as it is', () => {
    const only: ShockLaw = (state) => {
      if (state.holeDiameter !== truth.holeDiameter) throw noLaw;
      return inventedLaw(state);
    };
    const call = () => fitShock(problem({ law: only }));
    expect(call).toThrow(FitError);
    expect(call).toThrow('the model has no slope where the fit ended');
  });

  test('by a fault of its own is not taken for one that ends', () => {
    const fault = new TypeError('a slip');
    const call = () =>
      fitShock(problem({ law: onlyAbove(truth.holeDiameter, fault), readings: [pin(1e-3)] }));
    expect(call).toThrow(fault);
  });
});

describe('readings that are too few or none', () => {
  test('tell nothing of an unknown that they do not depend on', () => {
    const call = () => fitShock(problem({ readings: [ball] }));
    expect(call).toThrow('the readings do not tell holeDiameter');
  });

  test('are refused, with what would help', () => {
    const gap: Unknown = { quantity: 'gap', scale: 'plain' };
    expect(() => fitShock(problem({ unknowns: [viscosity, gap] }))).toThrow(
      'readings must be 2 or more different ones for kinematicViscosity, gap; another reading would do',
    );
    expect(() => fitShock(problem({ unknowns: [gap, diameter] }))).toThrow(
      'a pin gauge in the hole would do',
    );
    expect(() => fitShock(problem({ readings: [] }))).toThrow('readings must be 1 or more, got 0');
  });

  test('are enough where priors say the rest: the answer is the prior', () => {
    const prior = { mean: 1.2e-3, standardDeviation: 1e-5 };
    const fit = fitShock(problem({ unknowns: [{ ...diameter, prior }], readings: [] }));
    expect(fit.parameters[0]).toBeCloseTo(1.2e-3, 12);
    expect((fit.standardDeviations[0] ?? 0) / 1e-5).toBeCloseTo(1, 8);
  });

  test('a force without a speed is refused', () => {
    const still: Reading = {
      kind: 'force',
      speed: 0,
      position: 0,
      temperature: 298.15,
      time: 0,
      force: 1,
      uncertainty: 0.1,
    };
    for (const speed of [0, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => fitShock(problem({ readings: [{ ...still, speed }] }))).toThrow(
        'readings[0].speed must be',
      );
  });
});

describe('how far the law is to be trusted', () => {
  const error = { inside: 0.02, perThreefold: 0.05 };
  const drop: Reading = {
    kind: 'drop',
    mass: 0.1,
    times: [2, 1],
    timing: 'frames',
    uncertainty: 0.01,
    temperature: 298.15,
    from: 0.025,
    to: 0.005,
  };

  test('grows with each factor of three beyond the speeds that were measured', () => {
    const speeds = measuredSpeeds([drop, pin(1.3e-3)]);
    expect(speeds).toEqual([0.01, 0.02]);
    const at = (speed: number) => lawDeviation(error, speed, speeds);
    expect(at(-0.015)).toBeCloseTo(0.02, 12);
    expect(at(0.18)).toBeCloseTo(0.02 + 2 * 0.05, 12);
    expect(at(0.01 / 3)).toBeCloseTo(0.07, 12);
  });

  test('has no edge where no reading moved the shaft', () => {
    expect(measuredSpeeds([ball, pin(1.3e-3)])).toBeUndefined();
    expect(lawDeviation(error, 9, undefined)).toBe(0.02);
  });
});

test('a label whose ends are no viscosities or out of order is refused by its own name', () => {
  const stated = (low: number, high: number) => () =>
    statedUnknowns({
      gap: 4e-5,
      gasPressure: 101_325,
      holeDiameter: 1.5e-3,
      kinematicViscosity: [low, high],
    });
  expect(stated(2e-4, -1)).toThrow('kinematicViscosity[1] must be greater than 0 m²/s, got -1 m²/s');
  expect(stated(2e-4, 1e-4)).toThrow('kinematicViscosity[1] must be above 0.0002 m²/s, got 0.0001 m²/s');
  expect(stated(-1, 1e-4)).toThrow('kinematicViscosity[0]');
  expect(stated(2e-4, 3e-4)()[0]?.quantity).toBe('kinematicViscosity');
});
