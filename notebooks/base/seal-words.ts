import { standardGravity } from '../../lib/base/constants.js';
import type { SealInterval } from '../../lib/parts/shock-part.js';
import { grams } from './bench-wording.js';

/** `18 g`, or the interval of a guess. */
export function sealWords({ low, typical, high, measured }: SealInterval): string {
  if (measured) return grams(typical.kineticForce);
  return `${grams(low.kineticForce)} to ${grams(high.kineticForce)} (typically ${grams(typical.kineticForce)}; a guess)`;
}

/** Whether seals hold a shaft against a force [N]: with the loosest and the tightest that they may be. */
export function holdsAgainst({ low, high }: SealInterval, force: number): 'holds' | 'gives' | 'unknown' {
  if (force <= low.kineticForce) return 'holds';
  return force > high.kineticForce ? 'gives' : 'unknown';
}

/** Lines of friction in a picture of forces that a scale shows [g]. */
export function sealRules({ low, high, measured }: SealInterval) {
  const at = (force: number, label: string) => ({
    axis: 'y' as const,
    value: (1e3 * force) / standardGravity,
    label,
  });
  const tight = measured ? 'friction holds the shaft below' : 'tightest seals guessed hold it below';
  const rules = [at(high.kineticForce, tight), at(-high.kineticForce, 'and above')];
  if (measured) return rules;
  return [...rules, at(low.kineticForce, 'loosest'), at(-low.kineticForce, 'loosest')];
}
