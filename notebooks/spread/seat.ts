import { damperModel } from '../../lib/damper/damper-model.js';
import { playOfPiston } from '../../lib/damper/play-of-piston.js';
import type { TolerancedBuild } from '../../lib/decisions/spread/toleranced-build.js';
import { gapPlayBounds } from '../../lib/flow/gap/gap-play.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { shaftSpeed } from '../base/wording.js';

/** A change in percent with two digits; what prints as less than a thousandth is said to be. */
function change(part: number): string {
  const size = 100 * Math.abs(part);
  return size < 0.001 ? 'less than 0.001 %' : `${Number(size.toPrecision(2))} %`;
}

/** What the spread leaves out: where in its play the piston sits, with the bound of what that does to slow damping. */
export function seatSentence({ damper, oil, temperature }: TolerancedBuild, slow: number): string {
  const model = damperModel(damper, fluidAt(oil, temperature));
  const { least, most } = gapPlayBounds(model.pistonFlow.gap);
  const { more, less } = playOfPiston(model, -slow);
  return `How the piston sits in its bore is left out: centred, aside or askew by its play, its rim lets ${Number(least.toPrecision(2))} to ${most} times as much past as centred, which at ${shaftSpeed(slow)} in rebound makes the damping at most ${change(more)} more or ${change(less)} less. Rubbing is not in it.`;
}
