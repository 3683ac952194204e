import { requirePositive, requireWithin } from '../../base/checks.js';
import { optional, type Shape } from '../../base/shape.js';

/**
 * How finely to integrate and to draw.
 *
 * @public
 */
export interface MotionOptions {
  /** Relative tolerance of a step, 1e-12 to 1e-3; 1e-6 by default. */
  readonly tolerance?: number;
  /** Equal parts into which a trace is cut, 1 to 100 000, or 0 for no trace; 256 for a cycle and 400 for a corner by default. */
  readonly parts?: number;
}

/** Form of {@link MotionOptions}. */
export const motionOptionsShape: Shape = { tolerance: optional(''), parts: optional('') };

/** First step, and the first after an event [s]. */
export const firstStep = 1e-7;

/** Longest run [s]. */
export const longestRun = 60;

const defaultTolerance = 1e-6;

export function toleranceOf({ tolerance = defaultTolerance }: MotionOptions): number {
  requireWithin(tolerance, 1e-12, 1e-3, 'tolerance', '');
  return tolerance;
}

export function partsOf(options: MotionOptions, standard: number): number {
  const { parts = standard } = options;
  requireWithin(parts, 0, 100_000, 'parts', '');
  return Math.round(parts);
}

export function durationOf(duration: number): number {
  requirePositive(duration, 'duration', 's');
  requireWithin(duration, 0, longestRun, 'duration', 's');
  return duration;
}
