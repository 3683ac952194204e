import { describe, expect, test } from 'vitest';
import { ringPlateCompliance } from '../../lib/flow/valve/ring-plate.js';

const plate = (radiusRatio: number) => ({
  innerRadius: 0.01 / radiusRatio,
  outerRadius: 0.01,
  thickness: 1e-4,
  elasticModulus: 2e11,
  poissonRatio: 0.3,
});
const stiffness = 2e11 * 1e-4 ** 3;

describe('ring clamped inside, free outside: Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells, Table 3 (from memory)', () => {
  // Coefficient of w E t³ / (P a²), printed digits.
  test.each([
    [1.25, 0.0051, 5],
    [1.5, 0.0249, 4],
    [2, 0.0877, 4],
    [3, 0.209, 3],
    [4, 0.293, 3],
    [5, 0.35, 3],
  ])('force on the rim, a/b %d', (radiusRatio, expected, digits) => {
    const coefficient = (ringPlateCompliance(plate(radiusRatio), 0.01) * stiffness) / 0.01 ** 2;
    expect(Math.abs(coefficient - expected)).toBeLessThan(10 ** -digits);
  });

  test('a force here sags there as much as a force there sags here (Maxwell)', () => {
    const there = ringPlateCompliance(plate(3), 0.006, 0.009);
    expect(Math.abs(ringPlateCompliance(plate(3), 0.009, 0.006) / there - 1)).toBeLessThan(1e-12);
  });
});

describe('ring clamped inside, free outside, under even pressure', () => {
  const poissonRatio = 0.3;

  // Coefficient of w D / (q a⁴) at the rim, from a separate program that integrates Kirchhoff's plate equation; the same program gives the
  // printed values of Roark, Formulas for Stress and Strain, Table 11.2 case 2e. The even pressure is a sum of loaded circles, so these rows
  // check the load inside the ring and the deflection beyond it.
  test.each([
    [0.1, 0.0756930536],
    [0.3, 0.0318182366],
    [0.5, 0.0085886361],
    [0.7, 0.001095586314],
  ])('b/a %d', (radiusRatio, expected) => {
    const ring = {
      innerRadius: radiusRatio,
      outerRadius: 1,
      thickness: 0.01,
      elasticModulus: 1,
      poissonRatio,
    };
    const steps = 2000;
    const width = (1 - radiusRatio) / steps;
    let sag = 0;
    for (let step = 0; step < steps; step++) {
      const radius = radiusRatio + (step + 0.5) * width;
      sag += 2 * Math.PI * radius * width * ringPlateCompliance(ring, radius, 1);
    }
    const rigidity = 0.01 ** 3 / (12 * (1 - poissonRatio ** 2));
    // The midpoint rule errs by less than 1e-5 with 2000 steps.
    expect(Math.abs((sag * rigidity) / expected - 1)).toBeLessThan(1e-5);
  });
});
