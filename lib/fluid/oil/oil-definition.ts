import type { ShearThinning } from '../shear/thinning-viscosity.js';
import type { ViscosityPoint } from '../viscosity/viscosity-point.js';

/**
 * Chemical family of an oil: it decides density, expansion, and the default change with temperature.
 *
 * @public
 */
export type OilBase = 'silicone' | 'petroleum';

/**
 * The ways in which the viscosity of an oil may be known.
 *
 * - `points`: two or more points; Walther line (ASTM D341), least squares for more than two
 * - `viscosity-index`: one point and a viscosity index (ASTM D2270 solved backwards, then D341)
 * - `viscosity-temperature-coefficient`: one point and the coefficient `1 − ν(210 °F)/ν(100 °F)` of a silicone
 * - `silicone`: one point of a plain silicone (Barry's law)
 * - `iso-grade`: an ISO 3448 grade number such as 32, an interval of ±10 % at 40 °C
 * - `trade-weight`: the trade's "wt" label, an interval (common practice, no source)
 *
 * @public
 */
export type ViscosityDefinition =
  | { readonly kind: 'points'; readonly points: readonly ViscosityPoint[] }
  | { readonly kind: 'viscosity-index'; readonly point: ViscosityPoint; readonly viscosityIndex: number }
  | {
      readonly kind: 'viscosity-temperature-coefficient';
      readonly point: ViscosityPoint;
      readonly coefficient: number;
    }
  | { readonly kind: 'silicone'; readonly point: ViscosityPoint }
  | { readonly kind: 'iso-grade'; readonly grade: number; readonly viscosityIndex?: number }
  | { readonly kind: 'trade-weight'; readonly weight: number };

/**
 * How an oil thins when it is sheared, with the temperature of the measurement.
 *
 * @public
 */
export interface MeasuredThinning {
  /** Temperature [K], above 0. */
  readonly temperature: number;
  readonly thinning: ShearThinning;
}

/**
 * An oil as its owner knows it.
 *
 * @public
 */
export interface OilDefinition {
  readonly base: OilBase;
  readonly viscosity: ViscosityDefinition;
  /** Density at 15 °C [kg/m³], 600 to 1300; by default the typical value of the base. */
  readonly densityAt15Celsius?: number;
  /** How it thins, where that was measured; Newtonian by default. */
  readonly shearThinning?: MeasuredThinning;
}
