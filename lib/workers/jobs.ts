import type { DesignFront, DesignProblem } from '../decisions/design/design-problem.js';
import { designSearch } from '../decisions/design/design-search.js';
import { orderDemands } from '../decisions/order/order-coverage.js';
import type { NeededSets } from '../decisions/order/order-cuts.js';
import type { OrderProblem } from '../decisions/order/order-problem.js';
import { smallestSetByProgram } from '../decisions/order/order-program.js';
import { type PackedDemands, packedDemands } from '../decisions/order/packed-demands.js';
import type { SmallestSet } from '../decisions/order/smallest-order.js';
import { finish } from '../decisions/search/search.js';
import { blocksOf, type Drawing, drawnForces } from '../decisions/spread/force-spread.js';
import { type SensitivitySums, sensitivitySums } from '../decisions/spread/sensitivity-indices.js';
import type { TolerancedBuild } from '../decisions/spread/toleranced-build.js';
import { toleranceModel } from '../decisions/spread/tolerances.js';

/** A piece of work as plain data, and what it gives. */
export interface Jobs {
  readonly forces: {
    readonly input: { readonly build: TolerancedBuild; readonly drawing: Drawing; readonly range: Range };
    readonly output: Float64Array;
  };
  readonly sums: {
    readonly input: { readonly build: TolerancedBuild; readonly seed: number; readonly range: Range };
    readonly output: readonly SensitivitySums[];
  };
  readonly design: { readonly input: DesignProblem; readonly output: DesignFront };
  readonly demands: { readonly input: OrderProblem; readonly output: PackedDemands };
  readonly order: {
    readonly input: { readonly needed: NeededSets; readonly prices: readonly number[] };
    readonly output: SmallestSet | undefined;
  };
}

/** First index, and the index after the last. */
export type Range = readonly [from: number, to: number];

/** The piece of work that a message to a worker asks for. */
export type JobMessage = {
  readonly [Name in keyof Jobs]: { readonly name: Name; readonly input: Jobs[Name]['input'] };
}[keyof Jobs];

/** Does one piece of work. */
export function doJob(message: JobMessage): Jobs[keyof Jobs]['output'] | Promise<Jobs[keyof Jobs]['output']> {
  switch (message.name) {
    case 'forces': {
      const { build, drawing, range } = message.input;
      return drawnForces(build, drawing, ...range);
    }
    case 'sums': {
      const { build, seed, range } = message.input;
      const model = toleranceModel(build);
      // Sums are rounded block by block, so that it does not matter how many blocks a message holds.
      return blocksOf(range[1])
        .filter(([from]) => from >= range[0])
        .map(([from, to]) => sensitivitySums(model, { from, to, seed, sampling: 'low-discrepancy' }));
    }
    case 'design':
      return finish(designSearch(message.input));
    case 'demands':
      return packedDemands(finish(orderDemands(message.input)));
    case 'order':
      return smallestSetByProgram(message.input.needed, message.input.prices);
  }
}
