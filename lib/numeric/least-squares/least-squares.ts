import { Matrix, QrDecomposition } from 'ml-matrix';
import { differenceJacobian, type Residuals } from './difference-jacobian.js';
import { FitError } from './fit-error.js';
import { type RobustLoss, squareLoss } from './robust-loss.js';

/** What is to be fitted. */
export interface LeastSquaresProblem {
  /** Residuals over their standard uncertainties. */
  readonly residuals: Residuals;
  readonly start: readonly number[];
  /** Size of a usual change of each parameter, above 0; by default the size of its value. */
  readonly sizes?: readonly number[];
  /** Lowest value of each parameter; no bound by default. */
  readonly least?: readonly number[];
  /** Loss of the first residuals; plain squares by default. */
  readonly loss?: RobustLoss;
  /** How many residuals it holds for; the others count by their squares. All by default. */
  readonly lossCount?: number;
}

/** A fit that has settled. */
export interface LeastSquaresFit {
  readonly parameters: readonly number[];
  readonly residuals: ArrayLike<number>;
  /** Slopes of the residuals, one row a residual, times the square root of its weight in the loss. */
  readonly jacobian: Matrix;
  /** Sum of the losses: chi-square where the loss is plain. */
  readonly cost: number;
  readonly iterations: number;
}

const iterationLimit = 2000;
/** A step shorter than this part of the parameters ends the search. */
const smallestStep = 1e-13;
/** What would still be gained, in standard deviations of the parameters, at a place that counts as the minimum. */
const offsetTolerance = 1e-5;
/** The same as a part of the parameters, for a fit without any scatter. */
const stepTolerance = 1e-9;

interface Place {
  readonly parameters: readonly number[];
  readonly residuals: ArrayLike<number>;
  readonly cost: number;
}

interface Slopes {
  /** Weighted slopes and residuals. */
  readonly jacobian: Matrix;
  readonly residuals: Float64Array;
}

/** Which loss a residual has. */
type LossOf = (index: number) => RobustLoss;

function costOf(residuals: ArrayLike<number>, lossOf: LossOf): number {
  let cost = 0;
  for (let index = 0; index < residuals.length; index++) {
    cost += lossOf(index).cost(residuals[index]! ** 2);
  }
  return cost;
}

function slopesAt(
  problem: LeastSquaresProblem,
  place: Place,
  sizes: readonly number[],
  lossOf: LossOf,
): Slopes {
  const columns = differenceJacobian(problem.residuals, place.parameters, sizes, place.residuals);
  const jacobian = Matrix.zeros(place.residuals.length, columns.length);
  const residuals = new Float64Array(place.residuals.length);
  for (let row = 0; row < residuals.length; row++) {
    const residual = place.residuals[row]!;
    const weight = Math.sqrt(lossOf(row).weight(residual * residual));
    residuals[row] = weight * residual;
    for (let column = 0; column < columns.length; column++) {
      const slope = weight * columns[column]![row]!;
      if (!Number.isFinite(slope)) {
        throw new FitError('not-finite', 'the model has no slope where the fit ended', place.parameters);
      }
      jacobian.set(row, column, slope);
    }
  }
  return { jacobian, residuals };
}

/** Step that lowers the linearised cost most, with a penalty on its length; `undefined` where the rank is short. */
function stepOf(
  slopes: Slopes,
  scales: readonly number[],
  damping: number,
  free: readonly number[],
): Float64Array | undefined {
  const { rows, columns } = slopes.jacobian;
  const extra = damping > 0 ? free.length : 0;
  const augmented = Matrix.zeros(rows + extra, free.length);
  const target = Matrix.zeros(rows + extra, 1);
  for (let row = 0; row < rows; row++) {
    target.set(row, 0, -slopes.residuals[row]!);
    free.forEach((column, index) => {
      augmented.set(row, index, slopes.jacobian.get(row, column) / scales[column]!);
    });
  }
  for (let index = 0; index < extra; index++) augmented.set(rows + index, index, Math.sqrt(damping));
  const decomposition = new QrDecomposition(augmented);
  if (!decomposition.isFullRank()) return undefined;
  const solved = decomposition.solve(target);
  const step = new Float64Array(columns);
  free.forEach((column, index) => {
    step[column] = solved.get(index, 0) / scales[column]!;
  });
  return step;
}

/** How the linearised cost falls by a step. */
function predictedFall({ jacobian, residuals }: Slopes, step: Float64Array): number {
  let fall = 0;
  for (let row = 0; row < residuals.length; row++) {
    let change = 0;
    for (let column = 0; column < step.length; column++) change += jacobian.get(row, column) * step[column]!;
    fall -= change * (2 * residuals[row]! + change);
  }
  return fall;
}

