import { heatToAir } from '../../lib/motion/heat/cylinder-cooling.js';
import type { Block } from '../../lib/page/blocks/block.js';
import type { Asked, Warmed } from './warmed.js';

/** Heat of the run by sums over its points: what strokes made is what warmed the shock and what the air took. */
export function heatCheck({ result, body, wind, runEnd }: Warmed, { air }: Asked): Block {
  const { times, temperatures, powers } = result;
  let made = 0;
  let taken = 0;
  const toAir = (index: number) => heatToAir(body.body, temperatures[index] ?? air, air, wind);
  for (let i = 1; i <= runEnd; i++) {
    const step = (times[i] ?? 0) - (times[i - 1] ?? 0);
    // The power at a place where two parts meet is that of the part before.
    made += (step * ((powers[i] ?? 0) + (powers[i - 1] ?? 0))) / 2;
    taken += (step * (toAir(i) + toAir(i - 1))) / 2;
  }
  const stored = body.heatCapacity * ((temperatures[runEnd] ?? air) - air);
  const off = made === 0 ? Math.abs(stored + taken) : Math.abs(made - taken - stored) / made;
  return {
    kind: 'check',
    claim: 'The heat that the strokes made is what warmed the shock and what the air took (energy is kept)',
    passed: off < 0.01,
    detail: `off by ${(100 * off).toFixed(2)} %, summed over ${runEnd} points of the run`,
    ifFailed: 'Take the order of the curves, not the temperatures, and measure a shock after a run',
  };
}
