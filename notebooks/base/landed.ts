import { standardGravity } from '../../lib/base/constants.js';
import { InputError } from '../../lib/base/input-error.js';
import { keptResults } from '../../lib/base/kept-results.js';
import type { Corner } from '../../lib/motion/corner/corner.js';
import type { CornerOutcome } from '../../lib/motion/corner/corner-outcome.js';
import { type CornerOptions, moveCorner } from '../../lib/motion/corner/move-corner.js';
import type { Build, OilPart, PistonPart } from '../../lib/parts/parts.js';
import { formatQuantity } from '../../lib/units/index.js';
import { type AirEnd, cornerOf, type MovingBuild, movingBuild, NoRoomForTheShaft } from './moving-build.js';

/** How long a landing is followed at most [s]: down, up again and most of the way to rest. */
const followed = 0.6;

/** Relative tolerance of the equations: forces and travels to 2e-5, far below what a page shows, in half the time of a tenth of it. */
const followedTo = 1e-4;

/** One landing of one build. */
export interface Landed {
  readonly moving: MovingBuild;
  readonly outcome: CornerOutcome;
  /** Whether the bump stop was touched. */
  readonly bottoms: boolean;
  /** Largest upward acceleration of the body, in standard gravities. */
  readonly gravities: number;
}

/** The stops give way until the piston stands at the end of its oil. In keys and units of the parts file. */
export class PastItsOil extends InputError {
  constructor({ name, spring }: Build, dropHeight: number) {
    const rate = spring === undefined ? '' : ` on ${formatQuantity(spring.rate, 'springRate', 'N/mm', 3)}`;
    super({
      field: `the corner of "${name}"`,
      value: `a drop of ${formatQuantity(dropHeight, 'length', 'mm', 3)}${rate}`,
      accepted:
        'one whose stops catch it before the piston comes to the end of its oil: a lower drop, a stiffer spring, less mass or a smaller motion-ratio',
    });
  }
}

/**
 * Lets a build land from a height, its shock in balance as it falls.
 *
 * @param trace - parts of the trace that is drawn; with none the landing is followed until it can go no deeper
 */
export function landed(
  build: Build,
  temperature: number,
  dropHeight: number,
  end: AirEnd = 'likely',
  parts: { readonly oil?: OilPart; readonly piston?: PistonPart } = {},
  trace = 0,
): Landed {
  const moving = movingBuild(build, temperature, end, parts);
  const { corner } = cornerOf(build);
  const outcome = dropped(moving, corner, temperature, dropHeight, {
    parts: trace,
    tolerance: followedTo,
    ...(trace === 0 ? { until: 'deepest' } : {}),
  });
  return {
    moving,
    outcome,
    bottoms: outcome.bottomings.length > 0,
    gravities: outcome.largestBodyAcceleration.value / standardGravity,
  };
}

function dropped(
  { build, shock }: MovingBuild,
  corner: Corner,
  temperature: number,
  dropHeight: number,
  options: CornerOptions,
): CornerOutcome {
  try {
    return moveCorner(shock, corner, { kind: 'landing', dropHeight }, { duration: followed, ...options });
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    if (error.field === 'springRate') throw tooWeak(build);
    if (error.field === 'farVolume') throw new PastItsOil(build, dropHeight);
    if (error.field !== 'gas.capacity') throw error;
    throw new NoRoomForTheShaft(
      build,
      temperature,
      shock.gas.capacity,
      'enough for shaft and cavity together on the way',
    );
  }
}

/** A spring that cannot carry its corner, in keys and units of the parts file. */
function tooWeak({ name, spring }: Build): InputError {
  const rate = spring === undefined ? '' : `, ${formatQuantity(spring.rate, 'springRate', 'N/mm', 3)}`;
  return new InputError({
    field: 'spring',
    value: `${spring?.name ?? ''}${rate}`,
    accepted: `one that, with the gas, carries the corner of ${name} within the stroke and lets it out as it falls`,
  });
}

/** The same, or undefined where the gas has no room for it: the shaft locks on the way. */
export function landedOrLocked(...asked: Parameters<typeof landed>): Landed | undefined {
  try {
    return landed(...asked);
  } catch (error) {
    if (error instanceof NoRoomForTheShaft) return undefined;
    throw error;
  }
}

/** The landing at both ends of what air does in the oil, where the gas has room for it. */
export function landedAtEnds(build: Build, temperature: number, dropHeight: number): readonly Landed[] {
  return (['bubbles', 'early release'] as const).flatMap(
    (end) => landedOrLocked(build, temperature, dropHeight, end) ?? [],
  );
}

const highestSearched = 1;
const halvings = 6;
/** The height is found to a hundredth, so that travel to 1e-4 is enough. */
const searchedTo = 1e-3;

/** Lowest drop from which the bump stop is touched [m], to a hundredth of the range; undefined where none up to a metre does it. */
export function bottomingHeight(build: Build, temperature: number): number | undefined {
  return bottoming(build, temperature, () => searchedHeight(build, temperature));
}

/** No drop of the reader has a part in it. */
const bottoming = keptResults<Build, number | undefined>(12);

function searchedHeight(build: Build, temperature: number): number | undefined {
  const moving = movingBuild(build, temperature);
  const { corner } = cornerOf(build);
  const touches = (height: number): boolean => {
    try {
      const options = { parts: 0, tolerance: searchedTo, until: 'touched' } as const;
      return dropped(moving, corner, temperature, height, options).bottomings.length > 0;
    } catch (error) {
      if (error instanceof NoRoomForTheShaft || error instanceof PastItsOil) return true;
      throw error;
    }
  };
  if (!touches(highestSearched)) return undefined;
  let [low, high] = [0, highestSearched];
  for (let step = 0; step < halvings; step++) {
    const middle = (low + high) / 2;
    if (touches(middle)) high = middle;
    else low = middle;
  }
  return high;
}