/** Parameters that may move: not those at their lowest value that the slope pushes further down. */
function freeOf(
  slopes: Slopes,
  { parameters }: Place,
  least: readonly number[] | undefined,
): readonly number[] {
  return parameters.flatMap((value, column) => {
    if (least === undefined || value > (least[column] ?? Number.NEGATIVE_INFINITY)) return [column];
    let slope = 0;
    for (let row = 0; row < slopes.residuals.length; row++) {
      slope += slopes.jacobian.get(row, column) * slopes.residuals[row]!;
    }
    return slope < 0 ? [column] : [];
  });
}

/**
 * Non-linear least squares by Levenberg and Marquardt: the damped step by QR of the augmented slopes, scaled by the largest column lengths seen, with
 * damping by the gain ratio. What ends away from a minimum, or where parameters cannot be told apart, is an error.
 *
 * @throws FitError for a fit that stalls, has too low a rank, or starts where the model has no value
 * @see Levenberg 1944; Marquardt 1963; scaling after Moré, Lect. Notes Math. 630 (1978) 105; gain ratio after Nielsen, report IMM-REP-1999-05 (from
 * memory); offset at the end after Bates & Watts, Technometrics 23 (1981) 179
 */
export function leastSquares(problem: LeastSquaresProblem): LeastSquaresFit {
  const { start, least, loss = squareLoss, lossCount = Number.POSITIVE_INFINITY } = problem;
  const lossOf: LossOf = (index) => (index < lossCount ? loss : squareLoss);
  const sizes = problem.sizes ?? start.map(() => 0);
  const evaluate = (parameters: readonly number[]): Place => {
    const residuals = problem.residuals(parameters);
    return { parameters, residuals, cost: costOf(residuals, lossOf) };
  };
  let place = evaluate([...start]);
  if (!Number.isFinite(place.cost))
    throw new FitError('not-finite', 'the model has no value at the start', start);
  let slopes = slopesAt(problem, place, sizes, lossOf);
  const scales = start.map(() => 0);
  let [damping, growth, iterations] = [1e-3, 2, 0];
  for (; iterations < iterationLimit; iterations++) {
    for (let column = 0; column < scales.length; column++) {
      scales[column] = Math.max(scales[column] || 0, slopes.jacobian.getColumnVector(column).norm()) || 1;
    }
    const free = freeOf(slopes, place, least);
    if (free.length === 0) break;
    const step = stepOf(slopes, scales, damping, free) ?? new Float64Array(scales.length);
    const here = place.parameters;
    const tried = here.map((value, index) =>
      Math.max(value + step[index]!, least?.[index] ?? Number.NEGATIVE_INFINITY),
    );
    const taken = Float64Array.from(tried, (value, index) => value - here[index]!);
    if (
      taken.every(
        (change, index) =>
          Math.abs(change) <= smallestStep * Math.max(Math.abs(here[index]!), sizes[index]! * 1e-3),
      )
    )
      break;
    const next = evaluate(tried);
    const gain = (place.cost - next.cost) / predictedFall(slopes, taken);
    if (Number.isFinite(next.cost) && next.cost < place.cost) {
      place = next;
      slopes = slopesAt(problem, place, sizes, lossOf);
      damping *= Math.max(1 / 3, 1 - (2 * Math.max(gain, 0) - 1) ** 3);
      growth = 2;
    } else {
      damping *= growth;
      growth *= 2;
    }
  }
  const last = lastStep(slopes, place, sizes, scales, freeOf(slopes, place, least));
  if (last !== undefined) {
    // The undamped step brings the digits that the damped ones left; rounding decides whether the cost falls any further.
    const polished = evaluate(place.parameters.map((value, index) => value + last[index]!));
    if (polished.cost <= place.cost * (1 + 1e-9)) {
      place = polished;
      slopes = slopesAt(problem, place, sizes, lossOf);
    }
  }
  return { ...place, jacobian: slopes.jacobian, iterations };
}

/** The undamped step from where the search ended; throws unless it would gain next to nothing. */
function lastStep(
  slopes: Slopes,
  { parameters }: Place,
  sizes: readonly number[],
  scales: readonly number[],
  free: readonly number[],
): Float64Array | undefined {
  if (free.length === 0) return undefined;
  const step = stepOf(slopes, scales, 0, free);
  if (step === undefined) {
    throw new FitError('rank-deficient', 'the readings cannot tell the parameters apart', parameters, free);
  }
  const fall = Math.max(predictedFall(slopes, step), 0);
  const sum = slopes.residuals.reduce((total, residual) => total + residual * residual, 0);
  const freedom = Math.max(slopes.residuals.length - free.length, 1);
  const offset = Math.sqrt(fall / free.length / (Math.max(sum - fall, 0) / freedom || Number.MIN_VALUE));
  const small = parameters.every(
    (value, index) => Math.abs(step[index]!) <= stepTolerance * Math.max(Math.abs(value), sizes[index]!),
  );
  if (offset > offsetTolerance && !small) {
    throw new FitError('stalled', 'the fit ended away from a minimum', parameters);
  }
  return step;
}
