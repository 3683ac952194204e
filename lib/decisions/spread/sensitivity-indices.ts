import { requireCount } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { madeWith, requireShape } from '../../base/shape.js';
import { type Sampling, samplePoints } from '../../numeric/samples.js';
import { mostSobolDimensions } from '../../numeric/sobol-sequence.js';

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

function emptySums(model: UnitCubeModel, points: number): SensitivitySums {
  const { inputs, outputs } = model;
  return {
    points,
    centre: outputsAt(model, new Float64Array(inputs).fill(0.5)),
    sum: new Float64Array(outputs),
    squares: new Float64Array(outputs),
    first: new Float64Array(outputs * inputs),
    total: new Float64Array(outputs * inputs),
  };
}

function add(sums: Float64Array, place: number, value: number): void {
  sums[place] = (sums[place] ?? 0) + value;
}

/** Adds the two base points `a` and `b` and all points between them. */
function addBasePoints(model: UnitCubeModel, sums: SensitivitySums, a: Float64Array, b: Float64Array): void {
  const { inputs, outputs } = model;
  const atA = outputsAt(model, a);
  const atB = outputsAt(model, b).map((value, output) => value - (sums.centre[output] ?? 0));
  for (let output = 0; output < outputs; output++) {
    const deviationA = (atA[output] ?? 0) - (sums.centre[output] ?? 0);
    const deviationB = atB[output] ?? 0;
    add(sums.sum, output, deviationA + deviationB);
    add(sums.squares, output, deviationA ** 2 + deviationB ** 2);
  }
  for (let input = 0; input < inputs; input++) {
    const mixed = a.slice();
    mixed[input] = b[input] ?? 0;
    const atMixed = outputsAt(model, mixed);
    for (let output = 0; output < outputs; output++) {
      const change = (atMixed[output] ?? 0) - (atA[output] ?? 0);
      add(sums.first, output * inputs + input, (atB[output] ?? 0) * change);
      add(sums.total, output * inputs + input, change ** 2 / 2);
    }
  }
}

/**
 * Sums over base points `from` to `to` (exclusive). Two base points in one low-discrepancy point of twice the dimensions;
 * first-order shares by Saltelli et al. (2010), total shares by Jansen (1999).
 */
export function sensitivitySums(
  model: UnitCubeModel,
  range: { readonly from: number; readonly to: number; readonly seed: number; readonly sampling: Sampling },
): SensitivitySums {
  const { inputs } = model;
  requireCount(inputs, 'inputs');
  if (2 * inputs > mostSobolDimensions)
    throw new InputError({ field: 'inputs', value: inputs, accepted: `1 to ${mostSobolDimensions >> 1}` });
  const samples = samplePoints(range.sampling, 2 * inputs, range.seed);
  const sums = emptySums(model, range.to - range.from);
  const both = new Float64Array(2 * inputs);
  for (let index = range.from; index < range.to; index++) {
    samples.point(index, both);
    addBasePoints(model, sums, both.subarray(0, inputs), both.subarray(inputs));
  }
  return sums;
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
  requireShape({ model, seed }, { model: madeWith('evaluate'), seed: '' });
  requireCount(points, 'points');
  return indicesOfSums([sensitivitySums(model, { from: 0, to: points, seed, sampling: 'low-discrepancy' })]);
}
