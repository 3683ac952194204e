import { standardGravity } from '../../lib/base/constants.js';
import type { Corner } from '../../lib/motion/corner/corner.js';
import type { Block } from '../../lib/page/blocks/block.js';
import type { Landed } from '../base/landed.js';

/**
 * Momentum, from the trace alone: what tyre and gravity gave to body and wheel over the time shown is what they have at its end, `∫ N dt − (m_s + m_w) g t = Δp`. The page's
 * forces come from pressures; this looks at heights and the tyre only.
 */
export function momentumCheck(
  { outcome }: Landed,
  { sprungMass, wheelMass }: Corner,
  dropHeight: number,
): Block {
  const { times, tyreForces, bodies, wheels } = outcome.trace;
  const step = (times[1] ?? 0) - (times[0] ?? 0);
  let impulse = 0;
  for (let i = 1; i < times.length; i++)
    impulse += ((tyreForces[i - 1] ?? 0) + (tyreForces[i] ?? 0)) * 0.5 * step;
  const last = times.length - 1;
  const speedOf = (heights: Float64Array) =>
    (3 * (heights[last] ?? 0) - 4 * (heights[last - 1] ?? 0) + (heights[last - 2] ?? 0)) / (2 * step);
  const mass = sprungMass + wheelMass;
  const before = -mass * Math.sqrt(2 * standardGravity * dropHeight);
  const after = sprungMass * speedOf(bodies) + wheelMass * speedOf(wheels);
  const given = impulse - mass * standardGravity * ((times[last] ?? 0) - (times[0] ?? 0));
  const off = Math.abs(given - (after - before)) / Math.abs(before);
  return {
    kind: 'check',
    claim: 'What tyre and gravity gave to the corner is the momentum that it has (Newton)',
    passed: off < 0.02,
    detail: `off by ${(100 * off).toFixed(2)} % of the momentum of the drop, from ${times.length - 1} points of the trace`,
    ifFailed: 'Take the picture as a sketch',
  };
}
