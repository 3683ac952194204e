import { between, type Search } from '../search/search.js';
import { planOf, pricesOf } from './order-answer.js';
import { neededSets, orderDemands } from './order-coverage.js';
import type { OrderPlan } from './order-plan.js';
import { type OrderProblem, requireOrderProblem } from './order-problem.js';
import { smallestSetByTrying } from './smallest-order.js';
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
  const set = yield* between(
    smallestSetByTrying(neededSets(demands, problem.owned), pricesOf(problem)),
    0.7,
    0.8,
  );
  return yield* between(planOf(problem, demands, set), 0.8, 1);
}
