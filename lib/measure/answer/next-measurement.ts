import { Matrix } from 'ml-matrix';
import { requirePositive } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { listOf, requireShape, type Shape, someText } from '../../base/shape.js';
import type { MeasuredShockProblem } from '../fit/fit-problem.js';
import { measuredShockProblemShape } from '../fit/fit-problem.js';
import { sizeOf, stateAt } from '../fit/unknown.js';
import type { Reading } from '../reading/reading.js';
import { readingShape } from '../reading/reading.js';
import { type ForcePlace, forceSlopes, requireSpeeds } from './damping-answer.js';
import { afterReadings, type Doubt, doubtOf, forceVariance } from './doubt.js';
import { informationOf, readingSlopes } from './telling.js';

/**
 * Something that could be measured next.
 *
 * @public
 */
export interface Candidate {
  readonly name: string;
  /** What it takes [min], above 0. */
  readonly minutes: number;
  /** Readings as they would come in; only places, masses, uncertainties and the number of repeats matter, not the values read. */
  readonly readings: readonly Reading[];
}

/** Form of {@link Candidate}. */
export const candidateShape: Shape = { name: someText, minutes: 'min', readings: listOf(readingShape) };

/**
 * What is to be known better: the damping force at the speeds that matter.
 *
 * @public
 */
export interface ForceQuestion extends ForcePlace {
  /** Shaft speeds [m/s], not 0, 1 or more. */
  readonly speeds: readonly number[];
  /** Relative standard deviation of the law itself, which no reading lowers, 0 or more. */
  readonly lawDeviation: number;
}

/** Form of {@link ForceQuestion}. */
export const forceQuestionShape: Shape = {
  speeds: listOf('m/s'),
  lawDeviation: '',
  position: 'm from full extension',
  temperature: 'K',
};

/**
 * One or two measurements, with the doubt that would be left.
 *
 * @public
 */
export interface Plan {
  readonly names: readonly string[];
  /** What they take together [min]. */
  readonly minutes: number;
  /** Relative standard deviation of the force after them, root mean square over the speeds, without the law's own. */
  readonly after: number;
  /** How fast the logarithm of that falls [1/min]. */
  readonly gainPerMinute: number;
}

/**
 * What to measure next.
 *
 * @public
 */
export interface Advice {
  /** Relative standard deviation of the force as known now. */
  readonly now: number;
  /** Each candidate by itself, the one that leaves least doubt first. */
  readonly singles: readonly Plan[];
  /** Each pair, likewise. */
  readonly pairs: readonly Plan[];
  /** What to do first: the best single one where it begins a pair within 10 % of the best; else the better half of the best pair. */
  readonly next: Plan;
  /** Whether to stop: with the law's own error in it, the best single candidate lowers the doubt by less than a tenth. */
  readonly enough: boolean;
}

/** A pair that leaves so much more doubt than the best is as good. */
const pairSlack = 1.1;
/** A reading that leaves more than this of the doubt is not worth its time. */
const worthwhile = 0.9;

interface Place {
  readonly doubt: Doubt;
  readonly gradients: Matrix;
  /** Slopes of the readings of each candidate over their uncertainty. */
  readonly candidates: readonly Matrix[];
}

function placeAt(
  problem: MeasuredShockProblem,
  candidates: readonly Candidate[],
  question: ForceQuestion,
  parameters: readonly number[],
): Place {
  const information = informationOf(problem, readingSlopes(problem, parameters));
  const slopes = forceSlopes(problem, parameters, question.speeds, question);
  const { law, known, unknowns } = problem;
  const sizes = unknowns.map((unknown, index) => sizeOf(unknown, parameters[index]!));
  const gradients = new Matrix(
    question.speeds.map((_, row) => slopes.map((column, index) => column[row]! * sizes[index]!)),
  );
  const state = stateAt(known, unknowns, parameters);
  return {
    doubt: doubtOf(information),
    gradients,
    candidates: candidates.map(({ readings }) =>
      readingSlopes({ law, known: state, unknowns, readings }, parameters),
    ),
  };
}

