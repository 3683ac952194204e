import { describe, expect, test } from 'vitest';
import { compressAiryOil } from '../../lib/fluid/air/air-in-oil.js';
import {
  bubblyOil,
  bubblyViscosityRatio,
  rigidBubblesViscosityRatio,
} from '../../lib/fluid/air/bubbly-viscosity.js';

/** Change of viscosity for each share of few bubbles. */
const slope = (ratio: (share: number) => number) => (ratio(1e-6) - 1) / 1e-6;

describe('viscosity of oil with bubbles', () => {
  // Taylor 1932 (from memory) and Murai & Oiwa 2008 (abstract read): 1 + φ while round, 1 − 5/3 φ drawn out; Einstein: 1 + 5/2 φ.
  test('few bubbles: 1 + φ while round, 1 − 5/3 φ drawn out, 1 + 5/2 φ with a rigid skin', () => {
    expect(slope((share) => bubblyViscosityRatio(share, 0))).toBeCloseTo(1, 4);
    expect(slope((share) => bubblyViscosityRatio(share, 1e9))).toBeCloseTo(-5 / 3, 4);
    expect(slope(rigidBubblesViscosityRatio)).toBeCloseTo(2.5, 4);
  });

  test('falls with shear, from above 1 to below 1 (Rust & Manga 2002, abstract read), through 1 near a capillary number of one half to one', () => {
    const at = (capillary: number) => bubblyViscosityRatio(0.1, capillary);
    expect(at(0.01)).toBeGreaterThan(1.1);
    expect(at(0.5)).toBeGreaterThan(1);
    expect(at(1)).toBeLessThan(1);
    expect(at(100)).toBeCloseTo(0.9 ** (5 / 3), 3);
  });

  test.each([
    [() => bubblyViscosityRatio(0.6, 0), 'airFraction must be 0 to 0.5'],
    [() => bubblyViscosityRatio(0.1, -1), 'capillaryNumber must be 0 or more'],
    [() => rigidBubblesViscosityRatio(-0.1), 'airFraction must be 0 to 0.5'],
  ])('refuses what no bubbly liquid has', (call, message) => {
    expect(call).toThrow(message);
  });
});

describe('limits of an oil with bubbles mixed in', () => {
  const oil = { liquidBulkModulus: 0.85e9, airFraction: 0.05, referencePressure: 1e5 };

  test('hold what either way of compressing and either kind of bubble gives', () => {
    const band = bubblyOil(oil, 5e5);
    for (const polytropicExponent of [1, 1.1, 1.4]) {
      const { airFraction, bulkModulus } = compressAiryOil({ ...oil, polytropicExponent }, 5e5);
      expect(airFraction).toBeGreaterThanOrEqual(band.airFraction.low);
      expect(airFraction).toBeLessThanOrEqual(band.airFraction.high);
      expect(bulkModulus).toBeGreaterThanOrEqual(band.bulkModulus.low);
      expect(bulkModulus).toBeLessThanOrEqual(band.bulkModulus.high);
      for (const capillary of [0, 1, 1e6]) {
        const ratio = bubblyViscosityRatio(airFraction, capillary);
        expect(ratio).toBeGreaterThan(band.viscosityRatio.low);
        expect(ratio).toBeLessThan(band.viscosityRatio.high);
      }
    }
  });

  test('at rest 5 % of air leaves the viscosity open by a fifth, and the stiffness at 2 to 3 MPa', () => {
    const { viscosityRatio, bulkModulus, densityRatio } = bubblyOil(oil, 1e5);
    expect(viscosityRatio.low).toBeCloseTo(0.918, 3);
    expect(viscosityRatio.high).toBeCloseTo(1.137, 3);
    expect(bulkModulus.low).toBeCloseTo(2.0e6, -5);
    expect(bulkModulus.high).toBeCloseTo(2.8e6, -5);
    expect(densityRatio).toEqual({ low: 0.95, high: 0.95 });
  });

  test('without air nothing is open but the digits', () => {
    expect(bubblyOil({ ...oil, airFraction: 0 }, 3e5).viscosityRatio).toEqual({ low: 1, high: 1 });
  });

  test('a foam is refused', () => {
    expect(() => bubblyOil({ ...oil, airFraction: 0.5 }, 5e4)).toThrow('airFraction must be 0 to 0.5');
  });
});
