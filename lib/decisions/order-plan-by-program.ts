import { planOf, pricesOf } from './order-answer.js';
import { type Demand, neededSets, orderDemands } from './order-coverage.js';
import type { OrderPlan } from './order-plan.js';
import { type OrderProblem, requireOrderProblem } from './order-problem.js';
import { smallestSetByProgram } from './order-program.js';
import { finishInSlices, type SearchControl } from './search.js';

/**
 * The same as `orderPlan` by integer programming, for long shop lists. The solver is loaded on the first call.
 *
 * @param problem - shop list, builds, temperatures, tolerance
 * @param control - progress and stop
 * @throws InputError for an input outside its range, the reason of the signal where it stops the search
 * @public
 */
export async function orderPlanByProgram(
  problem: OrderProblem,
  control: SearchControl = {},
): Promise<OrderPlan> {
  requireOrderProblem(problem);
  return orderPlanOfDemands(problem, await finishInSlices(orderDemands(problem), control), control);
}

/** The plan by integer programming where the demands are known. The solver cannot be stopped while it runs. */
export async function orderPlanOfDemands(
  problem: OrderProblem,
  demands: readonly Demand[],
  { signal }: SearchControl = {},
): Promise<OrderPlan> {
  signal?.throwIfAborted();
  const set = await smallestSetByProgram(neededSets(demands), pricesOf(problem));
  signal?.throwIfAborted();
  return planOf(problem, demands, set);
}
