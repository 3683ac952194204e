import { requireCount } from '../../base/checks.js';
import { oneOf, requireShape, type Shape } from '../../base/shape.js';
import { type Sampling, samplePoints } from '../../numeric/samples.js';
import type { Search } from '../search/search.js';
import {
  indicesOfSums,
  type SensitivityIndices,
  type SensitivitySums,
  sensitivitySums,
} from './sensitivity-indices.js';
import {
  type TolerancedBuild,
  type ToleranceName,
  tolerancedBuildShape,
  toleranceInputs,
} from './toleranced-build.js';
import { toleranceModel } from './tolerances.js';

/**
 * How the force spreads at one speed.
 *
 * @public
 */
export interface ForceSpread {
  /** Shaft speed [m/s]. */
  readonly speed: number;
  /** Mean force [N]. */
  readonly mean: number;
  /** Standard deviation [N]. */
  readonly standardDeviation: number;
  /** Forces [N] below which 5 %, 50 % and 95 % of all builds lie, in the order of size. */
  readonly low: number;
  readonly median: number;
  readonly high: number;
}

/**
 * What a tolerance has to do with the spread at one speed.
 *
 * @public
 */
export interface ToleranceShare {
  readonly name: ToleranceName;
  /** Share of the variance that it causes by itself: what knowing this size would take away. */
  readonly first: number;
  /** Share that it has a part in. */
  readonly total: number;
}

/**
 * How many builds are drawn, and how.
 *
 * @public
 */
export interface Drawing {
  /** Builds, 1 or more. */
  readonly count: number;
  /** Any whole number; the same seed gives the same builds. */
  readonly seed: number;
  readonly sampling: Sampling;
}

/** Form of {@link Drawing}. */
export const drawingShape: Shape = { count: '', seed: '', sampling: oneOf('low-discrepancy', 'random') };

/** Builds of one block; blocks are the pieces that workers share, and always the same ones. */
export const blockSize = 4096;

/** Forces of the builds `from` to `to` (exclusive), build by build [N]. */
export function drawnForces(
  build: TolerancedBuild,
  drawing: Drawing,
  from: number,
  to: number,
): Float64Array {
  const model = toleranceModel(build);
  const samples = samplePoints(drawing.sampling, Math.max(model.inputs, 1), drawing.seed);
  const point = new Float64Array(samples.dimensions);
  const forces = new Float64Array((to - from) * model.outputs);
  const ofBuild = new Float64Array(model.outputs);
  for (let index = from; index < to; index++) {
    samples.point(index, point);
    model.evaluate(point, ofBuild);
    // A view of each row would cost more than copying it.
    for (let output = 0; output < model.outputs; output++) {
      forces[(index - from) * model.outputs + output] = ofBuild[output] ?? 0;
    }
  }
  return forces;
}

/**
 * Forces of drawn builds [N], one after another: at `index * speeds + place` that of a build at a speed. What `forceSpread` makes its figures of.
 *
 * @param build - the build and how far each size may be off
 * @param drawing - how many builds, up to 1 million, and how they are drawn
 * @throws InputError for an input outside its range, or where a size becomes impossible within its tolerance
 * @public
 */
export function forceDraws(build: TolerancedBuild, drawing: Drawing): Float64Array {
  requireShape({ build, drawing }, { build: tolerancedBuildShape, drawing: drawingShape });
  requireCount(drawing.count, 'count');
  return drawnForces(build, drawing, 0, drawing.count);
}

/** Value below which a part of the sorted values lies, straight between neighbours (Hyndman & Fan 1996, type 7). */
function quantile(sorted: Float64Array, part: number): number {
  const place = part * (sorted.length - 1);
  const below = sorted[Math.floor(place)] ?? Number.NaN;
  const above = sorted[Math.ceil(place)] ?? Number.NaN;
  return below + (place - Math.floor(place)) * (above - below);
}

