import { setMaxListeners } from 'node:events';
import { availableParallelism } from 'node:os';
import { Piscina } from 'piscina';
import { requireCount } from '../base/checks.js';
import type { DesignFront, DesignProblem } from '../decisions/design/design-problem.js';
import { mergedFronts } from '../decisions/design/merged-fronts.js';
import { planOf, pricesOf } from '../decisions/order/order-answer.js';
import { neededSets } from '../decisions/order/order-coverage.js';
import type { OrderPlan } from '../decisions/order/order-plan.js';
import { type OrderProblem, requireOrderProblem } from '../decisions/order/order-problem.js';
import { unpackedDemands } from '../decisions/order/packed-demands.js';
import { finishInSlices, partOf, type SearchControl } from '../decisions/search/search.js';
import {
  blocksOf,
  type Drawing,
  type ForceSpread,
  joined,
  sharesOf,
  spreadOf,
  type ToleranceShare,
} from '../decisions/spread/force-spread.js';
import { requireTolerancedBuild, type TolerancedBuild } from '../decisions/spread/toleranced-build.js';
import { doJob, type JobMessage, type Jobs, type Range } from './jobs.js';

/**
 * The long searches, spread over worker threads. Results are those of the searches without workers, to the last bit, whatever the
 * number of workers: the pieces are always the same ones and come together in the same order.
 *
 * @public
 */
export interface DecisionWorkers {
  readonly forceSpread: (
    build: TolerancedBuild,
    drawing: Drawing,
    control?: SearchControl,
  ) => Promise<readonly ForceSpread[]>;
  readonly toleranceShares: (
    build: TolerancedBuild,
    points: number,
    seed: number,
    control?: SearchControl,
  ) => Promise<readonly (readonly ToleranceShare[])[]>;
  readonly designSearch: (problem: DesignProblem, control?: SearchControl) => Promise<DesignFront>;
  readonly orderPlan: (problem: OrderProblem, control?: SearchControl) => Promise<OrderPlan>;
  /** Ends the threads. */
  readonly close: () => Promise<void>;
}

function startPool(count: number): Piscina {
  const source = import.meta.url.endsWith('.ts');
  const filename = new URL(source ? './jobs.ts' : './jobs.js', import.meta.url).href;
  return new Piscina({
    filename,
    name: doJob.name,
    minThreads: count,
    maxThreads: count,
    // Each build leaves short-lived objects; with the small nursery that a thread gets by default half of the time went into clearing it.
    resourceLimits: { maxYoungGenerationSizeMb: 64 },
    // From source, a thread needs the loader that reads TypeScript; as shipped it takes none over, since a loader may slow all code by half.
    execArgv: source ? ['--import', 'tsx'] : [],
  });
}

/** Messages for each thread: enough to share the work evenly and to stop soon, few enough that handing over costs little. */
const messagesEach = 6;

/** Whole blocks in a row, for as many messages as suit the number of threads. */
function rangesFor(total: number, threads: number): readonly Range[] {
  const blocks = blocksOf(total);
  const size = Math.ceil(blocks.length / (messagesEach * threads));
  return blocks
    .filter((_, index) => index % size === 0)
    .map(([from], index) => [from, blocks[Math.min((index + 1) * size, blocks.length) - 1]?.[1] ?? total]);
}

/**
 * Starts worker threads for the long searches; Node only.
 *
 * @param count - threads, 1 or more; by default one for each core
 * @throws InputError for a count outside its range
 * @public
 */
export function startDecisionWorkers(count: number = availableParallelism()): DecisionWorkers {
  requireCount(count, 'count');
  const pool = startPool(count);

  async function all<Name extends keyof Jobs>(
    messages: readonly (JobMessage & { readonly name: Name })[],
    { signal, onProgress }: SearchControl = {},
  ): Promise<readonly Jobs[Name]['output'][]> {
    signal?.throwIfAborted();
    // Every piece listens to a signal of our own, so that the caller's does not warn of many listeners.
    const stop = signal === undefined ? undefined : AbortSignal.any([signal]);
    if (stop !== undefined) setMaxListeners(0, stop);
    let done = 0;
    const run = async (message: JobMessage): Promise<Jobs[Name]['output']> => {
      const output: Jobs[Name]['output'] = await pool.run(
        message,
        stop === undefined ? {} : { signal: stop },
      );
      done += 1;
      onProgress?.(done / messages.length);
      return output;
    };
    try {
      return await Promise.all(messages.map(run));
    } catch (error) {
      // The pool has an error of its own for a stop; callers get the reason of their signal.
      signal?.throwIfAborted();
      throw error;
    }
  }

  return {
    forceSpread: async (build, drawing, control) => {
      requireTolerancedBuild(build);
      requireCount(drawing.count, 'count');
      const messages = rangesFor(drawing.count, count).map(
        (range) => ({ name: 'forces', input: { build, drawing, range } }) as const,
      );
      return spreadOf(build.speeds, joined(await all(messages, control)));
    },
    toleranceShares: async (build, points, seed, control) => {
      requireTolerancedBuild(build);
      requireCount(points, 'points');
      const messages = rangesFor(points, count).map(
        (range) => ({ name: 'sums', input: { build, seed, range } }) as const,
      );
      return sharesOf(build, (await all(messages, control)).flat());
    },
    designSearch: async (problem, control) => {
      const messages = problem.oils.map(
        (oil) => ({ name: 'design', input: { ...problem, oils: [oil] } }) as const,
      );
      return mergedFronts(await all(messages, control));
    },
    orderPlan: async (problem, control) => {
      requireOrderProblem(problem);
      const pieces = problem.temperatures.map((temperature) => ({ ...problem, temperatures: [temperature] }));
      const messages = pieces.map((input) => ({ name: 'demands', input }) as const);
      const packed = await all(messages, partOf(control ?? {}, 0, 0.7));
      const demands = unpackedDemands(problem, packed);
      const input = { needed: neededSets(demands, problem.owned), prices: pricesOf(problem) };
      // In a thread of its own the solver ends with the thread.
      const [set] = await all([{ name: 'order', input }], partOf(control ?? {}, 0.7, 0.8));
      return finishInSlices(planOf(problem, demands, set), partOf(control ?? {}, 0.8, 1));
    },
    close: () => pool.destroy(),
  };
}