/**
 * What to measure next, to know the damping force better: all candidates and all pairs of them, by the doubt that would be left.
 *
 * @param problem - readings so far with their unknowns; every unknown has a prior or is told by the readings
 * @param at - parameters to judge at: those of the fit, or some tens of draws of the posterior where little is known yet, whose variances are
 * averaged
 * @param candidates - what could be measured, 1 or more
 * @param question - which force
 * @throws InputError for an empty list or a value outside its range; FitError where the law has no value there, or a parameter is left open
 * @see c-optimal design: Atkinson, Donev & Tobias, Optimum Experimental Designs, ch. 10 and 17
 * @public
 */
export function nextMeasurement(
  problem: MeasuredShockProblem,
  at: readonly (readonly number[])[],
  candidates: readonly Candidate[],
  question: ForceQuestion,
): Advice {
  requireShape(
    { problem, at, candidates, question },
    {
      problem: measuredShockProblemShape,
      at: listOf(listOf('')),
      candidates: listOf(candidateShape),
      question: forceQuestionShape,
    },
  );
  requireSpeeds(question.speeds);
  if (question.speeds.length === 0)
    throw new InputError({ field: 'speeds', value: 0, accepted: '1 or more' });
  if (candidates.length === 0) throw new InputError({ field: 'candidates', value: 0, accepted: '1 or more' });
  if (at.length === 0) throw new InputError({ field: 'at', value: 0, accepted: '1 or more' });
  at.forEach(({ length }, index) => {
    if (length !== problem.unknowns.length)
      throw new InputError({
        field: `at[${index}].length`,
        value: length,
        accepted: `${problem.unknowns.length}, one for each unknown`,
      });
  });
  candidates.forEach(({ minutes, readings }, index) => {
    if (readings.length === 0)
      throw new InputError({
        field: `candidates[${index}].readings.length`,
        value: 0,
        accepted: '1 or more',
      });
    requirePositive(minutes, `candidates[${index}].minutes`, 'min');
  });
  const places = at.map((parameters) => placeAt(problem, candidates, question, parameters));
  const left = (chosen: readonly number[]): number => {
    let sum = 0;
    for (const { doubt, candidates: rows, gradients } of places)
      sum += forceVariance(
        chosen.reduce((known, index) => afterReadings(known, rows[index]!), doubt),
        gradients,
      );
    return Math.sqrt(sum / places.length);
  };
  const now = left([]);
  const plan = (chosen: readonly number[]): Plan & { readonly chosen: readonly number[] } => {
    const minutes = chosen.reduce((total, index) => total + candidates[index]!.minutes, 0);
    const after = left(chosen);
    const names = chosen.map((index) => candidates[index]!.name);
    return { names, minutes, after, gainPerMinute: Math.log(now / after) / minutes, chosen };
  };
  const byDoubt = (first: Plan, second: Plan): number => first.after - second.after;
  const singles = candidates.map((_, index) => plan([index])).sort(byDoubt);
  const pairs = candidates
    .flatMap((_, first) => candidates.slice(first + 1).map((__, step) => plan([first, first + 1 + step])))
    .sort(byDoubt);
  const next = firstOf(singles, pairs);
  const withLaw = (deviation: number): number => Math.hypot(deviation, question.lawDeviation);
  const enough = withLaw(singles[0]!.after) > worthwhile * withLaw(now);
  const shown = ({ chosen, ...rest }: Plan & { readonly chosen: readonly number[] }): Plan => rest;
  return { now, singles: singles.map(shown), pairs: pairs.map(shown), next: shown(next), enough };
}

type Chosen = Plan & { readonly chosen: readonly number[] };

/** The best single candidate where it leads to a pair as good as any, else the better half of the best pair. */
function firstOf(singles: readonly Chosen[], pairs: readonly Chosen[]): Chosen {
  const best = singles[0]!;
  const [pair] = pairs;
  if (pair === undefined) return best;
  const greedy = pairs.filter(({ chosen }) => chosen.includes(best.chosen[0]!))[0]!;
  if (greedy.after <= pairSlack * pair.after) return best;
  return singles.filter(({ chosen }) => pair.chosen.includes(chosen[0]!))[0]!;
}
