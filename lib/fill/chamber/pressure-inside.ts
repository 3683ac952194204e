import { requireWithin } from '../../base/checks.js';
import { madeWith, requireShape, type Shape } from '../../base/shape.js';
import { emptySpace, type GasState, gasState, logGasPressure, totalGivenUp } from '../../gas/gas-state.js';
import { HydraulicLock } from '../../gas/hydraulic-lock.js';
import type { ClosedShock } from './closed-shock.js';

/**
 * What has changed since the cap was closed, apart from the position.
 *
 * @public
 */
export interface FillCondition {
  /** Polytropic exponent of the gas, 1 (slow) to 1.4 (fast air). */
  readonly polytropicExponent: number;
  /** Temperature of oil and gas [K], above 0. */
  readonly temperature: number;
  /** Oil volume over the oil volume at closing, above 0: density at closing over density now. */
  readonly oilExpansion: number;
}

/** Form of {@link FillCondition}. */
export const fillConditionShape: Shape = { polytropicExponent: '', temperature: 'K', oilExpansion: '' };

/**
 * The condition of a closed shock at the temperature of its closing, moved slowly.
 *
 * @param shock - from {@link closeShock}
 * @public
 */
export function conditionAtClosing(shock: ClosedShock): FillCondition {
  requireShape({ shock }, { shock: madeWith('chamber') });
  return { polytropicExponent: 1, temperature: shock.closing.temperature, oilExpansion: 1 };
}

/** The gas of a shock in a condition. */
export function gasOf(shock: ClosedShock, condition: FillCondition): GasState {
  return gasState(shock.gas, condition);
}

/**
 * Position at which the oil fills the shock and the shaft stops [m]. It may lie beyond the stroke (then it never locks) or below 0.
 *
 * @param shock - from {@link closeShock}
 * @param condition - exponent, temperature [K], oil expansion; as closed where left out
 * @throws InputError for a condition outside its range
 * @public
 */
export function lockPosition(
  shock: ClosedShock,
  condition: FillCondition = conditionAtClosing(shock),
): number {
  requireShape({ shock, condition }, { shock: madeWith('chamber'), condition: fillConditionShape });
  return gasOf(shock, condition).capacity / shock.shaftArea;
}

/**
 * Natural logarithm of the pressure inside over the pressure outside; minus infinity where a space stays empty. Throws as
 * {@link pressureInside} does.
 */
export function logPressureInside(shock: ClosedShock, position: number, condition: FillCondition): number {
  requireWithin(position, 0, shock.chamber.stroke, 'position', 'm');
  const state = gasOf(shock, condition);
  const displaced = shock.shaftArea * position;
  const atClosing = shock.gasVolume === 0 && displaced === state.capacity;
  if (displaced >= state.capacity && !atClosing)
    throw new HydraulicLock(position, lockPosition(shock, condition));
  return logGasPressure(state, displaced);
}

/**
 * Absolute pressure inside [Pa] with the shaft at rest at a position.
 *
 * Where the shaft is pulled out further than the gas can follow, a space stays empty and the pressure is taken as 0: a shock that is sealed
 * with nothing, or one whose bladder holds back.
 *
 * @param shock - from {@link closeShock}
 * @param position - how far the shaft is pushed in [m], 0 to the stroke
 * @param condition - exponent, temperature [K], oil expansion; as closed where left out
 * @throws HydraulicLock where the oil fills the shock before this position; InputError for a value outside its range
 * @public
 */
export function pressureInside(
  shock: ClosedShock,
  position: number,
  condition: FillCondition = conditionAtClosing(shock),
): number {
  requireShape(
    { shock, position, condition },
    { shock: madeWith('chamber'), position: 'm', condition: fillConditionShape },
  );
  return shock.closing.ambientPressure * Math.exp(logPressureInside(shock, position, condition));
}

/**
 * Everything inside the chamber at a position.
 *
 * @public
 */
export interface ChamberContents {
  /** [m³]. */
  readonly oil: number;
  /** Gas of compensator and bubbles [m³], with the empty space where the gas cannot follow. */
  readonly gas: number;
  /** Shaft inside [m³]. */
  readonly shaft: number;
  /** Piston, nut, spacers, and solid part of the compensator [m³]. */
  readonly solid: number;
}

/**
 * What fills the chamber at a position; the parts add up to the chamber.
 *
 * @param shock - from {@link closeShock}
 * @param position - how far the shaft is pushed in [m], 0 to the stroke
 * @param condition - exponent, temperature [K], oil expansion; as closed where left out
 * @throws HydraulicLock where the oil fills the shock before this position; InputError for a value outside its range
 * @public
 */
export function chamberContents(
  shock: ClosedShock,
  position: number,
  condition: FillCondition = conditionAtClosing(shock),
): ChamberContents {
  requireShape(
    { shock, position, condition },
    { shock: madeWith('chamber'), position: 'm', condition: fillConditionShape },
  );
  const logPressure = logPressureInside(shock, position, condition);
  const state = gasOf(shock, condition);
  const displaced = shock.shaftArea * position;
  // Where the gas cannot follow, it is as large as it gets, and the rest is empty.
  const empty = logPressure === Number.NEGATIVE_INFINITY ? emptySpace(state, displaced) : 0;
  const gasLeft = state.capacity - state.restDisplacement - totalGivenUp(state, logPressure);
  return {
    oil: shock.oilVolume * condition.oilExpansion,
    gas: empty + gasLeft,
    shaft: shock.shaftArea * (shock.chamber.shaftInside + position),
    solid: shock.chamber.solidVolume + shock.compensatorSolid,
  };
}
