import { describe, expect, test } from 'vitest';
import { apparentMass, unsteadyFlowError, unsteadyFlowWarnings } from '../../lib/flow/hole/apparent-mass.js';
import { unsteadyRows } from './unsteady-rows.js';

const rows = unsteadyRows();

const fluid = { density: 970, kinematicViscosity: 3.5e-4 };
const hole = (lengthRatio: number) => ({ diameter: 1.3e-3, length: lengthRatio * 1.3e-3 });
const frequencyOf = (frequencyNumber: number) =>
  (frequencyNumber * fluid.kinematicViscosity) / (2 * Math.PI * 1.3e-3 ** 2);

describe('apparent mass of a hole', () => {
  test('three lengths to ω d²/ν 1000 were solved', () => {
    expect(rows).toHaveLength(28);
    expect(new Set(rows.map(({ lengthRatio }) => lengthRatio))).toEqual(new Set([0.5, 1.5, 3]));
  });

  test('is ρ A (4/3 L + 1.03 d): 6.19 mg of oil about a hole of 1.3 mm, 2.6 mm long', () => {
    // 970 · π/4 · 1.3² mm² · (3.467 + 1.339) mm, by hand.
    expect(apparentMass(hole(2), fluid)).toBeCloseTo(6.187e-6, 8);
  });

  test.each(rows.filter(({ frequencyNumber }) => frequencyNumber <= 1))(
    'L/d $lengthRatio, ω d²/ν $frequencyNumber: within 0.2 % of what is in phase with the acceleration',
    ({ lengthRatio, frequencyNumber, imaginary }) => {
      const columns = (4 / 3) * lengthRatio + 1.03;
      expect(Math.abs((columns * frequencyNumber) / imaginary - 1)).toBeLessThan(0.002);
      const whole = 970 * (Math.PI / 4) * 1.3e-3 ** 3;
      expect(apparentMass(hole(lengthRatio), fluid) / whole).toBeCloseTo(columns, 9);
    },
  );
});

describe('how far steady laws are off where the flow swings', () => {
  test.each(rows)(
    'L/d $lengthRatio, ω d²/ν $frequencyNumber',
    ({ lengthRatio, frequencyNumber, steadyLaw: alone, withApparentMass: withMass }) => {
      const said = unsteadyFlowError(hole(lengthRatio), fluid, frequencyOf(frequencyNumber));
      expect(said.frequencyNumber).toBeCloseTo(frequencyNumber, 9);
      expect(Math.abs(said.steadyLaw - alone)).toBeLessThan(frequencyNumber <= 3 ? 0.002 : 0.06);
      // What is said of the mass is the worst of the three lengths, so an upper bound that is not far off.
      expect(withMass).toBeLessThan(1.03 * said.withApparentMass + 2e-4);
      if (lengthRatio === 0.5) expect(withMass).toBeGreaterThan(0.9 * said.withApparentMass - 4e-4);
    },
  );

  test('the warning comes at 5 % for the steady law, and at 3 % with the mass', () => {
    const codes = (frequencyNumber: number, hasMass: boolean) =>
      unsteadyFlowWarnings(hole(1.5), fluid, frequencyOf(frequencyNumber), hasMass).map(({ code }) => code);
    expect(codes(0.99, false)).toEqual([]);
    expect(codes(1.01, false)).toEqual(['hole-frequency-high']);
    expect(codes(9.9, true)).toEqual([]);
    expect(codes(10.1, true)).toEqual(['hole-frequency-high-for-mass']);
    const [warning] = unsteadyFlowWarnings(hole(1.5), fluid, frequencyOf(3), false);
    expect(warning?.message).toMatch(/^At 98.9 Hz the steady hole law is off by about 14 % /u);
  });

  test.each([
    [{ diameter: 0, length: 1 }, 1, 'hole.diameter'],
    [{ diameter: 1, length: 1 }, 0, 'frequency must be greater than 0 Hz'],
  ])('%j at %d Hz is refused', (bad, frequency, message) => {
    expect(() => unsteadyFlowError(bad, fluid, frequency)).toThrow(message);
  });
});
