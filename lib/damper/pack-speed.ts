import { requireWord } from '../base/checks.js';
import { bracketedRoot } from '../numeric/root-finding.js';
import { requireModel } from './damper.js';
import type { DamperModel } from './damper-model.js';

/** Fastest shaft speed searched [m/s]; far above any shock. */
const fastest = 1000;

/**
 * Shaft speed at which a piston "packs" [m/s]: where the inertial part of the pressure drop equals the viscous part, so that the damping
 * coefficient has doubled. Below it damping follows the oil, above it the holes. The measure is our own definition of the trade's word.
 *
 * @param model - from {@link damperModel}
 * @param direction - in which the shaft moves; compression where left out. Tapered holes and valves pack at another speed the other way
 * @returns the speed, or `undefined` where it lies above 1000 m/s or the piston has no holes
 * @example
 * ```ts
 * // model: of the example of damperModel
 * packSpeed(model); // undefined: a rim alone is viscous at any speed
 * ```
 * @public
 */
export function packSpeed(
  model: DamperModel,
  direction: 'compression' | 'rebound' = 'compression',
): number | undefined {
  requireModel(model);
  requireWord(direction, ['compression', 'rebound'], 'direction');
  const { pistonFlow, dampingArea } = model;
  if (pistonFlow.paths.length === 0) return undefined;
  const sign = direction === 'compression' ? 1 : -1;
  const excess = (logSpeed: number): number => {
    const flow = sign * dampingArea * Math.exp(logSpeed);
    const viscous = flow / pistonFlow.creepingConductance;
    return pistonFlow.pressureDrop(flow).pressureDrop / viscous - 2;
  };
  const high = Math.log(fastest);
  if (excess(high) < 0) return undefined;
  return Math.exp(bracketedRoot(excess, Math.log(1e-9), high, 'pack speed').root);
}
