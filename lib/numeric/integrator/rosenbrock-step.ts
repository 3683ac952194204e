import { factorise, solveFactorised } from './dense-lu.js';
import { type DifferentialEquation, differenceSlopes } from './differential-equation.js';
import {
  argumentWeights,
  denseWeights,
  gamma,
  stageTimes,
  stageWeights,
  timeSlopeWeights,
} from './rodas5p-coefficients.js';

const stages = 8;

/** Rows of weights one after another, so that the inner loops read one plain array. */
function flat(rows: readonly (readonly number[])[]): Float64Array {
  const all = new Float64Array(rows.length * stages);
  rows.forEach((row, i) => {
    all.set(row, i * stages);
  });
  return all;
}

const arguments_ = flat(argumentWeights);
const couplings = flat(stageWeights);
const dense = flat(denseWeights);
const times = Float64Array.from(stageTimes);
const timeSlopes = Float64Array.from(timeSlopeWeights);

/** The numbers of one step, reused from step to step. */
export interface RosenbrockStep {
  /** State after the step. */
  readonly end: Float64Array;
  /** Estimate of the error of that state. */
  readonly error: Float64Array;
  /** Prepares steps from a state: rates and slopes. Needed once, however often the step is then tried. */
  prepare(time: number, state: Float64Array, likelyLength: number): void;
  /** Tries a step; false where a rate or the matrix was not finite. */
  attempt(time: number, state: Float64Array, length: number): boolean;
  /** Writes the three rows of coefficients of the dense output of the last attempt. */
  writeDense(coefficients: Float64Array): void;
}

/**
 * One step of Rodas5P, `(1/(hγ) I − J) U_i = f(t + c_i h, y + Σ a_ij U_j) + Σ C_ij U_j / h + h d_i f_t`; the last stage is the error.
 *
 * @see Steinebach, BIT Numer. Math. 63 (2023) 27; Hairer & Wanner, Solving Ordinary Differential Equations II, Eq. (7.25)
 */
export function rosenbrockStep(equation: DifferentialEquation): RosenbrockStep {
  const { size } = equation;
  const slopes = new Float64Array(size * size);
  const overTime = new Float64Array(size);
  const matrix = new Float64Array(size * size);
  const pivots = new Int32Array(size);
  const firstRates = new Float64Array(size);
  const rates = new Float64Array(size);
  const argument = new Float64Array(size);
  const side = new Float64Array(size);
  const all = new Float64Array(stages * size);
  const end = new Float64Array(size);
  const error = new Float64Array(size);

  function prepare(time: number, state: Float64Array, likelyLength: number): void {
    equation.rates(time, state, firstRates);
    if (equation.slopes !== undefined) equation.slopes(time, state, slopes, overTime, firstRates);
    else differenceSlopes(equation, time, state, firstRates, slopes, overTime, likelyLength, rates);
  }

  /** State in which a stage looks at the rates. */
  function moveTo(stage: number, state: Float64Array): void {
    for (let k = 0; k < size; k++) {
      let sum = state[k] as number;
      for (let j = 0; j < stage; j++) {
        sum += (arguments_[stage * stages + j] as number) * (all[j * size + k] as number);
      }
      argument[k] = sum;
    }
  }

  function attempt(time: number, state: Float64Array, length: number): boolean {
    const diagonal = 1 / (length * gamma);
    for (let i = 0; i < size * size; i++) matrix[i] = -(slopes[i] as number);
    for (let i = 0; i < size; i++) matrix[i * size + i] = diagonal + (matrix[i * size + i] as number);
    if (!factorise(matrix, pivots, size)) return false;
    for (let stage = 0; stage < stages; stage++) {
      if (stage > 0) {
        moveTo(stage, state);
        equation.rates(time + (times[stage] as number) * length, argument, rates);
      }
      const now = stage === 0 ? firstRates : rates;
      const slopeLength = length * (timeSlopes[stage] as number);
      for (let k = 0; k < size; k++) {
        let sum = 0;
        for (let j = 0; j < stage; j++) {
          sum += (couplings[stage * stages + j] as number) * (all[j * size + k] as number);
        }
        side[k] = (now[k] as number) + sum / length + slopeLength * (overTime[k] as number);
      }
      solveFactorised(matrix, pivots, size, side);
      for (let k = 0; k < size; k++) all[stage * size + k] = side[k] as number;
    }
    let finite = true;
    for (let k = 0; k < size; k++) {
      error[k] = all[(stages - 1) * size + k] as number;
      end[k] = (argument[k] as number) + (error[k] as number);
      if (!Number.isFinite(end[k] as number)) finite = false;
    }
    return finite;
  }

  function writeDense(coefficients: Float64Array): void {
    for (let row = 0; row < 3; row++) {
      for (let k = 0; k < size; k++) {
        let sum = 0;
        for (let j = 0; j < stages; j++) {
          sum += (dense[row * stages + j] as number) * (all[j * size + k] as number);
        }
        coefficients[row * size + k] = sum;
      }
    }
  }

  return { end, error, prepare, attempt, writeDense };
}
