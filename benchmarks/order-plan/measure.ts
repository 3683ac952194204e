import { damperModel } from '../../lib/damper/damper-model.js';
import type { Bottle } from '../../lib/decisions/day/fill-choice.js';
import { dampingOf } from '../../lib/decisions/match/damping-mismatch.js';
import { speedRange } from '../../lib/decisions/match/speed-weights.js';
import { orderPlan } from '../../lib/decisions/order/order-plan-by-program.js';
import { orderPlanByTrying } from '../../lib/decisions/order/order-plan-by-trying.js';
import type { OrderProblem } from '../../lib/decisions/order/order-problem.js';
import { finish } from '../../lib/decisions/search/search.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { sealedGas } from '../../lib/gas/gas.js';
import { startDecisionWorkers } from '../../lib/workers/index.js';

const bottles = Array.from({ length: 40 }, (_, index): Bottle => {
  const kinematicViscosity = 100e-6 * 15 ** (index / 39);
  return {
    name: `bottle ${index + 1}`,
    oil: createOil({
      base: 'silicone',
      viscosity: { kind: 'silicone', point: { temperature: 298.15, kinematicViscosity } },
    }),
    volume: 60e-6,
    price: 6 + ((index * 7) % 5),
  };
});

const builds = Array.from({ length: 12 }, (_, index) => {
  const damper = {
    bore: 12e-3,
    shaftDiameter: 3e-3,
    stroke: 25e-3,
    piston: {
      diameter: 11.9e-3,
      thickness: 2.5e-3,
      holes: [{ count: 2 + (index % 4), diameter: (1.1 + 0.1 * (index % 3)) * 1e-3 }],
      eccentricity: 0,
    },
    gas: sealedGas({ volume: 1e-6, pressure: 101_325, polytropicExponent: 1.4, ambientPressure: 101_325 }),
    seal: { kineticForce: 0, breakawayForce: 0 },
  };
  const fluid = { kinematicViscosity: (200 + 30 * index) * 1e-6, density: 965 };
  const wanted = dampingOf(damperModel(damper, fluid), speedRange(0.05, 1, 5));
  return { name: `build ${index + 1}`, damper, wanted, fillVolume: 7e-6 };
});

const problem: OrderProblem = {
  bottles,
  builds,
  temperatures: Array.from({ length: 30 }, (_, index) => 278.15 + index),
  tolerance: 0.08,
  parts: 10,
  fills: 4,
};

async function timed<Result>(label: string, run: () => Promise<Result> | Result): Promise<Result> {
  const start = performance.now();
  const before = process.cpuUsage();
  const result = await run();
  const { user, system } = process.cpuUsage(before);
  // Processor time too: on a busy machine the clock says little.
  const processor = ((user + system) / 1e6).toFixed(2);
  console.log(`${label}: ${((performance.now() - start) / 1000).toFixed(2)} s, of processors ${processor} s`);
  return result;
}

console.log('Order plan: 40 bottles × 12 builds × 30 temperatures, blends in tenths, 8 %');
const program = await timed('  integer program (HiGHS), first call with loading', () => orderPlan(problem));
const trying = await timed('  all sets of 1, 2, 3 … bottles', () => finish(orderPlanByTrying(problem)));
const workers = startDecisionWorkers();
await timed('  integer program, worker threads starting', () => workers.orderPlan(problem));
const threads = await timed('  integer program, worker threads at hand', () => workers.orderPlan(problem));
await workers.close();
for (const [name, plan] of Object.entries({ program, trying, threads })) {
  if (!plan.possible) console.log(`  ${name}: nothing serves ${plan.unserved.length} fills`);
  else
    console.log(
      `  ${name}: ${plan.lines.map(({ bottle }) => bottles[bottle]?.name).join(', ')}; price ${plan.price}, worst ${(100 * plan.worstMismatch).toFixed(1)} %`,
    );
}
