import type { Block } from '../../lib/page/index.js';
import type { TimedGroup, Timing } from './groups.js';

/** Probability that a bell curve lies outside −edge to edge, by Simpson's rule on its density: no function of the page's own. */
function outside(centre: number, width: number, edge: number): number {
  const intervals = 2000;
  const step = (2 * edge) / intervals;
  let sum = 0;
  for (let i = 0; i <= intervals; i++) {
    const weight = i === 0 || i === intervals ? 1 : i % 2 === 1 ? 4 : 2;
    sum += weight * Math.exp(-0.5 * ((-edge + i * step - centre) / width) ** 2);
  }
  return 1 - (sum * step) / 3 / (width * Math.sqrt(2 * Math.PI));
}

/** The likelihoods again, from the times themselves and by integrating the bell curve. */
export function likelihoodCheck(groups: readonly TimedGroup[], { limit }: Timing): Block {
  let worst = 0;
  let count = 0;
  for (const { pairs, shocks } of groups) {
    for (const { first, second, unlikeProbability } of pairs) {
      const [a, b] = [first, second].map((name) => shocks.find((shock) => shock.name === name));
      if (a === undefined || b === undefined) continue;
      const width = Math.sqrt(a.relativeUncertainty ** 2 + b.relativeUncertainty ** 2);
      const again = outside(Math.log(b.damping) - Math.log(a.damping), width, Math.log(1 + limit));
      worst = Math.max(worst, Math.abs(again - unlikeProbability));
      count++;
    }
  }
  return {
    kind: 'check',
    claim: 'Every likelihood is that of the bell curve integrated step by step',
    passed: worst < 1e-5,
    detail: `${count} pairs, largest difference ${worst.toExponential(1)}`,
    ifFailed: 'Do not trust the likelihoods; compare the times yourself',
  };
}
