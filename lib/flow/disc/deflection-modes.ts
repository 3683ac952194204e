import type { DiscShape } from './disc-shape.js';

/** Polynomials in the radius for each circumferential number: changes of the flow by one or two more stay below one per cent. */
export const radialModes = 4;

/** Circumferential waves that a disc of few holes must be able to form, since it bends round each of them. */
const finestWave = 8;

/** The shapes a disc can bend into: polynomials of the radius times `cos m θ`, `m` a multiple of the number of holes. */
export interface DeflectionModes {
  /** How many shapes. */
  readonly count: number;
  /** Circumferential numbers, each with {@link radialModes} polynomials. */
  readonly waves: readonly number[];
  /** Writes each shape at a radius and angle. */
  readonly write: (radius: number, angle: number, out: Float64Array, from: number) => void;
}

/** A polynomial with its first two derivatives. */
export type Polynomial = readonly [value: number, slope: number, curvature: number];

/** `xⁿ T_k(2x − 1)`, Chebyshev's polynomial, with its derivatives: nothing at `x = 0`, nor a slope there for `n = 2`. */
export function clampedPolynomial(power: 1 | 2, order: number, x: number): Polynomial {
  const z = 2 * x - 1;
  let [before, value] = [1, z];
  let [slopeBefore, slope] = [0, 2];
  let [bendBefore, bend] = [0, 0];
  if (order === 0) [value, slope] = [1, 0];
  for (let k = 2; k <= order; k++) {
    [bendBefore, bend] = [bend, 8 * slope + 2 * z * bend - bendBefore];
    [slopeBefore, slope] = [slope, 4 * value + 2 * z * slope - slopeBefore];
    [before, value] = [value, 2 * z * value - before];
  }
  if (power === 1) return [x * value, value + x * slope, 2 * slope + x * bend];
  return [x * x * value, 2 * x * value + x * x * slope, 2 * value + 4 * x * slope + x * x * bend];
}

/** The shapes of a disc, clamped inside and free at its rim. */
export function deflectionModes({ holes, clampRadius }: DiscShape): DeflectionModes {
  const orders = Math.max(2, Math.ceil(finestWave / holes));
  const waves = Array.from({ length: orders + 1 }, (_, order) => order * holes);
  const width = 1 - clampRadius;
  return {
    count: waves.length * radialModes,
    waves,
    write: (radius, angle, out, from) => {
      const x = (radius - clampRadius) / width;
      for (let order = 0; order < radialModes; order++) {
        const [value] = clampedPolynomial(2, order, x);
        waves.forEach((wave, index) => {
          out[from + index * radialModes + order] = value * Math.cos(wave * angle);
        });
      }
    },
  };
}
