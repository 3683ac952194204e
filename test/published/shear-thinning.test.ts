import { describe, expect, test } from 'vitest';
import { type AnnularGap, annularGapConductance } from '../../lib/flow/gap/annular-gap.js';
import { thinningGapFlow } from '../../lib/flow/gap/thinning-gap.js';
import { sharpHoleLaw } from '../../lib/flow/hole/sharp-hole.js';
import { thinningResistance, tubeWallShearRate } from '../../lib/flow/hole/thinning-hole.js';
import { pistonFlow } from '../../lib/flow/piston/piston-flow.js';
import type { FluidState } from '../../lib/fluid/oil/fluid-state.js';
import {
  localExponent,
  type ShearThinning,
  viscosityRatio,
} from '../../lib/fluid/shear/thinning-viscosity.js';

/** A Carreau oil so far beyond its bend that it is a power law: η = η₀ (λ γ̇)^(n − 1). */
const powerLaw = (exponent: number): ShearThinning => ({
  kind: 'carreau-yasuda',
  time: 1e6,
  exponent,
  bend: 2,
  floor: 0,
});
const carreau = (exponent: number, time: number): ShearThinning => ({
  kind: 'carreau-yasuda',
  time,
  exponent,
  bend: 2,
  floor: 0,
});

describe('power-law oil in a tube: Bird, Stewart & Lightfoot, Transport Phenomena, table 8.3 (from memory)', () => {
  test.each([0.3, 0.6, 0.8])('Q = (π R³ n/(3n + 1)) (τ_w/K)^(1/n), n %d', (n) => {
    const [diameter, length, density, kinematicViscosity] = [1e-3, 0.5, 970, 1e-3];
    // A tube so long that its ends do not count, so slow that inertia does not either.
    const fluid = { density, kinematicViscosity };
    const bind = (state: FluidState) => sharpHoleLaw.resistance({ diameter, length }, state);
    const { pressureDrop, meanSpeed } = thinningResistance(bind, diameter, fluid, powerLaw(n));
    const drop = pressureDrop(1e-4);
    const consistency = density * kinematicViscosity * 1e6 ** (n - 1);
    const wallStress = (drop * diameter) / (4 * length);
    const radius = diameter / 2;
    const exact = ((Math.PI * radius ** 3 * n) / (3 * n + 1)) * (wallStress / consistency) ** (1 / n);
    // The ends add 1.2 diameters to 500.
    expect(Math.abs((1e-4 * Math.PI * radius ** 2) / exact - 1)).toBeLessThan(0.004 / n);
    expect(meanSpeed(drop) / 1e-4).toBeCloseTo(1, 9);
  });

  test('V 10 m/s, d 1 mm, n 0.8 shears the wall at 85 000 1/s (Rabinowitsch; arithmetic)', () => {
    expect(tubeWallShearRate(powerLaw(0.8), (8 * 10) / 1e-3)).toBeCloseTo(85_000, 6);
  });
});

/** Flow through a gap and its power of the drop. */
function throughGap(
  gap: AnnularGap,
  fluid: FluidState,
  thinning: ShearThinning,
  drop: number,
): readonly [number, number] {
  const out = new Float64Array(2);
  thinningGapFlow(gap, fluid, thinning)(drop, out);
  return [out[0] ?? Number.NaN, out[1] ?? Number.NaN];
}

describe('power-law oil in a plane slit: Bird, Stewart & Lightfoot, table 8.3 (from memory)', () => {
  test.each([0.3, 0.6, 0.8])('Q = (2 W B² n/(2n + 1)) (τ_w/K)^(1/n), n %d', (n) => {
    const gap = { bore: 0.012, pistonDiameter: 0.0119, length: 0.0025, eccentricity: 0 };
    const fluid = { density: 970, kinematicViscosity: 3.5e-4 };
    const consistency = 970 * 3.5e-4 * 1e6 ** (n - 1);
    const half = 2.5e-5;
    const drop = 1e4;
    const exact =
      ((2 * Math.PI * 0.01195 * half ** 2 * n) / (2 * n + 1)) *
      ((drop * half) / 0.0025 / consistency) ** (1 / n);
    const [flow, power] = throughGap(gap, fluid, powerLaw(n), drop);
    expect(flow / exact).toBeCloseTo(1, 6);
    expect(power).toBeCloseTo(1 / n, 6);
    expect(throughGap(gap, fluid, powerLaw(n), -drop)).toEqual([-flow, power]);
  });
});

test.each([1e3, 1e5, 1e7])(
  'the power of the flow through a gap is its slope in logarithms, at %d Pa',
  (drop) => {
    const gap = { bore: 0.012, pistonDiameter: 0.0119, length: 0.0025, eccentricity: 0.3 };
    const fluid = { density: 970, kinematicViscosity: 3.5e-4 };
    for (const thinning of [
      carreau(0.4, 1e-4),
      { kind: 'cross', time: 1e-4, exponent: 0.7, floor: 0.1 } as const,
    ]) {
      const at = (factor: number): number =>
        Math.log(throughGap(gap, fluid, thinning, drop * Math.exp(factor))[0]);
      expect(throughGap(gap, fluid, thinning, drop)[1]).toBeCloseTo((at(1e-4) - at(-1e-4)) / 2e-4, 6);
    }
  },
);

