import { refuse, requireNumbers } from '../base/checks.js';
import { pressureOfGas } from '../gas/gas-state.js';
import { requireModel, requirePosition } from './damper.js';
import { wholeForce } from './damper-force.js';
import type { DamperModel } from './damper-model.js';
import { frictionAt } from './seal-friction.js';
import { isStraight, straightBuildOf } from './straight-build.js';
import { forcesOfStraight } from './straight-forces.js';

/**
 * Forces of a damper at many speeds and one position [N]: the `force` of `damperForce` alone, several times as fast for pistons with one size of straight
 * holes.
 *
 * @param model - from `damperModel`
 * @param speeds - shaft speeds [m/s], finite, compression positive
 * @param position - how far the shaft is pushed in [m], 0 to the stroke
 * @param into - where to write them; a new array where left out
 * @throws InputError for a speed that is not finite, a position outside the stroke, a gas without room, or an array of another length
 * @example
 * ```ts
 * // model: of the example of damperModel
 * damperForces(model, Float64Array.of(0, 0.02), 0.014)[1]; // 3.747: 3.635 N of the oil and 0.1125 N of the gas, by hand
 * ```
 * @public
 */
export function damperForces(
  model: DamperModel,
  speeds: Float64Array,
  position: number,
  into?: Float64Array,
): Float64Array {
  requireModel(model);
  requireNumbers(speeds, 'speeds');
  if (into !== undefined) requireNumbers(into, 'into');
  const forces = into ?? new Float64Array(speeds.length);
  const { damper, gas, shaftArea } = model;
  requirePosition(position, damper.stroke);
  if (forces.length !== speeds.length) refuse(forces.length, 'into.length', '', `${speeds.length}`);
  const pressure = pressureOfGas(gas, shaftArea * position);
  for (let place = 0; place < speeds.length; place++) {
    if (!Number.isFinite(speeds[place])) {
      refuse(speeds[place], `speeds[${place}]`, 'm/s', 'a finite number');
    }
  }
  const build = isStraight(model) ? straightBuildOf(model) : undefined;
  if (build === undefined) {
    for (let place = 0; place < speeds.length; place++)
      forces[place] = wholeForce(model, speeds[place] as number, pressure).force;
    return forces;
  }
  forcesOfStraight(build, speeds, forces);
  const gasForce = shaftArea * (pressure - damper.gas.ambientPressure);
  for (let place = 0; place < speeds.length; place++) {
    forces[place] = (forces[place] as number) + gasForce + frictionAt(damper.seal, speeds[place] as number);
  }
  return forces;
}
