import { describe, expect, it } from 'vitest';
import { normalProbability, normalQuantile } from '../../lib/numeric/normal-distribution.js';
import { sobolSequence } from '../../lib/numeric/sobol-sequence.js';

/**
 * Points of the unscrambled sequence in units of 2⁻³², dimensions 1, 2, 3, 6, 12, 24, 41; from scipy.stats.qmc.Sobol 1.17.1
 * (Joe & Kuo numbers), an independent implementation.
 */
const sobolPoints: readonly (readonly [number, readonly number[]])[] = [
  [1, [2147483648, 2147483648, 2147483648, 2147483648, 2147483648, 2147483648, 2147483648]],
  [2, [3221225472, 1073741824, 1073741824, 3221225472, 3221225472, 1073741824, 1073741824]],
  [7, [536870912, 2684354560, 1610612736, 1610612736, 536870912, 536870912, 536870912]],
  [100, [1778384896, 1107296256, 3321888768, 3187671040, 2919235584, 2113929216, 3053453312]],
  [777, [2973761536, 4022337536, 700448768, 1530920960, 2990538752, 2067791872, 3099590656]],
  [1023, [4194304, 3233808384, 2629828608, 1883242496, 155189248, 843055104, 2713714688]],
];

/** Abramowitz & Stegun (1964), Tables 26.1 and 26.6: P(x) to 15 places (from memory) agree with scipy.special.ndtri 1.17.1, printed here. */
const quantiles: readonly (readonly [number, number])[] = [
  [1e-300, -37.0470962993612],
  [1e-10, -6.361340902404056],
  [0.001, -3.090232306167813],
  [0.025, -1.959963984540054],
  [0.3, -0.524400512708041],
  [0.9, 1.2815515655446004],
  [0.999999, 4.753424308817087],
];

describe('sampling against other implementations', () => {
  it('gives the Sobol sequence of Joe and Kuo', () => {
    const sequence = sobolSequence(41);
    const point = new Float64Array(41);
    for (const [index, expected] of sobolPoints) {
      sequence.point(index, point);
      // Half of the last binary digit is added so that no coordinate is 0.
      expect([0, 1, 2, 5, 11, 23, 40].map((d) => (point[d] ?? 0) * 2 ** 32 - 0.5)).toEqual(expected);
    }
  });

  it('gives the quantiles and probabilities of the normal distribution', () => {
    for (const [probability, quantile] of quantiles) {
      const found = normalProbability(quantile);
      if (probability < 1e-10) expect(() => normalQuantile(probability)).toThrow('probability');
      if (probability < 1e-6) {
        if (probability >= 1e-10)
          expect(Math.abs(normalQuantile(probability) / quantile - 1)).toBeLessThan(1e-8);
        // One build in 1e15: no share that is asked for is as small.
        expect(Math.abs(found - probability)).toBeLessThan(1e-15);
      } else {
        expect(Math.abs(normalQuantile(probability) / quantile - 1)).toBeLessThan(1e-14);
        expect(Math.abs(found / probability - 1)).toBeLessThan(1e-12);
      }
    }
    expect(normalProbability(0)).toBe(0.5);
    // Abramowitz & Stegun Table 26.1.
    expect(normalProbability(1)).toBeCloseTo(0.8413447461, 10);
    expect(normalProbability(-2)).toBeCloseTo(0.0227501319, 10);
  });
});
