import { InputError } from '../../lib/base/input-error.js';
import type { CornerEvent } from '../../lib/motion/corner/ground.js';
import { moveCorner } from '../../lib/motion/corner/move-corner.js';
import type { MovingShock } from '../../lib/motion/shock/moving-shock.js';
import type { Build } from '../../lib/parts/parts.js';
import { cornerOf, movingBuild } from '../base/moving-build.js';
import { bumpLength, bumpSpeed } from '../base/usual-bump.js';

/** A track as a mixture. */
export interface Track {
  readonly bumpsPerSecond: number;
  readonly bumpHeight: number;
  readonly landingsPerSecond: number;
  readonly dropHeight: number;
}

/** Heat that a track makes in one shock [W] at an oil temperature [K]. */
export interface TrackHeat {
  readonly bumps: (temperature: number) => number;
  readonly landings: (temperature: number) => number;
  /** Heat of one bump and of one landing [J] at the air's temperature. */
  readonly ofOneBump: number;
  readonly ofOneLanding: number;
}

/** How long a bump and a landing are followed [s]: until next to nothing moves. */
const followed = { bump: 0.3, landing: 0.4 };

/** How much warmer than the air energies are asked for a second time [K]: the car's fall decides them and hardly the oil, so that a line between is enough. */
const warmer = 30;

/** Heat of a track by following one bump and one landing at two oil temperatures. */
export function trackHeat(build: Build, air: number, track: Track): TrackHeat {
  const { corner } = cornerOf(build);
  const [cold, hot] = [movingBuild(build, air).shock, warmOrLocked(build, air + warmer)];
  const along = (event: CornerEvent, duration: number, wanted: number): ((temperature: number) => number) => {
    if (wanted === 0) return () => 0;
    const heatOf = (shock: MovingShock): number => {
      const { lost } = moveCorner(shock, corner, event, { duration, parts: 0, tolerance: 1e-3 });
      return lost.holes + lost.recoil + lost.rim + lost.seals;
    };
    const atAir = heatOf(cold);
    const above = hot === undefined ? atAir : heatOf(hot);
    return (temperature) => atAir * (above / atAir) ** ((temperature - air) / warmer);
  };
  const bump = along(
    { kind: 'bump', height: track.bumpHeight, length: bumpLength, speed: bumpSpeed },
    followed.bump,
    track.bumpsPerSecond,
  );
  const landing = along(
    { kind: 'landing', dropHeight: track.dropHeight },
    followed.landing,
    track.landingsPerSecond,
  );
  return {
    bumps: (temperature) => track.bumpsPerSecond * bump(temperature),
    landings: (temperature) => track.landingsPerSecond * landing(temperature),
    ofOneBump: bump(air),
    ofOneLanding: landing(air),
  };
}

/** Undefined where the oil has grown so far that the shaft locks before the end of its stroke. */
function warmOrLocked(build: Build, temperature: number): MovingShock | undefined {
  try {
    return movingBuild(build, temperature).shock;
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}
