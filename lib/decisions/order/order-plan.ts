import type { FillChoice } from '../day/fill-choice.js';
import { planOf, pricesOf } from './order-answer.js';
import { neededSets, orderDemands } from './order-coverage.js';
import { type OrderProblem, requireOrderProblem } from './order-problem.js';
import { between, type Search } from './search.js';
import { smallestSetByTrying } from './smallest-order.js';

/**
 * What one build is filled with at one temperature.
 *
 * @public
 */
export interface PlannedFill {
  readonly build: string;
  /** [K] */
  readonly temperature: number;
  readonly choice: FillChoice;
  /** Typical mismatch of the damping, the worst over the blending rules: 0.1 stands for 10 %. */
  readonly mismatch: number;
}

/**
 * A bottle of the order.
 *
 * @public
 */
export interface OrderLine {
  /** Place in the shop list. */
  readonly bottle: number;
  /** Oil used [m³]. */
  readonly used: number;
  /** How many bottles that takes. */
  readonly count: number;
}

/**
 * What the order would gain from one bottle more.
 *
 * @public
 */
export interface FurtherBottle {
  readonly bottle: number;
  /** Mean and worst mismatch over all fills with it. */
  readonly meanMismatch: number;
  readonly worstMismatch: number;
  /** Part of the fills that need no blending with it, 0 to 1. */
  readonly aloneShare: number;
}

/**
 * Which bottles to buy: the answer.
 *
 * @public
 */
export type OrderPlan =
  | {
      readonly possible: true;
      readonly lines: readonly OrderLine[];
      /** Price of the order; left out where a bottle of it has none. */
      readonly price?: number;
      readonly fills: readonly PlannedFill[];
      readonly meanMismatch: number;
      readonly worstMismatch: number;
      readonly aloneShare: number;
      /** The most useful first. */
      readonly further: readonly FurtherBottle[];
    }
  | {
      readonly possible: false;
      /** What no bottle and no blend of the list serves. */
      readonly unserved: readonly { readonly build: string; readonly temperature: number }[];
    };

/**
 * The smallest set of bottles with which every build stays within the tolerance of its wanted damping at every temperature, alone or blended;
 * of the smallest sets the cheapest. It is found by trying all sets of 1, 2, 3 … bottles, which suits lists of up to about 15 and
 * runs anywhere; `orderPlanByProgram` finds a set of the same size and price for longer lists.
 *
 * @param problem - shop list, builds, temperatures, tolerance
 * @throws InputError for an input outside its range
 * @public
 */
export function* orderPlan(problem: OrderProblem): Search<OrderPlan> {
  requireOrderProblem(problem);
  const demands = yield* between(orderDemands(problem), 0, 0.7);
  const set = yield* between(smallestSetByTrying(neededSets(demands), pricesOf(problem)), 0.7, 0.8);
  return yield* between(planOf(problem, demands, set), 0.8, 1);
}
