import type { Damper } from '../damper/damper.js';
import { type DamperModel, damperModel } from '../damper/damper-model.js';
import { compressedGasPressure } from '../damper/gas.js';
import { pressureDropLimitAt } from '../damper/pressure-drop-limit.js';
import type { FluidState } from '../fluid/fluid-state.js';
import { logMismatch, type WantedDamping } from './damping-mismatch.js';
import { isLight } from './light-model.js';
import { bindStraight, straightForce, straightSizes, unbound } from './straight-hole-build.js';

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
  if (isLight(damper, example) && damper.piston.holes[0]?.shape === undefined)
    return straightMismatch(checked, wanted);
  return (kinematicViscosity, density) =>
    logMismatch(damperModel(damper, { kinematicViscosity, density }), wanted).rootMeanSquare;
}

function straightMismatch(checked: DamperModel, { weights, forces }: WantedDamping): BoundMismatch {
  const { damper, shaftArea } = checked;
  const sizes = straightSizes(checked);
  const build = { ...unbound };
  const inside = compressedGasPressure(damper.gas, (shaftArea * damper.stroke) / 2);
  const each = weights.map(({ speed, weight }, index) => ({
    speed: Math.abs(speed),
    weight,
    largestDrop: pressureDropLimitAt(checked, inside, speed),
    force: Math.abs(forces[index] ?? Number.NaN),
  }));
  const total = each.reduce((sum, { weight }) => sum + weight, 0);
  return (kinematicViscosity, density) => {
    bindStraight(sizes, kinematicViscosity, density, build);
    let squares = 0;
    for (const { speed, weight, largestDrop, force } of each) {
      const logRatio = Math.log(straightForce(build, speed, largestDrop) / force);
      squares += weight * logRatio * logRatio;
    }
    return Math.sqrt(squares / total);
  };
}
