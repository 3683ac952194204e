import * as decisions from '../../lib/decisions/index.js';
import * as fill from '../../lib/fill/index.js';
import * as fluid from '../../lib/fluid/index.js';
import * as core from '../../lib/index.js';
import * as measure from '../../lib/measure/index.js';
import * as motion from '../../lib/motion/index.js';
import * as order from '../../lib/order/index.js';
import * as page from '../../lib/page/index.js';
import * as parts from '../../lib/parts/index.js';
import * as plot from '../../lib/plot/index.js';
import * as units from '../../lib/units/index.js';
import * as workers from '../../lib/workers/index.js';
import type { GoodCall, GoodCalls } from './good-call.js';
import { coreCalls } from './good-core.js';
import { decisionCalls } from './good-decisions.js';
import { fillCalls } from './good-fill.js';
import { fluidCalls } from './good-fluid.js';
import { measureCalls } from './good-measure.js';
import { motionCalls } from './good-motion.js';
import { pageCalls, plotCalls } from './good-pages.js';
import { partsCalls } from './good-parts.js';
import { unitsCalls } from './good-units.js';

/** Their arguments are checked by the functions beside them, or they have none. */
export const withoutCalls = ['bindDamper', 'finishInSlices', 'startDecisionWorkers'];

type Exported = (...args: readonly unknown[]) => unknown;

/** One exported function with good calls. */
export interface Case {
  readonly entry: string;
  readonly name: string;
  readonly run: Exported;
  readonly calls: readonly GoodCall[];
}

const entries: Readonly<Record<string, readonly [object, GoodCalls]>> = {
  dashpot: [core, coreCalls],
  'dashpot/fluid': [fluid, fluidCalls],
  'dashpot/fill': [fill, fillCalls],
  'dashpot/measure': [measure, measureCalls],
  'dashpot/motion': [motion, motionCalls],
  'dashpot/decisions': [decisions, decisionCalls],
  'dashpot/order': [order, decisionCalls],
  'dashpot/parts': [parts, partsCalls],
  'dashpot/plot': [plot, plotCalls],
  'dashpot/page': [page, pageCalls],
  'dashpot/units': [units, unitsCalls],
  'dashpot/workers': [workers, { startDecisionWorkers: [] }],
};

/** Every exported function of every entry, and whether there are calls of it; a class is no function. */
export const everyExport: readonly Case[] = Object.entries(entries).flatMap(([entry, [module, calls]]) =>
  Object.entries(module)
    .filter(([, value]) => typeof value === 'function' && !isError(value))
    .map(([name, run]) => ({ entry, name, run: run as Exported, calls: calls[name] ?? [] })),
);

function isError(value: unknown): boolean {
  return typeof value === 'function' && value.prototype instanceof Error;
}
