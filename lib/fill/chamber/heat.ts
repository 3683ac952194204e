import { requirePositive, requireWithin } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { call, madeWith, requireShape } from '../../base/shape.js';
import { bracketedRoot } from '../../numeric/root-finding.js';
import type { ClosedShock } from './closed-shock.js';
import { type FillCondition, lockPosition } from './pressure-inside.js';

/**
 * Density of the oil [kg/m³] as a function of its temperature [K].
 *
 * @public
 */
export type DensityAt = (temperature: number) => number;

/**
 * Condition of a closed shock at another temperature, moved slowly: the oil has grown as its density fell, the gas is warmer.
 *
 * The body is taken as stiff and as not expanding; an aluminium body grows by 0.07 ml per litre and kelvin, which takes
 * 8 % off the growth of silicone.
 *
 * @param shock - from {@link closeShock}
 * @param temperature - of oil and gas [K], above 0
 * @param densityAt - density of the oil [kg/m³] at a temperature [K]
 * @param polytropicExponent - of the gas in a movement after it has warmed, 1 (slow) to 1.4 (fast); 1 where left out
 * @throws InputError for a value outside its range
 * @public
 */
export function atTemperature(
  shock: ClosedShock,
  temperature: number,
  densityAt: DensityAt,
  polytropicExponent = 1,
): FillCondition {
  requireShape({ shock, densityAt }, { shock: madeWith('chamber'), densityAt: call });
  requirePositive(temperature, 'temperature', 'K');
  requireWithin(polytropicExponent, 1, 1.4, 'polytropicExponent', '');
  const density = (at: number): number => {
    const found = densityAt(at);
    requirePositive(found, `densityAt(${at})`, 'kg/m³');
    return found;
  };
  const oilExpansion = density(shock.closing.temperature) / density(temperature);
  return { polytropicExponent, temperature, oilExpansion };
}

/**
 * Temperature at which the oil has grown so far that the shaft locks at a position [K].
 *
 * @param shock - from {@link closeShock}
 * @param position - how far the shaft is pushed in [m], usually the stroke
 * @param densityAt - density of the oil [kg/m³] at a temperature [K], falling
 * @param hottest - end of the search [K]
 * @returns the temperature, or `undefined` where it does not lock up to `hottest`
 * @throws InputError where it locks already at the temperature of closing
 * @public
 */
export function lockTemperature(
  shock: ClosedShock,
  position: number,
  densityAt: DensityAt,
  hottest: number,
): number | undefined {
  requireShape(
    { shock, position, densityAt, hottest },
    { shock: madeWith('chamber'), position: 'm', densityAt: call, hottest: 'K' },
  );
  const { temperature } = shock.closing;
  const spare = (hot: number): number => lockPosition(shock, atTemperature(shock, hot, densityAt)) - position;
  if (spare(temperature) <= 0) {
    throw new InputError({
      field: 'position',
      value: position,
      unit: 'm',
      accepted: `below the hydraulic lock at ${lockPosition(shock)}`,
    });
  }
  if (spare(hottest) > 0) return undefined;
  return bracketedRoot(spare, temperature, hottest, 'lock temperature').root;
}

/**
 * Coldest oil that may be filled in [K] so that at the hottest oil of the day a gas reserve is left with the shaft fully in. Warmer oil
 * at filling is less oil.
 *
 * @param close - closes the shock with oil at a temperature [K]
 * @param day - start of the search, `coldest` [K]; hottest oil of the day [K]; gas that shall be left at the bump stop, `reserve` [m³], 0 or more
 * @param densityAt - density of the oil [kg/m³] at a temperature [K], falling
 * @returns the temperature; `coldest` where that is warm enough, `undefined` where even oil at `hottest` is not
 * @throws InputError for a value outside its range
 * @public
 */
export function coldestFillTemperature(
  close: (temperature: number) => ClosedShock,
  day: { readonly coldest: number; readonly hottest: number; readonly reserve: number },
  densityAt: DensityAt,
): number | undefined {
  requireShape(
    { close, day, densityAt },
    { close: call, day: { coldest: '', hottest: '', reserve: '' }, densityAt: call },
  );
  const { coldest, hottest, reserve } = day;
  requirePositive(coldest, 'coldest', 'K');
  requireWithin(hottest, coldest, Number.MAX_VALUE, 'hottest', 'K');
  const spare = (fill: number): number => {
    const shock = close(fill);
    const lock = lockPosition(shock, atTemperature(shock, hottest, densityAt));
    return (lock - shock.chamber.stroke) * shock.shaftArea - reserve;
  };
  if (spare(coldest) >= 0) return coldest;
  if (spare(hottest) < 0) return undefined;
  return bracketedRoot(spare, coldest, hottest, 'coldest fill temperature').root;
}
