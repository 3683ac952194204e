import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lossCoefficientIdelchikThickEdge } from '../../lib/flow/hole/idelchik-thick-edge.js';
import { inertialLoss } from '../../lib/flow/hole/inertial-loss.js';
import { sharpHoleLaw, sharpLoss } from '../../lib/flow/hole/sharp-hole.js';

const anyLengthRatio = fc.double({ min: -1.3, max: 1.5, noNaN: true }).map((decades) => 10 ** decades);
const anyReynoldsNumber = fc.double({ min: -3, max: 5, noNaN: true }).map((decades) => 10 ** decades);

/** A lone hole in a wide chamber. */
const sharp = (lengthRatio: number) => inertialLoss({ lengthRatio, ...sharpLoss(0) });

describe('inertia of the default hole law', () => {
  test('is convex in the speed, so that every Newton iteration on it settles', () =>
    fc.assert(
      fc.property(anyLengthRatio, anyReynoldsNumber, (lengthRatio, speed) => {
        const { slope } = sharpHoleLaw.resistance(
          { diameter: 1, length: lengthRatio },
          { density: 1, kinematicViscosity: 1 },
        );
        expect(slope(1.01 * speed)).toBeGreaterThan(slope(speed));
      }),
      { numRuns: 5000 },
    ));

  test('the slope of the loss coefficient is its derivative', () =>
    fc.assert(
      fc.property(anyLengthRatio, anyReynoldsNumber, (lengthRatio, re) => {
        const { coefficient, slope } = sharp(lengthRatio);
        const numerical = (coefficient(1.0001 * re) - coefficient(0.9999 * re)) / (0.0002 * re);
        expect(Math.abs(slope(re) - numerical) * re).toBeLessThan(1e-6 * coefficient(re));
      }),
    ));

  test('vanishes with the speed and never exceeds a free jet with a developed profile', () =>
    fc.assert(
      fc.property(anyLengthRatio, anyReynoldsNumber, (lengthRatio, re) => {
        expect(sharp(lengthRatio).coefficient(re)).toBeGreaterThan(0);
        expect(sharp(lengthRatio).coefficient(re)).toBeLessThan(1 + 1.25 + 1.68);
        expect(sharp(lengthRatio).coefficient(1e-6)).toBeLessThan(1e-6);
      }),
    ));

  test.each([0.5, 1, 1.5, 2, 3, 4])(
    'at Re 10 000 L/d %d is within 15 %% of the turbulent thick edge (Idelchik)',
    (lengthRatio) => {
      const turbulent = lossCoefficientIdelchikThickEdge(lengthRatio);
      expect(Math.abs(sharp(lengthRatio).coefficient(1e4) / turbulent - 1)).toBeLessThan(0.15);
    },
  );

  test('a plate without thickness loses a free jet, ζ 2.68 at high Re (Kirchhoff, contraction 0.611)', () => {
    expect(Math.abs(sharp(1e-6).coefficient(1e4) / 0.611 ** -2 - 1)).toBeLessThan(0.005);
  });
});

test('a jet that leaves the wall loses its share more, by hand', () => {
  const shares = {
    lengthRatio: 2,
    slow: 0,
    exit: 1,
    development: 1.25,
    contraction: 1.68,
    bubbleGrowth: 1 / 1988,
    onset: 35.6,
  };
  const separation = { loss: 0.4, reynoldsNumber: 200, power: 3 };
  const more = (reynoldsNumber: number) =>
    inertialLoss({ ...shares, separation }).coefficient(reynoldsNumber) -
    inertialLoss(shares).coefficient(reynoldsNumber);
  // 0.4/(1 + (200/Re)³), times the onset F of x = Re/35.6: 200/35.6 = 5.618, F = x √((1 + 1.486 x²)/(1 − 1.24 x + 3.21 x² + 1.486 x⁴)).
  const onset = (x: number) =>
    x * Math.sqrt((1 + 1.486 * x ** 2) / (1 - 1.24 * x + 3.21 * x ** 2 + 1.486 * x ** 4));
  expect(more(200)).toBeCloseTo(0.2 * onset(200 / 35.6), 12);
  expect(more(400)).toBeCloseTo((0.4 / 1.125) * onset(400 / 35.6), 12);
  expect(more(0.1)).toBe(0);
  // The slope by a difference.
  const { slope, coefficient } = inertialLoss({ ...shares, separation });
  expect(slope(300) / ((coefficient(300.01) - coefficient(299.99)) / 0.02)).toBeCloseTo(1, 6);
});
