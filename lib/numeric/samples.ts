import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { requireCount } from '../base/checks.js';
import { sobolSequence } from './sobol-sequence.js';

/**
 * How points are spread over the unit cube: evenly (a scrambled Sobol sequence) or by chance.
 *
 * @public
 */
export type Sampling = 'low-discrepancy' | 'random';

/**
 * Points of the unit cube by index, the same for the same seed wherever they are computed.
 */
export interface Samples {
  readonly dimensions: number;
  /** Writes the point of an index; indices are asked for in rising order. */
  readonly point: (index: number, coordinates: Float64Array) => void;
}

const perUnsigned = 2 ** -32;

/** Points drawn by chance: each block of points has a generator of its own, so that a worker can begin at any block. */
function randomSamples(dimensions: number, seed: number): Samples {
  const blockSize = 1024;
  let block = -1;
  let next = 0;
  let generator = xoroshiro128plus(seed);
  const point = (index: number, coordinates: Float64Array): void => {
    const wanted = Math.floor(index / blockSize);
    if (wanted !== block || index < next) {
      block = wanted;
      next = block * blockSize;
      generator = xoroshiro128plus((Math.imul(block + 1, 0x9e3779b1) ^ Math.imul(seed, 0x85ebca6b)) | 0);
    }
    for (; next <= index; next++) {
      for (let dimension = 0; dimension < dimensions; dimension++) {
        coordinates[dimension] = ((generator.next() >>> 0) + 0.5) * perUnsigned;
      }
    }
  };
  return { dimensions, point };
}

/**
 * Sample points of the unit cube.
 *
 * @param sampling - evenly or by chance
 * @param dimensions - 1 to 41
 * @param seed - any whole number
 * @throws InputError for a number of dimensions outside its range
 * @see random numbers: xoroshiro128+ (Blackman & Vigna 2018) of the library pure-rand
 */
export function samplePoints(sampling: Sampling, dimensions: number, seed: number): Samples {
  if (sampling === 'low-discrepancy') return sobolSequence(dimensions, seed);
  requireCount(dimensions, 'dimensions');
  return randomSamples(dimensions, seed);
}
