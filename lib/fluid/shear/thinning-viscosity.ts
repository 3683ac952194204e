import {
  requireNotNegative,
  requirePositive,
  requireRecord,
  requireWithin,
  requireWord,
} from '../../base/checks.js';

/**
 * How an oil thins when it is sheared, from its owner's own measurement. `η₀` is the viscosity at rest, `η∞ = floor · η₀`.
 *
 * - `carreau-yasuda`: `η = η∞ + (η₀ − η∞) [1 + (λ γ̇)^a]^((n − 1)/a)`; `a = 2` is Carreau
 * - `cross`: `η = η∞ + (η₀ − η∞) / (1 + (λ γ̇)^m)`
 *
 * @public
 */
export type ShearThinning =
  | {
      readonly kind: 'carreau-yasuda';
      /** Time `λ` [s], above 0: thinning begins near the shear rate `1/λ`. */
      readonly time: number;
      /** Power-law exponent `n`, above 0 to 1 (does not thin). */
      readonly exponent: number;
      /**
       * Sharpness of the bend `a`, 0.1 to 10; 2 is Carreau. An oil that thins much may bend less sharply: with `n` 0.05 up to 2.1, with 0.3 up to 7, since the flow
       * would fall while the pressure rises.
       */
      readonly bend: number;
      /** Viscosity at the highest shear over that at rest, 0 to below 1. */
      readonly floor: number;
    }
  | {
      readonly kind: 'cross';
      /** Time `λ` [s], above 0: at the shear rate `1/λ` half of the thinning is done. */
      readonly time: number;
      /** Exponent `m`, 0 (does not thin) to below 1. */
      readonly exponent: number;
      /** Viscosity at the highest shear over that at rest, 0 to below 1. */
      readonly floor: number;
    };

/** Throws unless the shear stress rises with the shear rate everywhere. */
export function requireShearThinning(thinning: ShearThinning, field: string): void {
  requireRecord(thinning, field);
  requireWord(thinning.kind, ['carreau-yasuda', 'cross'], `${field}.kind`);
  requirePositive(thinning.time, `${field}.time`, 's');
  if (thinning.kind === 'carreau-yasuda') {
    requireWithin(thinning.exponent, 0.05, 1, `${field}.exponent`, '');
    requirePositive(thinning.bend, `${field}.bend`, '');
    requireWithin(thinning.bend, 0.1, sharpestBend(thinning.exponent), `${field}.bend`, '');
  } else {
    requireNotNegative(thinning.exponent, `${field}.exponent`, '');
    requireWithin(thinning.exponent, 0, 0.95, `${field}.exponent`, '');
  }
  requireWithin(thinning.floor, 0, 0.99, `${field}.floor`, '');
}

/** The sharpest bend of Carreau, below which every exponent is accepted; and the sharpest of all. */
const plainBend = 2;
const sharpestOfAll = 10;

/**
 * The sharpest bend at which the flow through a slit rises with the shear at its wall, whatever the exponent does on the way (in a tube it may be sharper): with `n` the
 * local exponent and `p = (λγ̇)^a`, that flow goes as `γ̇ · 3n/(2n + 1)`, and rises while `(1 − n₀) a p/(1 + p)² < n (2n + 1)`. No floor is counted on.
 *
 * @param exponent - `n₀`, above 0 to 1
 */
export function sharpestBend(exponent: number): number {
  const looks = 200;
  let sharpest = sharpestOfAll;
  for (let look = 1; look < looks; look++) {
    const share = look / looks;
    const local = 1 - (1 - exponent) * share;
    const falls = (1 - exponent) * share * (1 - share);
    sharpest = Math.min(sharpest, (local * (2 * local + 1)) / falls);
  }
  // To a tenth, downward, as a person would write it.
  return Math.max(plainBend, Math.floor(10 * sharpest) / 10);
}

/** Filled and read within one call and never handed out. */
const atOneRate = new Float64Array(3);

/**
 * Viscosity at a shear rate over the viscosity at rest, 0 to 1.
 *
 * @param thinning - from the owner's measurement
 * @param shearRate - shear rate [1/s], 0 or more
 * @see Carreau, Trans. Soc. Rheol. 16 (1972) 99; Yasuda, Armstrong & Cohen, Rheol. Acta 20 (1981) 163; Cross, J. Colloid
 * Sci. 20 (1965) 417 (from memory)
 * @public
 */
export function viscosityRatio(thinning: ShearThinning, shearRate: number): number {
  requireShearThinning(thinning, 'thinning');
  requireNotNegative(shearRate, 'shearRate', '1/s');
  return ratioOfViscosity(thinning, shearRate);
}

/** {@link viscosityRatio} of what was checked before. */
export function ratioOfViscosity(thinning: ShearThinning, shearRate: number): number {
  writeThinned(thinning, shearRate, atOneRate);
  return atOneRate[0]!;
}

/**
 * Local power-law exponent `d ln τ / d ln γ̇` at a shear rate, above 0 to 1.
 *
 * @param thinning - from the owner's measurement
 * @param shearRate - shear rate [1/s], 0 or more
 * @public
 */
export function localExponent(thinning: ShearThinning, shearRate: number): number {
  requireShearThinning(thinning, 'thinning');
  requireNotNegative(shearRate, 'shearRate', '1/s');
  writeThinned(thinning, shearRate, atOneRate);
  return atOneRate[1]!;
}

/**
 * Writes the viscosity over that at rest, the local exponent `n` and its slope `dn/d ln γ̇` at a shear rate into the first three places: with `s = 1 − η∞/η` and `b` the part
 * of the bend that is done, `n = 1 − s c b`, where `ds/d ln γ̇ = (1 − s)(n − 1)` and `db/d ln γ̇ = k b (1 − b)`.
 */
export function writeThinned(thinning: ShearThinning, shearRate: number, out: Float64Array): void {
  const { kind, time, exponent, floor } = thinning;
  const [most, bend] = kind === 'cross' ? [exponent, exponent] : [1 - exponent, thinning.bend];
  // Cross with exponent 0 would halve the viscosity; it is read as an oil that does not thin.
  const power = bend === 0 ? Number.NEGATIVE_INFINITY : bend * Math.log(time * shearRate);
  // Of the power or of its inverse, whichever is below 1, so that neither overflows.
  const small = Math.exp(-Math.abs(power));
  const bent = (power > 0 ? 1 : small) / (1 + small);
  const thinned =
    kind === 'cross'
      ? (power > 0 ? small : 1) / (1 + small)
      : Math.exp((-most / bend) * (Math.max(power, 0) + Math.log1p(small)));
  const ratio = floor + (1 - floor) * thinned;
  const share = 1 - floor / ratio;
  const local = 1 - share * most * bent;
  out[0] = ratio;
  out[1] = local;
  out[2] = -most * bent * ((1 - share) * (local - 1) + share * bend * (1 - bent));
}
