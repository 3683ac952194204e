import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compressAiryOil } from '../../lib/fluid/air/air-in-oil.js';
import { between, decades } from './fluid-arbitraries.js';

const ratio = (value: number, wanted: number): number => Math.abs(value / wanted - 1);

describe('air in oil', () => {
  const anyAiryOil = fc.record({
    liquidBulkModulus: between(5e8, 2e9),
    airFraction: fc.oneof(fc.constant(0), decades(1e-4, 0.5)),
    referencePressure: between(5e4, 5e5),
    polytropicExponent: between(1, 1.4),
  });

  test('the bulk modulus is -V dp/dV of the volume', () => {
    fc.assert(
      fc.property(anyAiryOil, between(5e4, 2e6), (oil, pressure) => {
        const step = 1e-4 * pressure;
        const low = compressAiryOil(oil, pressure - step);
        const high = compressAiryOil(oil, pressure + step);
        const middle = compressAiryOil(oil, pressure);
        const slope = (-middle.relativeVolume * 2 * step) / (high.relativeVolume - low.relativeVolume);
        // The volume without air changes by 1e-8 here, of which the difference keeps eight digits.
        expect(ratio(middle.bulkModulus, slope)).toBeLessThan(1e-5);
      }),
    );
  });

  test('at the reference pressure the volume is 1; air makes it softer, pressure stiffer', () => {
    fc.assert(
      fc.property(anyAiryOil, between(1.01, 10), (oil, factor) => {
        const rest = compressAiryOil(oil, oil.referencePressure);
        expect(rest.relativeVolume).toBeCloseTo(1, 12);
        expect(rest.airFraction).toBeCloseTo(oil.airFraction, 12);
        expect(rest.bulkModulus).toBeLessThanOrEqual(oil.liquidBulkModulus * (1 + 1e-12));
        const pressed = compressAiryOil(oil, oil.referencePressure * factor);
        expect(pressed.relativeVolume).toBeLessThan(1);
        if (oil.airFraction > 0) expect(pressed.bulkModulus).toBeGreaterThan(rest.bulkModulus);
      }),
    );
  });
});
