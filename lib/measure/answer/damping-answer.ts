import { requireMoving, requirePositive, requireWithin } from '../../base/checks.js';
import { listOf, madeWith, requireShape, type Shape } from '../../base/shape.js';
import { differenceJacobian } from '../../numeric/least-squares/difference-jacobian.js';
import type { MeasuredShockProblem } from '../fit/fit-problem.js';
import { linearVariance, type ShockFit } from '../fit/fit-shock.js';
import { sizeOf, stateAt } from '../fit/unknown.js';
import { wideningOf } from './fit-quality.js';
import { type LawError, lawErrorShape, usualLawError } from './law-error.js';
import { lawDeviation, measuredSpeeds } from './measured-speeds.js';

/**
 * Where and how warm a force is asked for.
 *
 * @public
 */
export interface ForcePlace {
  /** Position [m from full extension], 0 to the stroke. */
  readonly position: number;
  /** Temperature of the oil by the same thermometer as in the readings [K], above 0. */
  readonly temperature: number;
}

/** Form of {@link ForcePlace}. */
export const forcePlaceShape: Shape = {
  position: 'm',
  temperature: (value, field) => requireWithin(value as number, 200, 600, field, 'K'),
};

/**
 * What a fitted shock does at one speed.
 *
 * @public
 */
export interface DampingAnswer {
  /** Shaft speed [m/s], compression positive. */
  readonly speed: number;
  /** Damping force [N], with the sign of the speed. */
  readonly dampingForce: number;
  /** Standard deviation over the force, of readings and priors. */
  readonly readingDeviation: number;
  /** The same of the law. */
  readonly lawDeviation: number;
  /** Sizes of the force at the ends of its 95 % interval [N], both errors in it. */
  readonly interval: readonly [number, number];
  /** Whether the speed lies between the slowest and fastest that were measured; beyond, the force is the law's word. */
  readonly measured: boolean;
}

/** A normal variable is within so many standard deviations of its mean 19 times of 20. */
const normal95 = 1.959963984540054;

/** Slopes of the logarithm of the damping force at some speeds, one column a parameter. */
export function forceSlopes(
  { law, known, unknowns }: MeasuredShockProblem,
  parameters: readonly number[],
  speeds: readonly number[],
  { position, temperature }: ForcePlace,
): readonly Float64Array[] {
  const logForces = (moved: readonly number[]): Float64Array => {
    const state = stateAt(known, unknowns, moved);
    const warm = law(state).at(temperature + state.thermometerError);
    return Float64Array.from(speeds, (speed) => Math.log(Math.abs(warm.dampingForce(speed, position))));
  };
  const sizes = unknowns.map((unknown, index) => sizeOf(unknown, parameters[index]!));
  return differenceJacobian(logForces, parameters, sizes, logForces(parameters));
}

/** Throws unless the speeds can be asked for. */
export function requireSpeeds(speeds: readonly number[]): void {
  for (const [index, speed] of speeds.entries()) requireMoving(speed, `speeds[${index}]`);
}

/**
 * Damping force of a fitted shock with its 95 % interval, linear in the logarithms about the fit.
 *
 * The interval holds what readings and priors leave open, widened where the readings scatter more than their uncertainties allow, and the error of
 * the law, which grows beyond the speeds measured.
 *
 * @param fit - from `fitShock`
 * @param speeds - shaft speeds [m/s], not 0
 * @param place - position [m] and oil temperature [K]
 * @param lawError - {@link usualLawError} by default
 * @throws InputError for a speed of 0 or a temperature that is not above 0
 * @see JCGM 100:2008 (GUM), 5.2.2
 * @public
 */
export function dampingAnswers(
  fit: ShockFit,
  speeds: readonly number[],
  place: ForcePlace,
  lawError: LawError = usualLawError,
): readonly DampingAnswer[] {
  requireShape(
    { fit, speeds, place, lawError },
    { fit: madeWith('problem'), speeds: listOf('m/s'), place: forcePlaceShape, lawError: lawErrorShape },
  );
  requireSpeeds(speeds);
  requirePositive(place.temperature, 'temperature', 'K');
  const { problem, parameters, covariance } = fit;
  const slopes = forceSlopes(problem, parameters, speeds, place);
  const warm = problem.law(fit.state).at(place.temperature + fit.state.thermometerError);
  const range = measuredSpeeds(problem.readings);
  const widening = wideningOf(fit);
  return speeds.map((speed, index) => {
    const gradient = slopes.map((column) => column[index]!);
    const readingDeviation = widening * Math.sqrt(linearVariance(covariance, gradient));
    const ofLaw = lawDeviation(lawError, speed, range);
    const dampingForce = warm.dampingForce(speed, place.position);
    const factor = Math.exp(normal95 * Math.hypot(readingDeviation, ofLaw));
    const size = Math.abs(dampingForce);
    return {
      speed,
      dampingForce,
      readingDeviation,
      lawDeviation: ofLaw,
      interval: [size / factor, size * factor],
      measured: range !== undefined && Math.abs(speed) >= range[0] && Math.abs(speed) <= range[1],
    };
  });
}
