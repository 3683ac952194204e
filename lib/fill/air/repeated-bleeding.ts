import { requireNotNegative, requirePositive, requireWithin } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { call, listOf, requireShape, type Shape } from '../../base/shape.js';
import { type RiseSpeed, riseAt } from './waiting-time.js';

/**
 * The assumptions under which bleeding again is judged.
 *
 * @public
 */
export interface BleedingAssumptions {
  /** Free air in the oil after filling [m³], 0 or more. */
  readonly airAtFill: number;
  /** Smallest bubble radius [m], above 0. */
  readonly smallestRadius: number;
  /** Largest bubble radius [m]; the air is spread evenly over the logarithm of the radius between both. */
  readonly largestRadius: number;
  /** Height through which bubbles rise [m], above 0. */
  readonly height: number;
  /** Time waited before each bleed [s], above 0. */
  readonly wait: number;
  /** Air drawn in again each time the cap is opened [m³], 0 or more, in bubbles of the same sizes. */
  readonly airDrawnIn: number;
  /** How fast a bubble of a radius rises. */
  readonly riseSpeed: RiseSpeed;
}

/** Form of {@link BleedingAssumptions}. */
export const bleedingAssumptionsShape: Shape = {
  airAtFill: 'm³',
  smallestRadius: 'm',
  largestRadius: 'm',
  height: 'm',
  wait: 's',
  airDrawnIn: 'm³',
  riseSpeed: call,
};

/** Size classes over the logarithm of the radius. */
const classes = 200;

/** Far beyond what anyone would do. */
const mostBleeds = 1000;

/**
 * Free air left in the oil [m³] after each bleed: first what was there after filling, then after the first bleed, the second, and so on.
 *
 * Before each bleed the bubbles stand anywhere in the oil, since working the shaft mixes them; in the wait, those that reach the
 * cap leave, `min(1, t v(R)/h)` of each size. Opening the cap again draws in some air before the wait, from the second bleed on.
 *
 * @param assumptions - volumes [m³], radii and height [m], wait [s]
 * @param bleeds - how many bleeds, 0 to 1000
 * @throws InputError for a value outside its range
 * @see our own model on the rise speed; the spread of bubble sizes is an assumption, nobody has measured it in these shocks
 * @public
 */
export function airAfterBleeds(assumptions: BleedingAssumptions, bleeds: number): readonly number[] {
  requireShape({ assumptions, bleeds }, { assumptions: bleedingAssumptionsShape, bleeds: '' });
  requireAssumptions(assumptions);
  requireWithin(bleeds, 0, mostBleeds, 'bleeds', '');
  const { airAtFill, smallestRadius, largestRadius, height, wait, airDrawnIn, riseSpeed } = assumptions;
  const stays = Array.from({ length: classes }, (_, index) => {
    const radius = smallestRadius * (largestRadius / smallestRadius) ** ((index + 0.5) / classes);
    return 1 - Math.min(1, (wait * riseAt(riseSpeed, radius)) / height);
  });
  let air = stays.map(() => airAtFill / classes);
  const left = [airAtFill];
  for (let bleed = 1; bleed <= bleeds; bleed++) {
    const drawn = bleed === 1 ? 0 : airDrawnIn / classes;
    air = air.map((volume, index) => (volume + drawn) * (stays[index] ?? 1));
    left.push(air.reduce((sum, volume) => sum + volume, 0));
  }
  return left;
}

/**
 * How many bleeds are worth the work: the last one that removes at least a chosen volume.
 *
 * @param airLeft - from {@link airAfterBleeds} [m³]
 * @param smallestGain - volume of air worth a bleed [m³], above 0
 * @returns a count, 0 or more
 * @throws InputError for a gain that is not above 0
 * @public
 */
export function worthwhileBleeds(airLeft: readonly number[], smallestGain: number): number {
  requireShape({ airLeft }, { airLeft: listOf('m³') });
  requirePositive(smallestGain, 'smallestGain', 'm³');
  let worthwhile = 0;
  for (let bleed = 1; bleed < airLeft.length; bleed++) {
    const gain = (airLeft[bleed - 1] ?? 0) - (airLeft[bleed] ?? 0);
    if (gain < smallestGain) break;
    worthwhile = bleed;
  }
  return worthwhile;
}

function requireAssumptions(assumptions: BleedingAssumptions): void {
  requireNotNegative(assumptions.airAtFill, 'airAtFill', 'm³');
  requireNotNegative(assumptions.airDrawnIn, 'airDrawnIn', 'm³');
  requirePositive(assumptions.smallestRadius, 'smallestRadius', 'm');
  requirePositive(assumptions.height, 'height', 'm');
  requirePositive(assumptions.wait, 'wait', 's');
  if (!(assumptions.largestRadius >= assumptions.smallestRadius)) {
    throw new InputError({
      field: 'largestRadius',
      value: assumptions.largestRadius,
      unit: 'm',
      accepted: `at least the smallest radius of ${assumptions.smallestRadius}`,
    });
  }
}
