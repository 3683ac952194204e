import { requirePositive } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { oneOf, optional, type Shape } from '../../base/shape.js';
import type { MeasuredState, Quantity } from '../model/shock-state.js';

/**
 * What is believed of a number before the readings: normal, with a mean and a standard deviation.
 *
 * @public
 */
export interface Belief {
  readonly mean: number;
  /** Above 0. */
  readonly standardDeviation: number;
}

/** Form of {@link Belief}. */
export const beliefShape: Shape = { mean: '', standardDeviation: '' };

/**
 * A quantity that the readings are to tell.
 *
 * @public
 */
export interface Unknown {
  readonly quantity: Quantity;
  /** Whether the fit works on the quantity or on its natural logarithm; the prior is of the same. */
  readonly scale: 'plain' | 'logarithm';
  /** What was known before; nothing where it is left out. */
  readonly prior?: Belief;
  /** Lowest value of the quantity, SI; none by default. */
  readonly least?: number;
}

/** Form of {@link Unknown}. */
export const unknownShape: Shape = {
  quantity: oneOf(
    'kinematicViscosity',
    'temperatureSlope',
    'density',
    'holeDiameter',
    'gap',
    'friction',
    'gasPressure',
    'handDelay',
    'thermometerError',
    'scaleZero',
    'sensorZero',
    'sensorDrift',
  ),
  scale: oneOf('plain', 'logarithm'),
  prior: optional(beliefShape),
  least: optional(''),
};

/** Value of the parameter that stands for a quantity. */
export function parameterOf({ scale }: Unknown, value: number): number {
  return scale === 'logarithm' ? Math.log(value) : value;
}

/** Value of the quantity that a parameter stands for. */
export function quantityOf({ scale }: Unknown, parameter: number): number {
  return scale === 'logarithm' ? Math.exp(parameter) : parameter;
}

/** The state with the unknowns at these parameters. */
export function stateAt(
  known: MeasuredState,
  unknowns: readonly Unknown[],
  parameters: readonly number[],
): MeasuredState {
  const state: Record<Quantity, number> = { ...known };
  unknowns.forEach((unknown, index) => {
    state[unknown.quantity] = quantityOf(unknown, parameters[index]!);
  });
  return state;
}

/** Size of a usual change of a parameter: its prior's standard deviation, or a tenth of its value. */
export function sizeOf(unknown: Unknown, parameter: number): number {
  if (unknown.prior !== undefined) return unknown.prior.standardDeviation;
  return unknown.scale === 'logarithm' ? 0.1 : Math.abs(parameter) / 10 || 1e-3;
}

/** Throws unless the quantities differ and the priors have a width. */
export function requireUnknowns(unknowns: readonly Unknown[]): void {
  unknowns.forEach(({ quantity, prior }, index) => {
    if (unknowns.findIndex((other) => other.quantity === quantity) !== index) {
      throw new InputError({ field: `unknowns[${index}].quantity`, value: quantity, accepted: 'named once' });
    }
    if (prior !== undefined) {
      requirePositive(prior.standardDeviation, `unknowns[${index}].prior.standardDeviation`, '');
    }
  });
}
