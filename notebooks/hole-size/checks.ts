import type { DamperModel } from '../../lib/damper/damper-model.js';
import type { CheckBlock } from '../../lib/page/index.js';
import { roundedText } from '../../lib/units/index.js';
import { newtons, shaftSpeed } from '../base/wording.js';
import { dampingAtSpeed, drilled, flowExponent, type ShapeCase } from './shaped.js';

/** Slow enough that inertia costs nothing [m/s]. */
const creeping = 1e-6;

/** What the page claims, computed on its own piston. */
export function holeChecks(
  model: DamperModel,
  cases: readonly ShapeCase[],
  speeds: readonly number[],
  drill: number,
): readonly CheckBlock[] {
  const [sharp, chamfered, shaftWide, blindWide] = cases.map((one) => one.model);
  if (!sharp || !chamfered || !shaftWide || !blindWide) return [];
  const fast = speeds.at(-1) ?? 0;
  const force = dampingAtSpeed;
  const creepingExponent = flowExponent(model, 1);
  const fastDrop = Math.abs(model.pistonFlow.pressureDrop(model.dampingArea * fast).pressureDrop);
  const fastExponent = flowExponent(model, fastDrop);
  const bothWays = -force(shaftWide, -creeping) / force(shaftWide, creeping);
  const [narrowing, widening] = [force(blindWide, fast), force(shaftWide, fast)];
  return [
    {
      kind: 'check',
      claim: 'A larger hole is softer at every speed',
      passed: speeds.every((speed) => force(drilled(model, drill), speed) < force(model, speed)),
      detail: `${speeds.map(shaftSpeed).join(', ')}`,
    },
    {
      kind: 'check',
      claim: 'A chamfer makes no hole harder',
      passed: speeds.every((speed) => force(chamfered, speed) <= force(sharp, speed)),
      detail: `${newtons(force(chamfered, fast))} against ${newtons(force(sharp, fast))} at ${shaftSpeed(fast)}`,
    },
    {
      kind: 'check',
      claim: 'Slow oil does not care which way a taper points',
      passed: Math.abs(bothWays - 1) < 1e-3,
      detail: `rebound over compression ${roundedText(bothWays, 4)} at ${creeping * 1000} mm/s`,
    },
    {
      kind: 'check',
      claim: 'Fast oil does: a hole that narrows along the flow is the harder one',
      passed: narrowing > widening,
      detail: `compression at ${shaftSpeed(fast)}: ${newtons(narrowing)} against ${newtons(widening)}`,
    },
    {
      kind: 'check',
      claim:
        'One percent of diameter is worth 3 to 4 percent of slow oil, and less the faster it runs, down to 2',
      passed:
        creepingExponent > 2.9 &&
        creepingExponent < 4 &&
        fastExponent < creepingExponent &&
        fastExponent > 1.9,
      detail: `${roundedText(creepingExponent, 3)} when creeping, ${roundedText(fastExponent, 3)} at ${shaftSpeed(fast)}`,
    },
  ];
}
