import { landingShaftSpeed } from '../../lib/damper/driven-speed.js';
import { quantity } from '../../lib/page/parameters/declare-parameters.js';
import type { Build } from '../../lib/parts/parts.js';
import { landingSpeedOf } from './driven-speeds.js';
import { dropHeight } from './drop-height.js';
import { guessedMotionRatio } from './guessed-ratios.js';
import { speed } from './quantities.js';
import { roundedFast, type ShaftSpeeds, springSpeedsOf } from './shaft-speeds.js';

/** The three speeds of a build, rounded as a reader would choose them. Where nothing lands the fast one is that of the touch, on a tyre that neither gives nor bounces. */
export function shaftSpeedsOf(build: Build | undefined): ShaftSpeeds {
  const { slow, middle } = springSpeedsOf(build);
  return { slow, middle, fast: Math.max(landedOrTouched(build), 2 * middle) };
}

/** The landing alone, which may be slower than twice the middle speed [m/s]. */
export function landedOrTouched(build: Build | undefined): number {
  const landed = build && landingSpeedOf(build);
  const ratio = build?.corner?.motionRatio ?? guessedMotionRatio;
  return roundedFast(landed ?? landingShaftSpeed(dropHeight, ratio));
}

/** The control of the fast speed: one declaration for every page. It begins at that of the file's first build. */
export const fastSpeed = quantity({
  ...speed,
  label: 'Fast',
  help: 'A fast shaft speed, for the way in: as fast as a landing from 10 cm drives the first build. What the file does not say of the car is a guess.',
  default: 1000,
  inFile: ({ builds: [build] }) => shaftSpeedsOf(build).fast,
});
