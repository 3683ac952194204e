import { between, type Search } from '../search/search.js';
import { planOf, pricesOf } from './order-answer.js';
import { neededSets, orderDemands } from './order-coverage.js';
import type { OrderPlan } from './order-plan.js';
import { type OrderProblem, requireOrderProblem } from './order-problem.js';
import { smallestSetByTrying } from './smallest-order.js';

/**
 * The plan of `orderPlan` by trying all sets of 1, 2, 3 … bottles: for a page, which can neither load a solver nor wait for one, and to hold
 * the solver against. It suits lists of up to about 15; where two sets have the same size and price, the two may name another one.
 *
 * @param problem - shop list, builds, temperatures, tolerance
 * @throws InputError for an input outside its range
 */
export function* orderPlanByTrying(problem: OrderProblem): Search<OrderPlan> {
  requireOrderProblem(problem);
  const demands = yield* between(orderDemands(problem), 0, 0.7);
  const set = yield* between(
    smallestSetByTrying(neededSets(demands, problem.owned), pricesOf(problem)),
    0.7,
    0.8,
  );
  return yield* between(planOf(problem, demands, set), 0.8, 1);
}
