import { describe, expect, test } from 'vitest';
import { sharpHoleLaw } from '../../lib/flow/hole/sharp-hole.js';
import {
  apparentViscosityRatio,
  thinningResistance,
  tubeWallShearRate,
  viscosityInHole,
} from '../../lib/flow/hole/thinning-hole.js';
import { localExponent, ratioOfViscosity, writeThinned } from '../../lib/fluid/shear/thinning-viscosity.js';
import type { FluidState, ShearThinning } from '../../lib/index.js';

const oils: readonly (readonly [string, ShearThinning])[] = [
  ['Carreau', { kind: 'carreau-yasuda', time: 2e-5, exponent: 0.6, bend: 2, floor: 0 }],
  ['Carreau with a floor', { kind: 'carreau-yasuda', time: 3e-4, exponent: 0.1, bend: 1.3, floor: 0.2 }],
  ['a sharp bend', { kind: 'carreau-yasuda', time: 1e-4, exponent: 0.7, bend: 9, floor: 0 }],
  ['Cross', { kind: 'cross', time: 1e-4, exponent: 0.95, floor: 0 }],
  ['Cross with a floor', { kind: 'cross', time: 1e-5, exponent: 0.8, floor: 0.3 }],
  ['Cross that does not thin', { kind: 'cross', time: 1e-5, exponent: 0, floor: 0.3 }],
];
const diameter = 1.2e-3;
const atRest = { density: 970, kinematicViscosity: 4e-4 };
const bind = (fluid: FluidState) => sharpHoleLaw.resistance({ diameter, length: 2.5e-3 }, fluid);
const speeds = [1e-4, 1e-2, 0.3, 2, 9, 40, 300];

describe.each(oils)('%s', (_, thinning) => {
  test('the local exponent is the slope of the stress, and its slope is that of itself (differences)', () => {
    const out = new Float64Array(3);
    const stress = (rate: number) => Math.log(ratioOfViscosity(thinning, rate) * rate);
    const h = 1e-5;
    for (const rate of [10, 1e3, 2e4, 3e5, 1e8]) {
      writeThinned(thinning, rate, out);
      const by = (f: (rate: number) => number) => (f(rate * Math.exp(h)) - f(rate * Math.exp(-h))) / (2 * h);
      expect(out[0]).toBe(ratioOfViscosity(thinning, rate));
      expect(out[1]).toBeCloseTo(by(stress), 7);
      expect(out[2]).toBeCloseTo(
        by((one) => localExponent(thinning, one)),
        7,
      );
    }
  });

  test('the wall of a tube is sheared as Rabinowitsch has it, the exponent by differences of the stress', () => {
    for (const speed of speeds) {
      const plain = (8 * speed) / diameter;
      const rate = tubeWallShearRate(thinning, plain);
      const stress = (at: number) => Math.log(ratioOfViscosity(thinning, at) * at);
      const n = (stress(rate * 1.0001) - stress(rate / 1.0001)) / (2 * Math.log(1.0001));
      expect(rate / ((plain * (3 * n + 1)) / (4 * n))).toBeCloseTo(1, 6);
      expect(apparentViscosityRatio(thinning, plain)).toBeCloseTo(
        (ratioOfViscosity(thinning, rate) * rate) / plain,
        12,
      );
    }
  });

  test('the pressure drop is that of the law bound anew to the apparent viscosity, its slope the difference, its inverse the speed', () => {
    const hole = thinningResistance(bind, diameter, atRest, thinning);
    for (const speed of speeds.flatMap((size) => [size, -size])) {
      const kinematicViscosity = viscosityInHole(
        diameter,
        atRest.kinematicViscosity,
        thinning,
        Math.abs(speed),
      );
      const drop = hole.pressureDrop(speed);
      expect(drop / bind({ density: 970, kinematicViscosity }).pressureDrop(speed)).toBeCloseTo(1, 12);
      const step = 1e-5 * speed;
      const difference = (hole.pressureDrop(speed + step) - hole.pressureDrop(speed - step)) / (2 * step);
      expect(hole.slope(speed) / difference).toBeCloseTo(1, 6);
      expect(hole.meanSpeed(drop) / speed).toBeCloseTo(1, 10);
    }
    expect([hole.pressureDrop(0), hole.slope(0), hole.meanSpeed(0)]).toEqual([0, hole.creepingSlope, 0]);
  });
});
