import { describe, expect, test } from 'vitest';
import { thinningGapFlow } from '../../lib/flow/gap/thinning-gap.js';
import { sharpestBend, viscosityRatio } from '../../lib/fluid/shear/thinning-viscosity.js';
import { damperForce, damperModel, type ShearThinning } from '../../lib/index.js';
import { randomDamper, randomNumbers } from './random-damper.js';

/** Any thinning that is accepted. */
function anyThinning(next: () => number): ShearThinning {
  const decades = (low: number, high: number): number => low * (high / low) ** next();
  const time = decades(1e-9, 1e3);
  const floor = next() < 0.3 ? 0 : 0.99 * next();
  if (next() < 0.5) return { kind: 'cross', time, exponent: 0.95 * next(), floor };
  const exponent = 0.05 + 0.95 * next();
  return { kind: 'carreau-yasuda', time, exponent, bend: decades(0.1, sharpestBend(exponent)), floor };
}

describe('an oil that thins in any accepted way', () => {
  test('through 60 random pistons: a force each time, against the motion, less than without thinning', () => {
    const next = randomNumbers(20_261_126);
    for (let index = 0; index < 60; index++) {
      const { damper, fluid, speed } = randomDamper(next, 0.2);
      const shearThinning = anyThinning(next);
      const { shearThinning: _, ...plain } = fluid;
      const motion = { speed: index % 2 === 0 ? speed : -speed, position: 0.004 };
      const { dampingForce } = damperForce(damperModel(damper, { ...plain, shearThinning }), motion);
      const newtonian = damperForce(damperModel(damper, plain), motion).dampingForce;
      expect(dampingForce * motion.speed).toBeGreaterThan(0);
      expect(Math.abs(dampingForce)).toBeLessThan(1.02 * Math.abs(newtonian));
    }
  });

  test('far beyond the sharpest bend is the power law, whatever its sharpness', () => {
    for (const bend of [0.5, 2, 10]) {
      const thinning = { kind: 'carreau-yasuda', time: 1, exponent: 0.7, bend, floor: 0 } as const;
      expect(viscosityRatio(thinning, 1e20) / 1e20 ** -0.3).toBeCloseTo(1, 6);
      expect(viscosityRatio(thinning, 1e-20)).toBeCloseTo(1, 6);
    }
  });

  test.each([
    [0.05, 3, '0.1 to 2.1'],
    [0.3, 8, '0.1 to 7'],
    [0.8, 11, '0.1 to 10'],
    [0.8, 0.09, '0.1 to 10'],
  ])('exponent %d with a bend of %d is refused: it must be %s', (exponent, bend, accepted) => {
    const shearThinning = { kind: 'carreau-yasuda', time: 1e-4, exponent, bend, floor: 0 } as const;
    const { damper, fluid } = randomDamper(randomNumbers(3), 0);
    expect(() => damperModel(damper, { ...fluid, shearThinning })).toThrow(
      `fluid.shearThinning.bend must be ${accepted}, got ${bend}`,
    );
  });

  test('a bend a little sharper than is accepted lets the flow of a slit fall while the shear rises (worked apart)', () => {
    // γ̇ 3n/(2n + 1), n the local exponent by differences of the logarithm of the stress.
    const falls = (exponent: number, bend: number): boolean => {
      const stress = (rate: number) => rate * (1 + rate ** bend) ** ((exponent - 1) / bend);
      const flow = (rate: number) => {
        const n = Math.log(stress(rate * 1.0001) / stress(rate / 1.0001)) / Math.log(1.0001 ** 2);
        return (rate * 3 * n) / (2 * n + 1);
      };
      return Array.from({ length: 4000 }, (_, i) => 10 ** (i / 1000 - 1)).some(
        (rate) => flow(rate * 1.01) < flow(rate),
      );
    };
    for (const exponent of [0.05, 0.1, 0.2, 0.3]) {
      expect(falls(exponent, sharpestBend(exponent))).toBe(false);
      expect(falls(exponent, sharpestBend(exponent) + 0.3)).toBe(true);
    }
  });
});

test('a gap passes some flow at any pressure, more at a higher one, or more than any number', () => {
  const gap = { bore: 0.013, pistonDiameter: 0.0129, length: 0.002, eccentricity: 0.1 };
  const out = new Float64Array(2);
  for (const exponent of [0.05, 0.3])
    for (const floor of [0, 1e-255, 0.1])
      for (const time of [1e-9, 1e-4, 1]) {
        const thinning = { kind: 'carreau-yasuda', time, exponent, bend: 2, floor } as const;
        const through = thinningGapFlow(gap, { density: 970, kinematicViscosity: 1e-4 }, thinning);
        let before = 0;
        for (let power = -6; power < 60; power += 1.5) {
          through(10 ** power, out);
          const [flow = Number.NaN] = out;
          expect(flow > before || flow === Number.POSITIVE_INFINITY).toBe(true);
          before = flow;
        }
      }
});
