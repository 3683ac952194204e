import type { DamperModel } from '../../damper/damper-model.js';
import { compressedGasPressure } from '../../damper/gas.js';
import { pressureDropLimitAt } from '../../damper/pressure-drop-limit.js';
import { oilDensity } from '../../fluid/oil/density.js';
import { viscosityAt } from '../../fluid/viscosity/viscosity-line.js';
import type { Offsets } from './offsets.js';
import { straightForces, straightSizes } from './straight-hole-arithmetic.js';
import type { TolerancedBuild } from './tolerances.js';

/**
 * Forces of many builds whose sizes are slightly off those of one that was checked: one size of straight sharp holes, no valve, an oil
 * that does not thin. It is the arithmetic of `damperModel` and `oilForce` without their objects, which would take most of the time where
 * each build is used for a few speeds only; test/laws/decisions-light-model.test.ts holds the two against each other.
 *
 * @returns a function that writes the force of oil and gas at each speed, or tells that the sizes are impossible
 */
export function straightHoleForces(
  { damper, oil, temperature, position, speeds }: TolerancedBuild,
  checked: DamperModel,
): (off: Offsets, result: Float64Array) => boolean {
  const { shaftArea } = checked;
  const stated = straightSizes(checked);
  const sizes = { ...stated };
  const gas = { ...damper.gas };
  const sizesOfSpeeds = Float64Array.from(speeds, Math.abs);
  const largestDrops = new Float64Array(speeds.length);
  return (off, result) => {
    sizes.holeDiameter = stated.holeDiameter + off.holeDiameter;
    sizes.thickness = stated.thickness + off.thickness;
    sizes.bore = stated.bore + off.bore;
    sizes.pistonDiameter = stated.pistonDiameter + off.bore - 2 * off.gap;
    const oilTemperature = temperature + off.temperature;
    const kinematicViscosity = viscosityAt(oil.typical, oilTemperature) * (1 + off.viscosity);
    const density = oilDensity(oil.base, oilTemperature, oil.densityAt15Celsius);
    const possible =
      sizes.holeDiameter > 0 &&
      sizes.thickness > 0 &&
      sizes.pistonDiameter > 0 &&
      sizes.bore > sizes.pistonDiameter &&
      kinematicViscosity > 0;
    if (!possible) return false;

    gas.volume = damper.gas.volume + off.gasVolume;
    const inside = compressedGasPressure(gas, shaftArea * position);
    const gasForce = shaftArea * (inside - gas.ambientPressure);
    for (let place = 0; place < speeds.length; place++) {
      largestDrops[place] = pressureDropLimitAt(checked, inside, speeds[place] ?? 0);
    }
    straightForces(sizes, kinematicViscosity, density, sizesOfSpeeds, largestDrops, result);
    for (let place = 0; place < speeds.length; place++) {
      const force = result[place] ?? 0;
      result[place] = ((speeds[place] ?? 0) < 0 ? -force : force) + gasForce;
    }
    return true;
  };
}