describe('thinning curves', () => {
  test('Cross halves at λ γ̇ = 1, Carreau falls to 2^((n − 1)/2) (their definitions)', () => {
    expect(viscosityRatio({ kind: 'cross', time: 1e-3, exponent: 0.7, floor: 0 }, 1e3)).toBe(0.5);
    expect(viscosityRatio(carreau(0.5, 1e-3), 1e3)).toBeCloseTo(2 ** -0.25, 12);
    expect(viscosityRatio({ kind: 'cross', time: 1e-3, exponent: 0.7, floor: 0.2 }, 1e12)).toBeCloseTo(
      0.2,
      5,
    );
  });

  test.each([
    carreau(0.6, 1e-5),
    { kind: 'cross', time: 1e-5, exponent: 0.7, floor: 0.1 },
    { kind: 'carreau-yasuda', time: 1e-5, exponent: 0.4, bend: 1.2, floor: 0.05 },
  ] as const)('the local exponent is the slope of the stress, %o', (thinning) => {
    for (const rate of [1e2, 1e4, 1e5, 1e6, 1e8]) {
      const stress = (g: number) => viscosityRatio(thinning, g) * g;
      const slope = Math.log(stress(1.001 * rate) / stress(rate / 1.001)) / (2 * Math.log(1.001));
      expect(localExponent(thinning, rate)).toBeCloseTo(slope, 5);
    }
  });
});

describe('Carreau oil in a hole against the numerical reference (n 0.6, L/d 2)', () => {
  // Shear rate, over V/d, at which the Newtonian law with that viscosity gives the pressure drop of the reference; own axisymmetric solutions.
  test.each([
    [1, 5, 6],
    [10, 6.5, 6.8],
    [30, 7.7, 8],
    [100, 10, 11],
  ])('Re %d: the viscosity that counts is that at %d to %d V/d, within a quarter', (re, low, high) => {
    const bind = (fluid: FluidState) => sharpHoleLaw.resistance({ diameter: 1, length: 2 }, fluid);
    const fluid = { density: 1, kinematicViscosity: 1 / re };
    for (const time of [0.0125, 0.1, 0.5]) {
      const thinning = carreau(0.6, time);
      const newtonianAt = (rate: number) =>
        bind({ density: 1, kinematicViscosity: viscosityRatio(thinning, rate) / re }).pressureDrop(1);
      const drop = thinningResistance(bind, 1, fluid, thinning).pressureDrop(1);
      // A quarter of the rate is 3 to 9 % of the viscosity with this exponent.
      expect(drop).toBeLessThan(newtonianAt(0.75 * low));
      expect(drop).toBeGreaterThan(newtonianAt(1.25 * high));
    }
  });
});

describe('a thinning oil in a piston', () => {
  const piston = {
    diameter: 0.01195,
    thickness: 0.0025,
    holes: [
      { count: 4, diameter: 1.2e-3 },
      { count: 1, diameter: 0.8e-3 },
    ],
    eccentricity: 0,
  };
  const oil = { density: 970, kinematicViscosity: 1e-3 };

  test('that does not thin below its bend is Newtonian there', () => {
    const slow = { ...oil, shearThinning: carreau(0.5, 1e-9) };
    const newtonian = pistonFlow(piston, 0.012, oil).pressureDrop(1e-6).pressureDrop;
    expect(pistonFlow(piston, 0.012, slow).pressureDrop(1e-6).pressureDrop / newtonian).toBeCloseTo(1, 7);
  });

  test('needs less pressure the more it thins, and flow and pressure stay inverse', () => {
    const drops = [1e-6, 1e-5, 1e-4].map((time) => {
      const bound = pistonFlow(piston, 0.012, { ...oil, shearThinning: carreau(0.5, time) });
      const { pressureDrop, iterations } = bound.pressureDrop(2e-5);
      expect(bound.flow(pressureDrop) / 2e-5).toBeCloseTo(1, 9);
      expect(iterations).toBeLessThan(40);
      return pressureDrop;
    });
    expect(drops[1]).toBeLessThan(drops[0] ?? 0);
    expect(drops[2]).toBeLessThan(drops[1] ?? 0);
  });

  test.each([
    [{ ...carreau(0.5, 0) }, 'fluid.shearThinning.time must be greater than 0 s'],
    [{ ...carreau(1.2, 1) }, 'fluid.shearThinning.exponent must be 0.05 to 1'],
    [{ ...carreau(0.5, 1), bend: 0 }, 'fluid.shearThinning.bend must be greater than 0'],
    [{ ...carreau(0.5, 1), floor: 1 }, 'fluid.shearThinning.floor must be 0 to 0.99'],
    [
      { kind: 'cross', time: 1, exponent: 1, floor: 0 } as const,
      'fluid.shearThinning.exponent must be 0 to 0.95',
    ],
  ])('%o is refused', (shearThinning, message) => {
    expect(() => pistonFlow(piston, 0.012, { ...oil, shearThinning })).toThrow(message);
  });

  test('leaks as the Newtonian oil where it does not thin', () => {
    const gap = { bore: 0.012, pistonDiameter: 0.0119, length: 0.0025, eccentricity: 0.3 };
    const [flow, power] = throughGap(gap, oil, carreau(0.5, 1e-12), 1e5);
    expect(power).toBeCloseTo(1, 9);
    expect(flow / (1e5 * annularGapConductance(gap, oil))).toBeCloseTo(1, 9);
  });
});
