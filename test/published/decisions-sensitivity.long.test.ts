import { describe, expect, it } from 'vitest';
import { sensitivityIndices, type UnitCubeModel } from '../../lib/decisions/spread/sensitivity-indices.js';

/**
 * Ishigami & Homma (1990): sin x1 + a sin² x2 + b x3⁴ sin x1 on (−π, π)³. Closed form of its variance as in Saltelli et al.,
 * Global Sensitivity Analysis: The Primer (2008) (from memory; worked again by hand: the three integrals are elementary).
 */
const a = 7;
const b = 0.1;
const ishigami: UnitCubeModel = {
  inputs: 3,
  outputs: 1,
  evaluate: (point, result) => {
    const [x1 = 0, x2 = 0, x3 = 0] = Array.from(point, (u) => Math.PI * (2 * u - 1));
    result[0] = Math.sin(x1) + a * Math.sin(x2) ** 2 + b * x3 ** 4 * Math.sin(x1);
  },
};
const v1 = 0.5 * (1 + (b * Math.PI ** 4) / 5) ** 2;
const v2 = a ** 2 / 8;
const v13 = b ** 2 * Math.PI ** 8 * (1 / 18 - 1 / 50);
const variance = v1 + v2 + v13;

/** Sobol's g function: the product of (|4x − 2| + a)/(1 + a); Sobol (1993), closed form there. */
const g = [0, 1, 4.5, 9, 99, 99];
const gFunction: UnitCubeModel = {
  inputs: g.length,
  outputs: 1,
  evaluate: (point, result) => {
    result[0] = g.reduce(
      (product, ai, i) => (product * (Math.abs(4 * (point[i] ?? 0) - 2) + ai)) / (1 + ai),
      1,
    );
  },
};
const gPartial = g.map((ai) => 1 / 3 / (1 + ai) ** 2);
const gVariance = gPartial.reduce((product, v) => product * (1 + v), 1) - 1;

const points = 2 ** 15;
// Scrambled nets of this size leave the estimators with about 1e-3; shares are fractions of 1, so this is a physical floor.
const floor = 3e-3;

describe('Sobol indices against closed forms', () => {
  it('Ishigami function', () => {
    const [result] = sensitivityIndices(ishigami, points, 1);
    expect(result?.mean).toBeCloseTo(a / 2, 3);
    expect(Math.abs((result?.variance ?? 0) / variance - 1)).toBeLessThan(floor);
    const first = [v1 / variance, v2 / variance, 0];
    const total = [(v1 + v13) / variance, v2 / variance, v13 / variance];
    // Values as printed in many places: 0.3139, 0.4424, 0; 0.5576, 0.4424, 0.2437.
    expect(first[0]).toBeCloseTo(0.3139, 4);
    expect(total[2]).toBeCloseTo(0.2437, 4);
    result?.shares.forEach((share, i) => {
      expect(Math.abs(share.first - (first[i] ?? 9))).toBeLessThan(floor);
      expect(Math.abs(share.total - (total[i] ?? 9))).toBeLessThan(floor);
    });
  });

  it('Sobol g function', () => {
    const [result] = sensitivityIndices(gFunction, points, 5);
    expect(Math.abs((result?.mean ?? 0) - 1)).toBeLessThan(1e-4);
    result?.shares.forEach((share, i) => {
      const own = gPartial[i] ?? 9;
      const rest = gPartial.reduce((product, v, j) => (j === i ? product : product * (1 + v)), 1);
      expect(Math.abs(share.first - own / gVariance)).toBeLessThan(floor);
      expect(Math.abs(share.total - (own * rest) / gVariance)).toBeLessThan(floor);
    });
  });
});
