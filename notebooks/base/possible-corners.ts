import type { Build, CornerOfCar } from '../../lib/parts/parts.js';
import { guessedMotionRatios } from './guessed-ratios.js';

/** Mass on a corner where the file does not say it [kg]: a quarter of a small car, a guess. */
export const guessedMasses = { low: 0.25, likely: 0.45, high: 0.9 } as const;

/**
 * The corner that a build carries: as the file has it, or a guess with its two ends. `deep` is heavy on a low motion ratio, which presses the shaft in furthest and swings
 * slowest; `high` is the other end.
 */
export interface PossibleCorners {
  readonly likely: CornerOfCar;
  readonly deep: CornerOfCar;
  readonly high: CornerOfCar;
  readonly guessed: boolean;
}

export function possibleCorners({ corner }: Pick<Build, 'corner'>): PossibleCorners {
  if (corner !== undefined) return { likely: corner, deep: corner, high: corner, guessed: false };
  const of = (sprungMass: number, motionRatio: number): CornerOfCar => ({ sprungMass, motionRatio });
  return {
    likely: of(guessedMasses.likely, guessedMotionRatios.likely),
    deep: of(guessedMasses.high, guessedMotionRatios.low),
    high: of(guessedMasses.low, guessedMotionRatios.high),
    guessed: true,
  };
}
