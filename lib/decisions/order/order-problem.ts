import { requireCount, requireNotNegative, requirePositive, requireWithin } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { listOf, optional, record, type Shape, someText } from '../../base/shape.js';
import type { Damper } from '../../damper/damper.js';
import type { Bottle } from '../day/fill-choice.js';
import { bottleShape } from '../day/fill-choice.js';
import { requireWantedDamping, type WantedDamping, wantedDampingShape } from '../match/damping-mismatch.js';

/**
 * A shock that shall damp as wanted at every temperature of the order.
 *
 * @public
 */
export interface OrderBuild {
  readonly name: string;
  readonly damper: Damper;
  readonly wanted: WantedDamping;
  /** Oil poured for one fill of all shocks of this build [m³], above 0. */
  readonly fillVolume: number;
}

/** Form of {@link OrderBuild}. */
export const orderBuildShape: Shape = {
  name: someText,
  damper: record,
  wanted: wantedDampingShape,
  fillVolume: 'm³',
};

/**
 * Which bottles to buy: the question.
 *
 * @public
 */
export interface OrderProblem {
  /** What can be had: the shop list, and bottles at hand. */
  readonly bottles: readonly Bottle[];
  /** Places of bottles that are at hand, one full bottle of each; none where left out. They cost nothing and count as no bottle of the order. */
  readonly owned?: readonly number[];
  readonly builds: readonly OrderBuild[];
  /** Oil temperatures of the range [K]. */
  readonly temperatures: readonly number[];
  /** Largest typical mismatch, above 0; 0.1 stands for 10 %. */
  readonly tolerance: number;
  /** In how many parts blends are measured out, 1 (no blends) to 20. */
  readonly parts: number;
  /** How often each build is filled, evenly over the temperatures, 1 or more. */
  readonly fills: number;
}

/** Form of {@link OrderProblem}. */
export const orderProblemShape: Shape = {
  bottles: listOf(bottleShape),
  owned: optional(listOf('')),
  builds: listOf(orderBuildShape),
  temperatures: listOf('K'),
  tolerance: '',
  parts: '',
  fills: '',
};

/** Throws unless every part of the question is in its range. */
export function requireOrderProblem(problem: OrderProblem): void {
  const { bottles, builds, temperatures, tolerance, parts, fills } = problem;
  for (const [list, entries] of Object.entries({ bottles, builds, temperatures })) {
    if (entries.length === 0) throw new InputError({ field: list, value: 0, accepted: '1 or more' });
  }
  bottles.forEach(({ volume, price }, index) => {
    requirePositive(volume, `bottles[${index}].volume`, 'm³');
    if (price !== undefined) requireNotNegative(price, `bottles[${index}].price`, '');
  });
  problem.owned?.forEach((place, index) => {
    requireWithin(place, 0, bottles.length - 1, `owned[${index}]`, '');
    requireCount(place + 1, `owned[${index}]`);
  });
  builds.forEach(({ wanted, fillVolume }, index) => {
    requirePositive(fillVolume, `builds[${index}].fillVolume`, 'm³');
    requireWantedDamping(wanted);
  });
  temperatures.forEach((temperature, index) => {
    requireWithin(temperature, 200, 600, `temperatures[${index}]`, 'K');
  });
  requirePositive(tolerance, 'tolerance', '');
  requireCount(parts, 'parts');
  requireWithin(parts, 1, 20, 'parts', '');
  requireCount(fills, 'fills');
}
