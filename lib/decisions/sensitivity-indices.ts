import { requireCount } from '../base/checks.js';
import { InputError } from '../base/input-error.js';
import { type Sampling, samplePoints } from './samples.js';
import { mostSobolDimensions } from './sobol-sequence.js';

/**
 * A model of independent inputs: writes its outputs at a point of the unit cube.
 *
 * @public
 */
export interface UnitCubeModel {
  readonly inputs: number;
  readonly outputs: number;
  readonly evaluate: (point: Float64Array, result: Float64Array) => void;
}

/**
 * Share of the variance of one output.
 *
 * @public
 */
export interface VarianceShare {
  /** Share that the input causes by itself. */
  readonly first: number;
  /** Share that the input has a part in, with all its interactions. */
  readonly total: number;
}

/**
 * Variance-based sensitivity of each output.
 *
 * @public
 */
export interface SensitivityIndices {
  readonly mean: number;
  readonly variance: number;
  /** One for each input. */
  readonly shares: readonly VarianceShare[];
}

/** Running sums of one block of base points; blocks add up in a fixed order whoever computed them. */
export interface SensitivitySums {
  readonly points: number;
  /** The outputs in the middle of the cube, taken off before squaring so that no digits are lost. */
  readonly centre: Float64Array;
  /** For each output: sum and sum of squares over both base matrices. */
  readonly sum: Float64Array;
  readonly squares: Float64Array;
  /** For each output and input: sums of the estimators. */
  readonly first: Float64Array;
  readonly total: Float64Array;
}

function outputsAt(model: UnitCubeModel, point: Float64Array): Float64Array {
  const result = new Float64Array(model.outputs);
  model.evaluate(point, result);
  return result;
}

/**
 * Sums over base points `from` to `to` (exclusive). Two base points in one low-discrepancy point of twice the dimensions;
 * first-order shares by Saltelli et al. (2010), total shares by Jansen (1999).
 */
export function sensitivitySums(
  model: UnitCubeModel,
  range: { readonly from: number; readonly to: number; readonly seed: number; readonly sampling: Sampling },
): SensitivitySums {
  const { inputs, outputs } = model;
  requireCount(inputs, 'inputs');
  if (2 * inputs > mostSobolDimensions)
    throw new InputError({ field: 'inputs', value: inputs, accepted: `1 to ${mostSobolDimensions >> 1}` });
  const samples = samplePoints(range.sampling, 2 * inputs, range.seed);
  const centre = outputsAt(model, new Float64Array(inputs).fill(0.5));
  const sum = new Float64Array(outputs);
  const squares = new Float64Array(outputs);
  const first = new Float64Array(outputs * inputs);
  const total = new Float64Array(outputs * inputs);
  const both = new Float64Array(2 * inputs);
  const mixed = new Float64Array(inputs);
  const atMixed = new Float64Array(outputs);
  for (let index = range.from; index < range.to; index++) {
    samples.point(index, both);
    const a = both.subarray(0, inputs);
    const b = both.subarray(inputs);
    const atA = outputsAt(model, a);
    const atB = outputsAt(model, b);
    for (let output = 0; output < outputs; output++) {
      const deviationA = (atA[output] ?? 0) - (centre[output] ?? 0);
      const deviationB = (atB[output] ?? 0) - (centre[output] ?? 0);
      sum[output] = (sum[output] ?? 0) + deviationA + deviationB;
      squares[output] = (squares[output] ?? 0) + deviationA ** 2 + deviationB ** 2;
    }
    for (let input = 0; input < inputs; input++) {
      mixed.set(a);
      mixed[input] = b[input] ?? 0;
      model.evaluate(mixed, atMixed);
      for (let output = 0; output < outputs; output++) {
        const place = output * inputs + input;
        const change = (atMixed[output] ?? 0) - (atA[output] ?? 0);
        first[place] = (first[place] ?? 0) + ((atB[output] ?? 0) - (centre[output] ?? 0)) * change;
        total[place] = (total[place] ?? 0) + change ** 2 / 2;
      }
    }
  }
  return { points: range.to - range.from, centre, sum, squares, first, total };
}

/** Indices from the sums of all blocks, in the order of the blocks. */
export function indicesOfSums(blocks: readonly SensitivitySums[]): readonly SensitivityIndices[] {
  const [head] = blocks;
  if (head === undefined) return [];
  const points = blocks.reduce((count, block) => count + block.points, 0);
  const added = (pick: (block: SensitivitySums) => Float64Array, place: number): number =>
    blocks.reduce((value, block) => value + (pick(block)[place] ?? 0), 0);
  const inputs = head.first.length / head.sum.length;
  return Array.from(head.centre, (centre, output) => {
    const offset = added((block) => block.sum, output) / (2 * points);
    const variance = added((block) => block.squares, output) / (2 * points) - offset ** 2;
    const share = (pick: (block: SensitivitySums) => Float64Array, input: number): number =>
      variance > 0 ? added(pick, output * inputs + input) / points / variance : 0;
    return {
      mean: centre + offset,
      variance,
      shares: Array.from({ length: inputs }, (_, input) => ({
        first: share((block) => block.first, input),
        total: share((block) => block.total, input),
      })),
    };
  });
}

/**
 * Sobol' indices of every output: which input causes which share of its variance.
 *
 * @param model - outputs as a function of 1 to 20 independent inputs, each uniform on 0 to 1
 * @param points - base points; the model runs `points × (inputs + 2)` times; a power of 2 spreads best
 * @param seed - any whole number; the same seed gives the same result
 * @throws InputError for a count outside its range
 * @see first order: Saltelli et al., Comput. Phys. Commun. 181 (2010) 259, Table 2 (b); total: Jansen, Comput. Phys. Commun.
 * 117 (1999) 35, Table 2 (f) of Saltelli et al.
 * @public
 */
export function sensitivityIndices(
  model: UnitCubeModel,
  points: number,
  seed: number,
): readonly SensitivityIndices[] {
  requireCount(points, 'points');
  return indicesOfSums([sensitivitySums(model, { from: 0, to: points, seed, sampling: 'low-discrepancy' })]);
}
