import { benchStroke } from '../../lib/motion/bench/bench-stroke.js';
import type { Trace } from '../../lib/motion/bench/trace.js';
import type { Block } from '../../lib/page/blocks/block.js';
import type { CheckBlock } from '../../lib/page/index.js';
import { heatOf, type Stroked } from './stroked.js';

/** How far the area may be from the heat, and from where on the trace is looked at more closely: a cavity that closes leaves a spike between two points. */
const [allowed, close] = [0.01, 0.005];
const manyParts = 4800;

/** Area inside a loop of force against travel [J]. */
function areaOf({ travels, forces }: Pick<Trace, 'travels' | 'forces'>): number {
  let area = 0;
  for (let i = 1; i < travels.length; i++)
    area += (((forces[i] ?? 0) + (forces[i - 1] ?? 0)) / 2) * ((travels[i] ?? 0) - (travels[i - 1] ?? 0));
  return area;
}

/** Energy, two ways: the area of the loop, and what the parts turn into heat, from flows and pressures. */
export function energyCheck({ cycle, moving, result, stroke }: Stroked): Block {
  const heat = heatOf(cycle);
  const isClose = Math.abs(areaOf(result.trace) / heat - 1) < close;
  const again = { ...stroke, cycles: result.cycles.length };
  return loopCheck(
    isClose ? result.trace : benchStroke(moving.shock, again, { parts: manyParts, tolerance: 1e-5 }).trace,
    heat,
  );
}

/** The area inside a loop against the heat of its cycle [J]. */
export function loopCheck(trace: Pick<Trace, 'travels' | 'forces'>, heat: number): CheckBlock {
  const off = Math.abs(areaOf(trace) - heat) / Math.abs(heat);
  return {
    kind: 'check',
    claim: 'The area of the loop is the heat that holes, rim and seals make (energy is kept)',
    passed: off < allowed,
    detail: `off by ${(100 * off).toFixed(2)} %, from ${trace.forces.length - 1} points of the loop`,
    ifFailed: 'Take the picture as a sketch',
  };
}
