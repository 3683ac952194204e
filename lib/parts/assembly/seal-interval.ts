import type { SealFriction } from '../../damper/seal-friction.js';
import type { SealInterval } from '../shock-part.js';

/** Breakaway friction over moving friction where only one is known: a guess. */
export const breakawayRatio = 1.5;

/**
 * Moving friction of a shock whose seals were not measured [N]: from two soft rings wet with oil to two that are swollen or pinched. Common
 * practice, no source.
 */
const guessedMovingFriction = { low: 0.1, typical: 0.3, high: 1 } as const;

function sealOf(kineticForce: number): SealFriction {
  return { kineticForce, breakawayForce: breakawayRatio * kineticForce };
}

/** Friction where the file says nothing of the seals. */
export const guessedSeal: SealInterval = {
  low: sealOf(guessedMovingFriction.low),
  typical: sealOf(guessedMovingFriction.typical),
  high: sealOf(guessedMovingFriction.high),
  measured: false,
};

/** Friction that the file gives [N]. */
export function givenSeal(
  kineticForce: number,
  breakawayForce = breakawayRatio * kineticForce,
): SealInterval {
  const seal = { kineticForce, breakawayForce };
  return { low: seal, typical: seal, high: seal, measured: true };
}
