import { listOf, oneOf, requireShape } from '../../base/shape.js';
import type { WaltherLine } from '../viscosity/walther-line.js';
import { requireFractions } from './blend-rules.js';

/**
 * Walther line of a blend by Wright's method: at equal viscosity the logarithms of temperature are additive by volume, so
 * `1/B = Σ x/B` and `A/B = Σ x A/B`.
 *
 * @param components - Walther lines with shares by volume that add up to 1
 * @throws InputError on other shares
 * @see ASTM D7152-11, procedure with two temperatures, preferred there (scope read, method from memory; closed form derived here)
 * @public
 */
export function wrightBlend(
  components: readonly { readonly fraction: number; readonly line: WaltherLine }[],
): WaltherLine {
  requireShape(
    { components },
    { components: listOf({ fraction: '', line: { kind: oneOf('walther'), intercept: '', slope: '' } }) },
  );
  requireFractions(components);
  let inverseSlope = 0;
  let ratio = 0;
  for (const { fraction, line } of components) {
    inverseSlope += fraction / line.slope;
    ratio += (fraction * line.intercept) / line.slope;
  }
  return { kind: 'walther', intercept: ratio / inverseSlope, slope: 1 / inverseSlope };
}
