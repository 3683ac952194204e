import { requireNotNegative, requirePositive, requireWithin } from '../../base/checks.js';
import { requireShape, type Shape } from '../../base/shape.js';
import { simpson } from '../../numeric/quadrature.js';

/**
 * A bubble in oil that can take up air.
 *
 * @public
 */
export interface DissolvingBubble {
  /** Radius at the start [m], above 0. */
  readonly radius: number;
  /** Absolute pressure of the oil [Pa], above 0. */
  readonly pressure: number;
  /** Dissolved air over what the oil can hold at this pressure, 0 or more; 1 is saturated. */
  readonly saturation: number;
  /** Volume of air that a volume of oil dissolves, at the air's own pressure (Ostwald coefficient), above 0. */
  readonly airSolubility: number;
  /** Diffusion coefficient of air in the oil [m²/s], above 0. */
  readonly diffusivity: number;
  /** Surface tension [N/m], 0 or more. */
  readonly surfaceTension: number;
}

/** Form of {@link DissolvingBubble}. */
export const dissolvingBubbleShape: Shape = {
  radius: 'm',
  pressure: 'Pa',
  saturation: '',
  airSolubility: '',
  diffusivity: 'm²/s',
  surfaceTension: 'N/m',
};

/** Intervals of the quadrature; Simpson's rule on a smooth integrand. */
const intervals = 400;

/**
 * Time after which a bubble at rest has dissolved [s]; `Infinity` where the oil is saturated so far that the bubble stays or grows.
 *
 * Quasi-steady diffusion with surface tension, `dR/dt = −D L (1 − f + τ/R) / (R (1 + 2τ/(3R)))`, `τ = 2σ/p`. The start-up term
 * `1/√(π D t)` is left out, so that the time is up to about `√(2L/π)` too long; a bubble that rises through the oil dissolves faster.
 *
 * @param bubble - radius, pressure, saturation, solubility, diffusivity and surface tension in their ranges
 * @throws InputError for a value outside its range
 * @see Epstein & Plesset, J. Chem. Phys. 18 (1950) 1505, Eq. (34) without its transient term (equation number from memory)
 * @public
 */
export function dissolutionTime(bubble: DissolvingBubble): number {
  requireShape({ bubble }, { bubble: dissolvingBubbleShape });
  const { radius, pressure, saturation, airSolubility, diffusivity, surfaceTension } = bubble;
  requirePositive(radius, 'radius', 'm');
  requirePositive(pressure, 'pressure', 'Pa');
  requireNotNegative(saturation, 'saturation', '');
  requirePositive(airSolubility, 'airSolubility', '');
  requirePositive(diffusivity, 'diffusivity', 'm²/s');
  requireNotNegative(surfaceTension, 'surfaceTension', 'N/m');
  const tension = (2 * surfaceTension) / pressure;
  if (1 - saturation + tension / radius <= 0) return Number.POSITIVE_INFINITY;
  // dt = (R² + 2τR/3) dR / (D L ((1 − f) R + τ)): no pole, since the numerator vanishes with R.
  const slowness = (r: number): number =>
    r === 0 ? 0 : (r * r + (2 / 3) * tension * r) / ((1 - saturation) * r + tension);
  return simpson(slowness, 0, radius, intervals) / (diffusivity * airSolubility);
}

/**
 * Dissolved air that is left in oil after it stood long enough under vacuum, as part of what it holds at the pressure outside.
 *
 * @param vacuum - absolute pressure over the oil [Pa], 0 or more and at most `ambientPressure`
 * @param ambientPressure - absolute pressure at which the oil was saturated [Pa], above 0
 * @throws InputError for a value outside its range
 * @see Henry's law
 * @public
 */
export function saturationAfterVacuum(vacuum: number, ambientPressure: number): number {
  requirePositive(ambientPressure, 'ambientPressure', 'Pa');
  requireWithin(vacuum, 0, ambientPressure, 'vacuum', 'Pa');
  return vacuum / ambientPressure;
}

/**
 * Air that saturated oil gives off when its pressure falls and it is left long enough [m³, at the lower pressure].
 *
 * @param oilVolume - oil [m³], 0 or more
 * @param airSolubility - Ostwald coefficient, 0 or more
 * @param pressures - absolute pressure at which the oil was saturated, and the lower one now [Pa], above 0
 * @throws InputError for a value outside its range
 * @see Henry's law: the dissolved amount is proportional to the pressure
 * @public
 */
export function releasedAir(
  oilVolume: number,
  airSolubility: number,
  pressures: { readonly saturated: number; readonly now: number },
): number {
  requireShape({ pressures }, { pressures: { saturated: '', now: '' } });
  requireNotNegative(oilVolume, 'oilVolume', 'm³');
  requireNotNegative(airSolubility, 'airSolubility', '');
  requirePositive(pressures.now, 'pressures.now', 'Pa');
  requirePositive(pressures.saturated, 'pressures.saturated', 'Pa');
  return airSolubility * oilVolume * Math.max(pressures.saturated / pressures.now - 1, 0);
}
