import { InputError } from '../../base/input-error.js';
import { call, listOf, requireShape, type Shape } from '../../base/shape.js';
import { ConvergenceError } from '../../numeric/root-finding.js';
import { netForce } from '../model/drop-time.js';
import { requireLaw, type ShockLaw } from '../model/shock-law.js';
import type { MeasuredState } from '../model/shock-state.js';
import { measuredStateShape } from '../model/shock-state.js';
import { type Datum, dataOf, predictionOf } from '../reading/prediction.js';
import type { Reading } from '../reading/reading.js';
import { readingShape } from '../reading/reading.js';
import { parameterOf, requireUnknowns, sizeOf, stateAt, type Unknown, unknownShape } from './unknown.js';

/**
 * What was measured on one shock, and what it is to tell.
 *
 * @public
 */
export interface MeasuredShockProblem {
  readonly law: ShockLaw;
  /** Values of what is not unknown, and where the search for the unknowns begins. */
  readonly known: MeasuredState;
  /** 1 or more, each named once. */
  readonly unknowns: readonly Unknown[];
  readonly readings: readonly Reading[];
}

/** Form of {@link MeasuredShockProblem}. */
export const measuredShockProblemShape: Shape = (value, field) => {
  const fields = {
    law: call,
    known: measuredStateShape,
    unknowns: listOf(unknownShape),
    readings: listOf(readingShape),
  };
  requireShape(value, fields, field);
  const { law, known } = value as MeasuredShockProblem;
  requireLaw(law, known, field === '' ? 'law' : `${field}.law`);
};

/** The problem as numbers: parameters in, residuals over their uncertainties out. */
export interface BoundProblem {
  readonly data: readonly Datum[];
  readonly start: readonly number[];
  readonly sizes: readonly number[];
  readonly least: readonly number[];
  readonly stateOf: (parameters: readonly number[]) => MeasuredState;
  /** What each reading should show. */
  readonly predicted: (parameters: readonly number[]) => Float64Array;
  /** Residuals of the data, then those of the priors. */
  readonly residuals: (parameters: readonly number[]) => Float64Array;
}

/** Friction with which every weight still moves the shaft, so that the search has a place to begin at [N]. */
function movableFriction(law: ShockLaw, known: MeasuredState, readings: readonly Reading[]): number {
  const shock = law({ ...known, friction: 0 });
  const forces = readings.flatMap((reading) =>
    reading.kind === 'drop'
      ? [netForce(shock, reading, reading.from), netForce(shock, reading, reading.to)]
      : [],
  );
  return Math.max(0, 0.8 * Math.min(...forces));
}

/** Checks the unknowns and binds law, readings and priors. */
export function bindProblem({ law, known, unknowns, readings }: MeasuredShockProblem): BoundProblem {
  requireUnknowns(unknowns);
  const begun = { ...known, friction: Math.min(known.friction, movableFriction(law, known, readings)) };
  const data = readings.flatMap(dataOf);
  const prediction = predictionOf(law, readings);
  const stateOf = (parameters: readonly number[]): MeasuredState => stateAt(known, unknowns, parameters);
  // What the law does not have where the search begins is told to the caller; what it does not have further on, to the search.
  prediction(begun);
  const predicted = (parameters: readonly number[]): Float64Array => {
    try {
      return prediction(stateOf(parameters));
    } catch (error) {
      if (error instanceof InputError || error instanceof ConvergenceError) {
        return new Float64Array(readings.length).fill(Number.NaN);
      }
      throw error;
    }
  };
  const priors = unknowns.flatMap(({ prior }, index) => (prior === undefined ? [] : [{ index, ...prior }]));
  const residuals = (parameters: readonly number[]): Float64Array => {
    const values = predicted(parameters);
    const result = new Float64Array(data.length + priors.length);
    data.forEach(({ reading, value, uncertainty }, index) => {
      result[index] = (values[reading]! - value) / uncertainty;
    });
    priors.forEach(({ index, mean, standardDeviation }, row) => {
      result[data.length + row] = (parameters[index]! - mean) / standardDeviation;
    });
    return result;
  };
  const start = unknowns.map((unknown) => parameterOf(unknown, begun[unknown.quantity]));
  return {
    data,
    start,
    sizes: unknowns.map((unknown, index) => sizeOf(unknown, start[index]!)),
    least: unknowns.map((unknown) =>
      unknown.least === undefined ? Number.NEGATIVE_INFINITY : parameterOf(unknown, unknown.least),
    ),
    stateOf,
    predicted,
    residuals,
  };
}