/** The forces at one speed, in the order of size. */
function sortedForces(forces: Float64Array, place: number, speeds: number): Float64Array {
  const sorted = new Float64Array(forces.length / speeds);
  for (let build = 0; build < sorted.length; build++) sorted[build] = forces[build * speeds + place] ?? 0;
  return sorted.sort();
}

/** Spread at each speed of forces that were drawn build by build. */
export function spreadOf(speeds: readonly number[], forces: Float64Array): readonly ForceSpread[] {
  return speeds.map((speed, place) => {
    const sorted = sortedForces(forces, place, speeds.length);
    let sum = 0;
    for (const force of sorted) sum += force;
    const mean = sum / sorted.length;
    let squares = 0;
    for (const force of sorted) squares += (force - mean) ** 2;
    return {
      speed,
      mean,
      standardDeviation: Math.sqrt(squares / Math.max(sorted.length - 1, 1)),
      low: quantile(sorted, 0.05),
      median: quantile(sorted, 0.5),
      high: quantile(sorted, 0.95),
    };
  });
}

/** The ranges of the blocks of a drawing. */
export function blocksOf(count: number): readonly (readonly [number, number])[] {
  return Array.from({ length: Math.ceil(count / blockSize) }, (_, block) => [
    block * blockSize,
    Math.min((block + 1) * blockSize, count),
  ]);
}

/** One array of all blocks in their order. */
export function joined(blocks: readonly Float64Array[]): Float64Array {
  const whole = new Float64Array(blocks.reduce((length, block) => length + block.length, 0));
  let start = 0;
  for (const block of blocks) {
    whole.set(block, start);
    start += block.length;
  }
  return whole;
}

/**
 * Spread of the force at each speed over builds whose sizes are off within their tolerances (Monte Carlo).
 *
 * @param build - the build and how far each size may be off
 * @param drawing - how many builds, and how they are drawn; `low-discrepancy` needs far fewer than `random`
 * @throws InputError for an input outside its range, or where a size becomes impossible within its tolerance
 * @public
 */
export function* forceSpread(build: TolerancedBuild, drawing: Drawing): Search<readonly ForceSpread[]> {
  requireShape({ build, drawing }, { build: tolerancedBuildShape, drawing: drawingShape });
  requireCount(drawing.count, 'count');
  const blocks: Float64Array[] = [];
  for (const [from, to] of blocksOf(drawing.count)) {
    blocks.push(drawnForces(build, drawing, from, to));
    yield to / drawing.count;
  }
  return spreadOf(build.speeds, joined(blocks));
}

/** Shares of each tolerance, from the sums of all blocks in their order. */
export function sharesOf(
  build: TolerancedBuild,
  blocks: readonly SensitivitySums[],
): readonly (readonly ToleranceShare[])[] {
  const names = toleranceInputs(build.tolerances);
  return indicesOfSums(blocks).map(({ shares }: SensitivityIndices) =>
    names.flatMap((name, input): ToleranceShare[] => {
      const share = shares[input];
      return share === undefined ? [] : [{ name, ...share }];
    }),
  );
}

/**
 * Which tolerance causes which share of the spread, at each speed.
 *
 * @param build - the build and how far each size may be off; 1 or more tolerances
 * @param points - base points; the force is computed `points × (tolerances + 2)` times for each speed; a power of 2 spreads best
 * @param seed - any whole number; the same seed gives the same result
 * @throws InputError for an input outside its range, or where a size becomes impossible within its tolerance
 * @see the estimators of `sensitivityIndices`
 * @public
 */
export function* toleranceShares(
  build: TolerancedBuild,
  points: number,
  seed: number,
): Search<readonly (readonly ToleranceShare[])[]> {
  requireShape({ build, seed }, { build: tolerancedBuildShape, seed: '' });
  requireCount(points, 'points');
  const model = toleranceModel(build);
  const blocks: SensitivitySums[] = [];
  for (const [from, to] of blocksOf(points)) {
    blocks.push(sensitivitySums(model, { from, to, seed, sampling: 'low-discrepancy' }));
    yield to / points;
  }
  return sharesOf(build, blocks);
}
