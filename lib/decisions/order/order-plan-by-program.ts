import { requireShape } from '../../base/shape.js';
import { finishInSlices, partOf, type SearchControl, searchControlShape } from '../search/search.js';
import { planOf, pricesOf } from './order-answer.js';
import { neededSets, orderDemands } from './order-coverage.js';
import type { OrderPlan } from './order-plan.js';
import { type OrderProblem, orderProblemShape, requireOrderProblem } from './order-problem.js';
import { loadSolver, smallestSetByProgram } from './order-program.js';

/**
 * The smallest set of bottles with which every build stays within the tolerance of its wanted damping at every temperature, alone or blended;
 * of the smallest sets the cheapest. Found by integer programming; the solver is loaded while the fills are looked at. The signal is
 * looked at all the time but within a solve, of which there are a few; with `startDecisionWorkers` it ends a solve as well.
 *
 * @param problem - shop list, builds, temperatures, tolerance
 * @param control - progress and stop
 * @throws InputError for an input outside its range, the reason of the signal where it stops the search
 * @public
 */
export async function orderPlan(problem: OrderProblem, control: SearchControl = {}): Promise<OrderPlan> {
  requireShape({ problem, control }, { problem: orderProblemShape, control: searchControlShape });
  requireOrderProblem(problem);
  // It loads in the pauses of the first part.
  const solver = loadSolver();
  // Whoever waits for it gets its error; until then, and where nobody will, it must not count as unhandled.
  solver.catch(() => undefined);
  const demands = await finishInSlices(orderDemands(problem), partOf(control, 0, 0.7));
  const set = await smallestSetByProgram(
    neededSets(demands, problem.owned),
    pricesOf(problem),
    control,
    solver,
  );
  return finishInSlices(planOf(problem, demands, set), partOf(control, 0.8, 1));
}
