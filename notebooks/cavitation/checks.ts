import type { DamperModel } from '../../lib/damper/damper-model.js';
import { forcesAlongTravel } from '../../lib/damper/force-after-travel.js';
import type { CheckBlock } from '../../lib/page/index.js';
import { formatQuantity } from '../../lib/units/index.js';
import { strokeOf } from '../base/after-onset.js';
import { shaftSpeed } from '../base/wording.js';
import { type Direction, onsetOf } from './cases.js';

const places = 400;
const allowed = 0.005;

/**
 * The cavity by another way: what the piston swept less what came through it, added up over many places of the stroke by the trapezium rule. The force is worked
 * out by an integrator with an error of its own.
 */
export function cavityCheck(model: DamperModel, direction: Direction, speed: number): CheckBlock {
  const sign = direction === 'compression' ? 1 : -1;
  // Below the onset there is no cavity to add up.
  const size = Math.max(speed, 1.5 * onsetOf(model, direction, 0).speed);
  const { position, rest } = strokeOf(model, sign * size);
  const travels = Array.from({ length: places + 1 }, (_, index) => Math.min((rest * index) / places, rest));
  const forces = forcesAlongTravel(model, { speed: sign * size, position }, travels);
  const flows = forces.map(({ pressureDrop }) => Math.abs(model.pistonFlow.flow(pressureDrop)));
  const passed = flows.slice(1).reduce((sum, flow, index) => sum + (flow + (flows[index] ?? 0)) / 2, 0);
  const swept = model.dampingArea * rest;
  const added = swept - (passed * rest) / places / size;
  const found = forces.at(-1)?.cavityVolume ?? 0;
  const good = Math.abs(added - found) < allowed * swept;
  const cubic = (volume: number) => formatQuantity(volume, 'volume', 'mm³', 3);
  return {
    kind: 'check',
    claim: `What the piston sweeps at ${shaftSpeed(size)}, less what comes through it, is the cavity`,
    passed: good,
    detail: `added up over ${places} places ${cubic(Math.max(added, 0))}, on the page ${cubic(found)}, of ${cubic(swept)} swept; ${100 * allowed} % of that allowed`,
    ifFailed:
      'Do not trust the forces after the onset of this page for this shock; where cavitation begins still stands',
  };
}
