import { InputError } from '../../lib/base/input-error.js';
import type { ShockPart } from '../../lib/parts/index.js';
import type { Build, CornerOfCar, OilPart, PistonPart } from '../../lib/parts/parts.js';
import { type Landed, landed, PastItsOil } from '../base/landed.js';
import { cornerOf, motionLimits, NoRoomForTheShaft } from '../base/moving-build.js';

/** What is asked of a landing: the build that is liked, as it is liked, and what it becomes. */
export interface Asked {
  readonly build: Build;
  readonly right: { readonly oil: OilPart; readonly temperature: number };
  readonly shock: ShockPart;
  readonly piston: PistonPart;
  /** Oil temperature of the run to come [K]. */
  readonly now: number;
  /** Drop height [m]. */
  readonly drop: number;
  /** What the corner carries, where another than that of the build is looked at. */
  readonly corner?: CornerOfCar;
}

/** A landing, or why there is none: the gas has no room for shaft and cavity, or the piston goes in past the oil behind it. */
export type Outcome = Landed | 'locks' | 'goes through';

/** The landing that is liked, and that of the new shock on an oil. */
export interface Landings {
  readonly drop: number;
  readonly liked: Landed;
  readonly on: (oil: OilPart) => Outcome;
  /** What of the car is a guess, and what landings leave out. */
  readonly assumptions: readonly string[];
}

/** As many as a reader leaves behind who moves one slider to and fro. */
const mostKept = 100;

const kept = new WeakMap<Build, Map<string, Outcome>>();

/** A landing that this build has done before is not done again: most sliders of the page do not move it. */
function once(build: Build, key: readonly unknown[], lands: () => Outcome): Outcome {
  const known = kept.get(build) ?? new Map<string, Outcome>();
  kept.set(build, known);
  const text = JSON.stringify(key);
  const before = known.get(text);
  if (before !== undefined) return before;
  const result = lands();
  if (known.size >= mostKept) known.clear();
  known.set(text, result);
  return result;
}

/**
 * Both landings from one height, the new shock on the spring and the corner of the old.
 *
 * @throws InputError where the build names no spring, or does not land as it is liked
 */
export function landingsOf({ build, right, shock, piston, now, drop, corner }: Asked): Landings {
  const { closeAt, ...rest } = corner === undefined ? build : { ...build, corner };
  const changed: Build = {
    ...rest,
    shock,
    piston,
    ...(closeAt === undefined || shock.name !== build.shock.name ? {} : { closeAt }),
  };
  const old = { ...build, ...(corner && { corner }), oil: right.oil };
  const key = ['liked', right.oil.definition, right.temperature, drop, corner];
  const liked = once(build, key, () => landed(old, right.temperature, drop));
  if (typeof liked === 'string') throw new Error('a landing that cannot be throws');
  return {
    drop,
    liked,
    assumptions: [...cornerOf(changed).guesses, ...motionLimits],
    on: (oil) =>
      once(build, [shock.name, piston.name, oil.definition, now, drop, corner], () =>
        landedOrNot(changed, now, drop, oil),
      ),
  };
}

/** The same; where nothing lands and no landing is asked for, why, in a sentence. */
export function landingsOrWhy(asked: Asked, needed: boolean): Landings | string {
  try {
    return landingsOf(asked);
  } catch (error) {
    if (needed || !(error instanceof InputError)) throw error;
    return error.message;
  }
}

function landedOrNot(build: Build, temperature: number, drop: number, oil: OilPart): Outcome {
  try {
    return landed(build, temperature, drop, 'likely', { oil });
  } catch (error) {
    if (error instanceof NoRoomForTheShaft) return 'locks';
    if (error instanceof PastItsOil) return 'goes through';
    throw error;
  }
}

/** How far a landing went in [m]. */
export const travelOf = ({ outcome }: Landed): number => outcome.largestTravel.value;

/** How hard the shock pushed at most [N]. */
export const pushOf = ({ outcome }: Landed): number => outcome.largestShockForce.value;
