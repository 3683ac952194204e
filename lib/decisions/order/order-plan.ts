import type { FillChoice } from '../day/fill-choice.js';

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
  /** How many bottles are to be bought for that; 0 where the bottle at hand does. */
  readonly count: number;
  /** True where one bottle is at hand. */
  readonly owned: boolean;
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
 * A build at a temperature at which nothing serves it.
 *
 * @public
 */
export interface UnservedFill {
  readonly build: string;
  /** [K] */
  readonly temperature: number;
}

/**
 * Which bottles to buy: the answer.
 *
 * @public
 */
export type OrderPlan =
  | {
      readonly possible: true;
      /** What no bottle and no blend serves, and the plan leaves out. */
      readonly unserved: readonly UnservedFill[];
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
      /** What no bottle and no blend of the list serves: everything. */
      readonly unserved: readonly UnservedFill[];
    };
