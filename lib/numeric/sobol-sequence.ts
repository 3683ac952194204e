import { requireCount, requireWithin } from '../base/checks.js';
import { optional, requireShape } from '../base/shape.js';
import { directionNumbers } from './sobol-direction-numbers.js';

/** Most dimensions that the stored direction numbers serve. */
export const mostSobolDimensions = directionNumbers.length + 1;

const bits = 32;
const scale = 2 ** -bits;

/**
 * A low-discrepancy point set in the unit cube that can be entered at any index, so that workers can share it.
 *
 * @public
 */
export interface SobolSequence {
  readonly dimensions: number;
  /**
   * Writes the point of an index, each coordinate above 0 and below 1.
   *
   * @param index - 0 to 2³² − 1
   * @param point - receives one coordinate for each dimension
   */
  readonly point: (index: number, point: Float64Array) => void;
}

/** Direction integers of one dimension, most significant first: the recurrence of Bratley & Fox (1988). */
function directionIntegers(dimension: number): Uint32Array {
  const integers = new Uint32Array(bits);
  const row = directionNumbers[dimension - 1];
  if (row === undefined) return integers.map((_, bit) => 2 ** (bits - 1 - bit));
  const degree = row.initial.length;
  for (let bit = 0; bit < bits; bit++) {
    if (bit < degree) {
      integers[bit] = row.initial[bit]! * 2 ** (bits - 1 - bit);
      continue;
    }
    const earlier = integers[bit - degree]!;
    let value = earlier ^ (earlier >>> degree);
    for (let step = 1; step < degree; step++) {
      if ((row.polynomial >>> (degree - step)) & 1) value ^= integers[bit - step]!;
    }
    integers[bit] = value;
  }
  return integers;
}

/** One 32-bit integer spread by mixing, so that neighbouring seeds have nothing in common ("lowbias32", Wellons 2018, from memory). */
function hashed(value: number): number {
  let x = value >>> 0;
  x = Math.imul(x ^ (x >>> 16), 0x7feb352d);
  x = Math.imul(x ^ (x >>> 15), 0x846ca68b);
  return (x ^ (x >>> 16)) >>> 0;
}

function reversedBits(value: number): number {
  let x = value;
  x = ((x >>> 1) & 0x55555555) | ((x & 0x55555555) << 1);
  x = ((x >>> 2) & 0x33333333) | ((x & 0x33333333) << 2);
  x = ((x >>> 4) & 0x0f0f0f0f) | ((x & 0x0f0f0f0f) << 4);
  x = ((x >>> 8) & 0x00ff00ff) | ((x & 0x00ff00ff) << 8);
  return ((x >>> 16) | (x << 16)) >>> 0;
}

/**
 * Owen's nested uniform scramble of a 32-bit fraction: whether a binary digit flips depends on the seed and on all digits before it, so
 * that the even spread stays and each point is uniform. The even factors let a bit act on higher ones only.
 */
function owenScrambled(value: number, seed: number): number {
  let x = (reversedBits(value) + seed) | 0;
  x ^= Math.imul(x, 0x6c50b47c);
  x ^= Math.imul(x, 0xb82f1e52);
  x ^= Math.imul(x, 0xc7afe638);
  x ^= Math.imul(x, 0x8d22f6e6);
  return reversedBits(x);
}

/**
 * A Sobol sequence, scrambled where a seed is given.
 *
 * @param dimensions - 1 to 41
 * @param seed - any whole number; the same seed gives the same points. Without one the points are the plain sequence of Joe & Kuo,
 * starting at 0, each moved by half of the last binary digit so that none is 0.
 * @throws InputError for a number of dimensions outside its range
 * @see Sobol, USSR Comput. Math. Math. Phys. 7 (1967) 86; direction numbers: Joe & Kuo, SIAM J. Sci. Comput. 30 (2008) 2635; Gray-code
 * order: Antonov & Saleev (1979); scramble: Owen (1995), in the hashed form of Burley, J. Comput. Graph. Tech. 9 (2020) 4
 * @public
 */
export function sobolSequence(dimensions: number, seed?: number): SobolSequence {
  requireShape({ seed }, { seed: optional('') });
  requireCount(dimensions, 'dimensions');
  requireWithin(dimensions, 1, mostSobolDimensions, 'dimensions', '');
  const directions = Array.from({ length: dimensions }, (_, dimension) => directionIntegers(dimension));
  const seeds = directions.map((_, dimension) => hashed(hashed(seed ?? 0) + dimension + 1));
  const point = (index: number, coordinates: Float64Array): void => {
    const gray = (index ^ (index >>> 1)) >>> 0;
    for (const [dimension, integers] of directions.entries()) {
      let value = 0;
      for (let bit = 0, rest = gray; rest !== 0; bit++, rest >>>= 1) {
        if (rest & 1) value ^= integers[bit]!;
      }
      const digits = seed === undefined ? value >>> 0 : owenScrambled(value >>> 0, seeds[dimension]!);
      coordinates[dimension] = (digits + 0.5) * scale;
    }
  };
  return { dimensions, point };
}
