import type { DamperModel } from '../../damper/damper-model.js';
import { gasInFluid } from '../../damper/damper-model.js';
import { straightSizes } from '../../damper/straight-build.js';
import { straightForces } from '../../damper/straight-forces.js';
import { oilDensity } from '../../fluid/oil/density.js';
import { viscosityAt } from '../../fluid/viscosity/viscosity-line.js';
import { pressureOfGas } from '../../gas/gas-state.js';
import type { Offsets } from './offsets.js';
import { deviatedGas, type TolerancedBuild } from './toleranced-build.js';

/**
 * Forces of many builds whose sizes are slightly off those of one that was checked, all of them straight (see `isStraight`): binding each would take most
 * of the time where it is used for a few speeds only. test/laws/straight-forces.test.ts holds it against the full model.
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
  const allSpeeds = Float64Array.from(speeds);
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

    const gas = gasInFluid(
      { gas: deviatedGas(damper.gas, off.gasVolume) },
      { temperature: oilTemperature, density },
    );
    const gasForce = shaftArea * (pressureOfGas(gas, shaftArea * position) - damper.gas.ambientPressure);
    straightForces(sizes, kinematicViscosity, density, allSpeeds, result);
    for (let place = 0; place < speeds.length; place++) result[place] = (result[place] ?? 0) + gasForce;
    return true;
  };
}
