import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import type { TolerancedBuild } from '../../lib/decisions/spread/toleranced-build.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import type { Block } from '../../lib/page/blocks/block.js';
import { percent } from '../base/wording.js';
import { type Cause, largestCause } from './two-spreads.js';
import { answerPlace, motionText, plainName } from './wording.js';

/** Points along one size, for a straight line through its tolerance. */
const steps = 8;

/**
 * The share of the hole diameter again, by the error propagation of a handbook: slope of the force over each size times its standard deviation, squares added (GUM, JCGM
 * 100:2008, eq. 10). It draws nothing and knows no Sobol points.
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
  const mean = forces.reduce((sum, force) => sum + force, 0) / forces.length;
  // Even steps stand for an even distribution: their spread, ends counted half.
  const weights = forces.map((_, place) => (place === 0 || place === steps ? 0.5 : 1));
  const variance =
    forces.reduce((sum, force, place) => sum + (weights[place] ?? 0) * (force - mean) ** 2, 0) / steps;
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
