import { requireWithin } from '../../base/checks.js';
import type { Shape } from '../../base/shape.js';
/**
 * How far the law itself may be off, as a relative standard deviation of the force.
 *
 * @public
 */
export interface LawError {
  /** Between the slowest and the fastest speed measured. */
  readonly inside: number;
  /** More of it for each factor of 3 beyond them. */
  readonly perThreefold: number;
}

const share = (value: unknown, field: string): void => requireWithin(value as number, 0, 10, field, '');

/** Form of {@link LawError}. */
export const lawErrorShape: Shape = { inside: share, perThreefold: share };

/**
 * A usual error of the law: 2 % for hole law, tilt and burrs, and 2 % more for each factor of 3 beyond the speeds measured, where a thinning
 * oil would not show (our own choice, common practice without a source).
 *
 * @public
 */
export const usualLawError: LawError = { inside: 0.02, perThreefold: 0.02 };

/**
 * A law taken at its word.
 *
 * @public
 */
export const exactLaw: LawError = { inside: 0, perThreefold: 0 };
