import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import type { TolerancedBuild } from '../../lib/decisions/spread/toleranced-build.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import type { Block } from '../../lib/page/blocks/block.js';
import { percent } from '../base/wording.js';
import { type Cause, largestCause } from './two-spreads.js';
import { answerPlace, motionText, plainName } from './wording.js';

/** Even steps along one size, enough for a force that bends through a wide tolerance. */
const steps = 40;

/**
 * The share of the hole diameter again: by definition the variance of the force where nothing else is off, where the sizes add up (first-order index of Saltelli et al., from memory). The diameter goes through its tolerance in even
 * steps, so that nothing is drawn, and no Sobol points have a part in it.
 */
export function shareCheck(own: Cause | undefined): readonly Block[] {
  const top = largestCause(own, answerPlace);
  if (own === undefined || top === undefined || top.name !== 'holeDiameter') return [];
  const deviation = own.build.tolerances.holeDiameter;
  if (deviation?.kind !== 'uniform' || own.build.damper.piston.holes.some(({ shape }) => shape !== undefined))
    return [];
  const speed = own.build.speeds[answerPlace] ?? 0;
  const forces = Array.from({ length: steps + 1 }, (_, step) =>
    forceWithHoles(own.build, speed, deviation.halfWidth * ((2 * step) / steps - 1)),
  );
  // Even steps stand for an even distribution, ends counted half.
  const meanOf = (values: readonly number[]): number =>
    values.reduce((sum, value, place) => sum + (place === 0 || place === steps ? 0.5 : 1) * value, 0) / steps;
  const mean = meanOf(forces);
  const variance = meanOf(forces.map((force) => (force - mean) ** 2));
  const whole = (own.spreads()[answerPlace]?.standardDeviation ?? 0) ** 2;
  const share = variance / whole;
  return [
    {
      kind: 'check',
      claim: `${plainName(top.name)} alone, drilled in even steps through its tolerance, spreads the force as its share says`,
      passed: Math.abs(share - top.first) < 0.06,
      detail: `${percent(share)} against ${percent(top.first)} of the variance in ${motionText(speed)}`,
      ifFailed: 'Take the order of the sizes, not the numbers',
    },
  ];
}

function forceWithHoles(
  { damper, oil, position, temperature }: TolerancedBuild,
  speed: number,
  off: number,
): number {
  const holes = damper.piston.holes.map((group) => ({ ...group, diameter: group.diameter + off }));
  const model = damperModel({ ...damper, piston: { ...damper.piston, holes } }, fluidAt(oil, temperature));
  const { dampingForce, gasForce } = damperForce(model, { speed, position });
  return dampingForce + gasForce;
}
