import type { Damper } from '../../damper/damper.js';
import { bindDamper, type DamperModel, damperModel } from '../../damper/damper-model.js';
import { isStraight, straightHole, straightSizes } from '../../damper/straight-build.js';
import { straightForces } from '../../damper/straight-forces.js';
import type { FluidState } from '../../fluid/oil/fluid-state.js';
import { logMismatch, logRatio, type WantedDamping } from './damping-mismatch.js';

/** Root mean square of the logarithm of force to wanted force, at a kinematic viscosity [m²/s] and a density [kg/m³]. */
export type BoundMismatch = (kinematicViscosity: number, density: number) => number;

/**
 * The mismatch of `logMismatch` for many oils that do not thin in one damper: the damper is checked once, and one size of straight
 * sharp holes is computed in plain numbers.
 *
 * @param damper - sizes above 0 m that fit into each other, gas and seal in their ranges
 * @param wanted - a force at each of the weighted speeds, which `requireWantedDamping` accepts
 * @param example - any of the oils, for the checks
 * @throws InputError for a damper or an oil outside its range
 */
export function boundMismatch(damper: Damper, wanted: WantedDamping, example: FluidState): BoundMismatch {
  const checked = damperModel(damper, example);
  if (isStraight(checked)) return straightMismatch(checked, wanted);
  return (kinematicViscosity, density) =>
    logMismatch(bindDamper(damper, { kinematicViscosity, density }), wanted).rootMeanSquare;
}

function straightMismatch(checked: DamperModel, { weights, forces }: WantedDamping): BoundMismatch {
  const sizes = straightSizes(checked);
  const hole = straightHole(sizes);
  const speeds = Float64Array.from(weights, ({ speed }) => speed);
  const made = new Float64Array(weights.length);
  const total = weights.reduce((sum, { weight }) => sum + weight, 0);
  return (kinematicViscosity, density) => {
    straightForces(sizes, kinematicViscosity, density, speeds, made, hole);
    let squares = 0;
    let index = 0;
    for (const { weight } of weights) {
      const off = weight === 0 ? 0 : logRatio(made[index] ?? 0, forces[index] ?? Number.NaN);
      squares += weight * off * off;
      index++;
    }
    return Math.sqrt(squares / total);
  };
}
