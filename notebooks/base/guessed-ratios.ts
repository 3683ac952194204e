/** Shaft travel for each wheel travel where the file does not say it: a guess, what arms of small cars give (common practice, no source). */
export const guessedMotionRatios = { low: 0.6, likely: 0.7, high: 0.8 } as const;
export const guessedMotionRatio = guessedMotionRatios.likely;
