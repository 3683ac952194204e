import { DashpotError } from '../../lib/base/dashpot-error.js';
import type { CornerEvent } from '../../lib/motion/corner/ground.js';
import { moveCorner } from '../../lib/motion/corner/move-corner.js';
import type { Build } from '../../lib/parts/parts.js';
import { byBuild } from './by-build.js';
import { dropHeight } from './drop-height.js';
import { guessedMotionRatios } from './guessed-ratios.js';
import { cornerOf, movingBuild } from './moving-build.js';
import { guessedMasses } from './possible-corners.js';
import { speedTemperature } from './shaft-speeds.js';
import { type Span, spanOf } from './span.js';
import { bumpHeight, bumpLength, bumpSpeed } from './usual-bump.js';

/** How long an event is followed [s]: the shaft is fastest on its way in within the first 50 ms and on its way out before it rests. */
const followed = { in: 0.1, out: 0.6 };

/** Speeds to a thousandth, far below the 50 mm/s to which they are rounded. */
const tolerance = 1e-3;

/** How soon after a cavity closes the shaft is still as fast as it came through it [s]. */
const held = 1e-3;

/** How fast the shaft goes in and comes out [m/s, both positive]. */
export interface InAndOut {
  readonly in: number;
  readonly out: number;
  /** Whether the fastest way out falls into a cavity, which does not hold the shaft back. */
  readonly freely: boolean;
}

const landing: CornerEvent = { kind: 'landing', dropHeight };
const bump: CornerEvent = { kind: 'bump', height: bumpHeight, length: bumpLength, speed: bumpSpeed };

/** Undefined where the build has no spring, or its spring or gas does not let it do this: the pages of motion say why. */
function driven(build: Build, event: CornerEvent, duration: number): InAndOut | undefined {
  if (build.spring === undefined) return undefined;
  try {
    const { shock } = movingBuild(build, speedTemperature(build));
    const options = { duration, parts: 0, tolerance };
    const { cavities, ...outcome } = moveCorner(shock, cornerOf(build).corner, event, options);
    const { value, time } = outcome.fastestRebound;
    return {
      in: outcome.fastestCompression.value,
      out: -value,
      freely: cavities.some(({ opened, closed = duration }) => opened <= time && time <= closed + held),
    };
  } catch (error) {
    if (error instanceof DashpotError) return undefined;
    throw error;
  }
}

/** Highest speed at which a build goes in as it lands from {@link dropHeight} [m/s], with the guess of a car where the file has none. */
export const landingSpeedOf = byBuild(goesIn);

function goesIn(build: Build): number | undefined {
  return driven(build, landing, followed.in)?.in;
}

const ends = ({ low, high }: { readonly low: number; readonly high: number }) => [low, high] as const;

/** The same with the ends of that guess, which the four corners of mass and motion ratio hold; undefined where the file says what the corner carries, or nothing lands. */
export const landingSpeedSpan = byBuild((build): Span | undefined => {
  const typical = landingSpeedOf(build);
  if (build.corner !== undefined || typical === undefined) return undefined;
  const corners = ends(guessedMasses).flatMap((sprungMass) =>
    ends(guessedMotionRatios).map((motionRatio) => ({ sprungMass, motionRatio })),
  );
  const driven = corners.flatMap((corner) => goesIn({ ...build, corner }) ?? []);
  return spanOf([typical, ...driven]);
});

/** Landing and bump of a build, in and out; undefined where one of them cannot be. */
export const eventsOf = byBuild((build) => {
  const [landed, bumped] = [driven(build, landing, followed.out), driven(build, bump, followed.out)];
  return landed === undefined || bumped === undefined ? undefined : { landed, bumped };
});
