import { requireNotNegative } from '../../base/checks.js';
import { byKind, type Shape } from '../../base/shape.js';
import { normalQuantile } from '../../numeric/normal-distribution.js';

/**
 * How far a size may be off its stated value, in the unit of the size.
 *
 * - `normal`: a standard deviation, for what was measured repeatedly
 * - `uniform`: plus or minus a half width, every value as likely, for a printed tolerance
 * - `exact`: not off at all
 *
 * @public
 */
export type Deviation =
  | { readonly kind: 'normal'; readonly standardDeviation: number }
  | { readonly kind: 'uniform'; readonly halfWidth: number }
  | { readonly kind: 'exact' };

/** Form of {@link Deviation}. */
export const deviationShape: Shape = byKind({
  normal: { standardDeviation: '' },
  uniform: { halfWidth: '' },
  exact: {},
});

/** Throws unless the width is finite and 0 or above. */
export function requireDeviation(deviation: Deviation, field: string, unit: string): void {
  if (deviation.kind === 'normal')
    requireNotNegative(deviation.standardDeviation, `${field}.standardDeviation`, unit);
  if (deviation.kind === 'uniform') requireNotNegative(deviation.halfWidth, `${field}.halfWidth`, unit);
}

/** Widest normal deviation drawn, in standard deviations: a hole of negative size helps nobody, and 1 in 16 000 is left out. */
const cutAt = 4;
const cutProbability = 3.167124183311998e-5;

/**
 * The deviation at a probability, 0 to 1 exclusive; a normal one is cut at 4 standard deviations either way.
 */
export function deviationAt(deviation: Deviation, probability: number): number {
  switch (deviation.kind) {
    case 'exact':
      return 0;
    case 'uniform':
      return deviation.halfWidth * (2 * probability - 1);
    case 'normal': {
      const kept = cutProbability + probability * (1 - 2 * cutProbability);
      return deviation.standardDeviation * Math.max(-cutAt, Math.min(cutAt, normalQuantile(kept)));
    }
  }
}
