import { requirePositive } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { listOf, requireShape, type Shape } from '../../base/shape.js';
import type { Belief, Unknown } from './unknown.js';
import { beliefShape } from './unknown.js';

/**
 * Belief of a number that lies anywhere between two ends: the middle, and half the width over √3.
 *
 * @param low - lower end
 * @param high - upper end, above it
 * @throws InputError unless the ends are in order
 * @see JCGM 100:2008 (GUM), 4.3.7
 * @public
 */
export function intervalBelief(low: number, high: number): Belief {
  requireShape({ low, high }, { low: '', high: '' });
  if (!(high > low)) throw new InputError({ field: 'high', value: high, accepted: `above ${low}` });
  return { mean: (low + high) / 2, standardDeviation: (high - low) / 2 / Math.sqrt(3) };
}

/**
 * What two independent beliefs say together: the mean weighted by precision.
 *
 * @public
 */
export function jointBelief(first: Belief, second: Belief): Belief {
  requireShape({ first, second }, { first: beliefShape, second: beliefShape });
  requirePositive(first.standardDeviation, 'first.standardDeviation', '');
  requirePositive(second.standardDeviation, 'second.standardDeviation', '');
  const [one, other] = [first.standardDeviation ** -2, second.standardDeviation ** -2];
  return {
    mean: (first.mean * one + second.mean * other) / (one + other),
    standardDeviation: 1 / Math.sqrt(one + other),
  };
}

/**
 * What is known of a shock before it is measured.
 *
 * @public
 */
export interface StatedShock {
  /** Least and largest viscosity at 25 °C that the label allows [m²/s], above 0. */
  readonly kinematicViscosity: readonly [number, number];
  /** Diameter of the first group of holes as drilled [m], above 0. */
  readonly holeDiameter: number;
  /** Radial gap of piston and bore [m], above 0. */
  readonly gap: number;
  /** Absolute gas pressure at full extension [Pa], above 0. */
  readonly gasPressure: number;
}

/** Form of {@link StatedShock}. */
export const statedShockShape: Shape = {
  kinematicViscosity: listOf('m²/s'),
  holeDiameter: 'm',
  gap: 'm',
  gasPressure: 'Pa',
};

/**
 * How far reality may lie from it.
 *
 * @public
 */
export interface StatedTolerances {
  /** Standard uncertainty of the hole diameter [m]; 15 µm for a drilled hole. */
  readonly holeDiameter: number;
  /** Standard uncertainty of the gap [m]. */
  readonly gap: number;
  /** Standard uncertainty of the gas pressure over the pressure. */
  readonly gasPressure: number;
  /** Standard uncertainty of the slope of viscosity against temperature, over the slope. */
  readonly temperatureSlope: number;
  /** Friction of the seals [N]. */
  readonly friction: Belief;
  /** What all times by hand share, standard uncertainty [s]. */
  readonly handDelay: number;
  /** Standard uncertainty of the thermometer [K]. */
  readonly thermometer: number;
}

/** Form of {@link StatedTolerances}. */
export const statedTolerancesShape: Shape = {
  holeDiameter: 'm',
  gap: 'm',
  gasPressure: '',
  temperatureSlope: '',
  friction: beliefShape,
  handDelay: 's',
  thermometer: 'K',
};

/**
 * Usual tolerances of parts and tools at home, all common practice without a source.
 *
 * @public
 */
export const usualTolerances: StatedTolerances = {
  holeDiameter: 15e-6,
  gap: 4e-6,
  gasPressure: 0.08,
  temperatureSlope: 0.03,
  friction: { mean: 0.3, standardDeviation: 0.2 },
  handDelay: 0.05,
  thermometer: 0.5,
};

/** A belief of a positive number as one of its logarithm. */
function logarithmic(value: number, relative: number): Belief {
  return { mean: Math.log(value), standardDeviation: relative };
}

/**
 * The unknowns of a shock that is measured at home, each with what label, drill and tolerances say of it.
 *
 * @param stated - as labelled and drilled
 * @param tolerances - {@link usualTolerances} by default
 * @returns viscosity, hole, gap and gas pressure by their logarithms, slope, friction (0 or more), hand and thermometer as they are
 * @throws InputError for a size outside its range
 * @public
 */
export function statedUnknowns(
  stated: StatedShock,
  tolerances: StatedTolerances = usualTolerances,
): readonly Unknown[] {
  requireShape({ stated, tolerances }, { stated: statedShockShape, tolerances: statedTolerancesShape });
  const [low, high] = stated.kinematicViscosity;
  requirePositive(low, 'kinematicViscosity[0]', 'm²/s');
  requirePositive(high, 'kinematicViscosity[1]', 'm²/s');
  if (!(high > low))
    throw new InputError({
      field: 'kinematicViscosity[1]',
      value: high,
      unit: 'm²/s',
      accepted: `above ${low}`,
      limits: { above: low },
    });
  requirePositive(stated.holeDiameter, 'holeDiameter', 'm');
  requirePositive(stated.gap, 'gap', 'm');
  requirePositive(stated.gasPressure, 'gasPressure', 'Pa');
  const logNormal = (value: number, relative: number) => ({
    scale: 'logarithm' as const,
    prior: logarithmic(value, relative),
  });
  const plain = (mean: number, standardDeviation: number) => ({
    scale: 'plain' as const,
    prior: { mean, standardDeviation },
  });
  const { friction } = tolerances;
  return [
    {
      quantity: 'kinematicViscosity',
      scale: 'logarithm',
      prior: intervalBelief(Math.log(low), Math.log(high)),
    },
    { quantity: 'temperatureSlope', ...plain(1, tolerances.temperatureSlope) },
    {
      quantity: 'holeDiameter',
      ...logNormal(stated.holeDiameter, tolerances.holeDiameter / stated.holeDiameter),
    },
    { quantity: 'gap', ...logNormal(stated.gap, tolerances.gap / stated.gap) },
    { quantity: 'friction', ...plain(friction.mean, friction.standardDeviation), least: 0 },
    { quantity: 'gasPressure', ...logNormal(stated.gasPressure, tolerances.gasPressure) },
    { quantity: 'handDelay', ...plain(0, tolerances.handDelay) },
    { quantity: 'thermometerError', ...plain(0, tolerances.thermometer) },
  ];
}
