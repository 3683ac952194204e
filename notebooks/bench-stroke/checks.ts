import type { Block } from '../../lib/page/blocks/block.js';
import { heatOf, type Stroked } from './stroked.js';

/** Energy, two ways: the area of the loop as it is drawn, and what the parts turn into heat, from flows and pressures. */
export function energyCheck({ cycle, result }: Stroked): Block {
  const { travels, forces } = result.trace;
  let area = 0;
  for (let i = 1; i < travels.length; i++)
    area += (((forces[i] ?? 0) + (forces[i - 1] ?? 0)) / 2) * ((travels[i] ?? 0) - (travels[i - 1] ?? 0));
  const heat = heatOf(cycle);
  const off = Math.abs(area - heat) / Math.abs(heat);
  return {
    kind: 'check',
    claim: 'The area of the loop is the heat that holes, rim and seals make (energy is kept)',
    passed: off < 0.01,
    detail: `off by ${(100 * off).toFixed(2)} %, from ${forces.length - 1} points of the loop`,
    ifFailed: 'Take the picture as a sketch',
  };
}
