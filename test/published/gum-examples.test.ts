import { describe, expect, test } from 'vitest';
import { intervalBelief } from '../../lib/measure/fit/prior.js';
import { effectiveDegreesOfFreedom, propagate } from '../../lib/measure/statistics/propagation.js';
import { linearLeastSquares } from '../../lib/numeric/least-squares/linear-least-squares.js';
import { studentQuantile } from '../../lib/numeric/quantiles.js';
import { checkRow } from '../measure/invented-shock.js';

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

describe('examples of the GUM, JCGM 100:2008', () => {
  type Length = {
    ls: number;
    d: number;
    asMean: number;
    thMean: number;
    uLs: number;
    uD: number;
    daHalfWidth: number;
    dtHalfWidth: number;
  };

  test('H.1: length of a gauge block, 50 000 838 nm with 32 nm', () => {
    const { inputs, expected } = checkRow<
      Length,
      { l: number; u: number; components: Record<string, number> }
    >('gum-h1-l');
    // Difference of expansion and of temperature, both near zero.
    const length = ([ls = 0, d = 0, da = 0, theta = 0, as = 0, dt = 0]: readonly number[]) => [
      ls + d - ls * (da * theta + as * dt),
    ];
    const half = (width: number) => intervalBelief(-width, width).standardDeviation;
    const uncertainties = [inputs.uLs, inputs.uD, half(inputs.daHalfWidth), 0, 0, half(inputs.dtHalfWidth)];
    const found = propagate(length, [inputs.ls, inputs.d, 0, inputs.thMean, inputs.asMean, 0], uncertainties);
    expect(Math.round(found.values[0] ?? 0)).toBe(expected.l);
    expect(Math.round(found.uncertainties[0] ?? 0)).toBe(expected.u);
    const part = (index: number) =>
      propagate(
        length,
        [inputs.ls, inputs.d, 0, inputs.thMean, inputs.asMean, 0],
        uncertainties.map((u, at) => (at === index ? u : 0)),
      ).uncertainties[0] ?? 0;
    expect(part(2)).toBeCloseTo(expected.components['da'] ?? 0, 1);
    expect(part(5)).toBeCloseTo(expected.components['dt'] ?? 0, 1);
  });

  test('H.1: 16 degrees of freedom, 93 nm at 99 %', () => {
    const { inputs } = checkRow<{ u: number[]; dof: number[] }, number>('gum-h1-dof');
    const freedom = effectiveDegreesOfFreedom(
      inputs.u.map((uncertainty, index) => ({ uncertainty, degreesOfFreedom: inputs.dof[index] ?? 0 })),
    );
    expect(Math.abs(freedom - 16.7)).toBeLessThan(0.1);
    const expanded = checkRow<{ u: number; dof: number }, number>('gum-h1-U99');
    expect(
      Math.abs(studentQuantile(0.995, Math.floor(freedom)) * expanded.inputs.u - expanded.expected),
    ).toBeLessThan(0.6);
  });

  type Readings = { V: number[]; I_mA: number[]; phi: number[] };

  test('H.2: resistance, reactance and impedance from means that are correlated', () => {
    const { inputs, expected } = checkRow<Readings, Record<string, number>>('gum-h2-result');
    const series = [inputs.V, inputs.I_mA.map((value) => value / 1000), inputs.phi];
    const means = series.map(mean);
    const count = inputs.V.length;
    const covariance = series.map((first, row) =>
      series.map((second, column) => {
        const products = first.map(
          (value, index) => (value - (means[row] ?? 0)) * ((second[index] ?? 0) - (means[column] ?? 0)),
        );
        return products.reduce((sum, product) => sum + product, 0) / (count - 1) / count;
      }),
    );
    const found = propagate(
      ([V = 0, I = 1, phi = 0]) => [(V * Math.cos(phi)) / I, (V * Math.sin(phi)) / I, V / I],
      means,
      covariance,
    );
    const correlation = (row: number, column: number) =>
      (found.covariance[row]?.[column] ?? 0) /
      ((found.uncertainties[row] ?? 1) * (found.uncertainties[column] ?? 1));
    expect(found.values[0]).toBeCloseTo(expected['R'] ?? 0, 3);
    expect(found.values[1]).toBeCloseTo(expected['X'] ?? 0, 3);
    expect(found.values[2]).toBeCloseTo(expected['Z'] ?? 0, 3);
    expect(found.uncertainties[0]).toBeCloseTo(expected['uR'] ?? 0, 3);
    // The GUM prints 0.295; unrounded it is 0.2956.
    expect(Math.abs((found.uncertainties[1] ?? 0) - 0.295)).toBeLessThan(0.001);
    expect(found.uncertainties[2]).toBeCloseTo(expected['uZ'] ?? 0, 3);
    expect(correlation(0, 1)).toBeCloseTo(expected['rRX'] ?? 0, 3);
    expect(correlation(0, 2)).toBeCloseTo(expected['rRZ'] ?? 0, 3);
    expect(correlation(1, 2)).toBeCloseTo(expected['rXZ'] ?? 0, 2);
  });

  test('H.3: line of a thermometer, and its correction at 30 °C', () => {
    type Line = { t: number[]; b: number[]; t0: number };
    const { inputs, expected } = checkRow<Line, Record<string, number>>('gum-h3-line');
    const fit = linearLeastSquares(
      inputs.t.map((t) => [1, t - inputs.t0]),
      inputs.b,
    );
    const [y1 = 0, y2 = 0] = fit.coefficients;
    const [s1 = 0, s2 = 0] = fit.standardDeviations;
    expect(y1).toBeCloseTo(expected['y1'] ?? 0, 4);
    expect(y2).toBeCloseTo(expected['y2'] ?? 0, 5);
    expect(s1).toBeCloseTo(expected['s1'] ?? 0, 4);
    expect(s2).toBeCloseTo(expected['s2'] ?? 0, 5);
    expect(fit.residualStandardDeviation).toBeCloseTo(expected['s'] ?? 0, 4);
    expect((fit.covariance[0]?.[1] ?? 0) / (s1 * s2)).toBeCloseTo(expected['r'] ?? 0, 3);
    const at30 = propagate(([a = 0, b = 0]) => [a + b * (30 - inputs.t0)], fit.coefficients, fit.covariance);
    const predicted = checkRow<Line, { b30: number; u: number }>('gum-h3-predict').expected;
    expect(at30.values[0]).toBeCloseTo(predicted.b30, 4);
    expect(at30.uncertainties[0]).toBeCloseTo(predicted.u, 4);
  });
});
