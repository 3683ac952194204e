import { InputError } from '../../base/input-error.js';
import { madeWith, record, requireShape } from '../../base/shape.js';
import type { Damper } from '../../damper/damper.js';
import { requireDamper } from '../../damper/damper.js';
import { damperForce } from '../../damper/damper-force.js';
import { bindDamper, damperModel } from '../../damper/damper-model.js';
import { forceOfOil } from '../../damper/oil-force.js';
import { isStraight, type StraightSizes, straightBuild, straightSizes } from '../../damper/straight-build.js';
import { forcesOfStraight } from '../../damper/straight-forces.js';
import { straightSpeeds } from '../../damper/straight-speeds.js';
import { oilDensity } from '../../fluid/oil/density.js';
import { fluidAt } from '../../fluid/oil/fluid-at.js';
import type { Oil } from '../../fluid/oil/oil.js';
import { viscosityAt } from '../../fluid/viscosity/viscosity-line.js';
import { bindGas, pressureOfGas } from '../../gas/gas-state.js';
import type { ShockLaw, WarmShock } from './shock-law.js';
import { exactInstruments, type MeasuredState, type ShockState } from './shock-state.js';

/** Temperature at which viscosity and density are stated [K]. */
const reference = 298.15;

function firstHole({ piston }: Damper): number {
  const diameter = piston.holes[0]?.diameter;
  if (diameter === undefined)
    throw new InputError({ field: 'piston.holes', value: 0, accepted: '1 or more groups' });
  return diameter;
}

/** The damper with its holes, gap and gas pressure as a state has them. */
function damperOf(damper: Damper, state: ShockState): Damper {
  const larger = state.holeDiameter - firstHole(damper);
  const holes = damper.piston.holes.map((group) => ({ ...group, diameter: group.diameter + larger }));
  return {
    ...damper,
    piston: { ...damper.piston, diameter: damper.bore - 2 * state.gap, holes },
    gas: { ...damper.gas, closing: { ...damper.gas.closing, pressure: state.gasPressure } },
  };
}

/**
 * The library's damper as a law that readings can be fitted with.
 *
 * Viscosity and density follow the line of the stated oil, moved to the state's values at 25 °C; all holes are larger or smaller by as much as those
 * of the first group. Friction is the moving one, and the gas keeps its temperature, as it does in the slow movement of a measurement.
 *
 * @param damper - the shock as drilled and measured
 * @param oil - its oil as labelled
 * @returns the law; where a state fits no damper (a hole below 0) the law throws what the damper model throws
 * @throws InputError for a piston without holes
 * @public
 */
export function damperLaw(damper: Damper, oil: Oil): ShockLaw {
  requireShape({ damper, oil }, { damper: record, oil: madeWith('typical') });
  requireDamper(damper);
  const viscosityAtReference = viscosityAt(oil.typical, reference);
  const densityAtReference = oilDensity(oil.base, reference, oil.densityAt15Celsius);
  firstHole(damper);
  // Checked once as stated; what a fit tries is near to it.
  const checked = damperModel(damper, fluidAt(oil, reference));
  const straight = isStraight(checked) ? straightSizes(checked) : undefined;
  const { shaftArea } = checked;
  const { layout, ambientPressure } = damper.gas;
  return (state) => {
    const shock = damperOf(damper, state);
    // A size that cannot be is refused by the full model, in its words.
    const sizes =
      straight !== undefined && state.holeDiameter > 0 && state.gap > 0 && shock.piston.diameter > 0
        ? { ...straight, holeDiameter: state.holeDiameter, pistonDiameter: shock.piston.diameter }
        : undefined;
    return {
      friction: state.friction,
      at: (temperature) => {
        const ratio = viscosityAt(oil.typical, temperature) / viscosityAtReference;
        const kinematicViscosity = state.kinematicViscosity * ratio ** state.temperatureSlope;
        const density =
          (state.density * oilDensity(oil.base, temperature, oil.densityAt15Celsius)) / densityAtReference;
        // Moved slowly, the gas keeps its temperature.
        const slow = bindGas(shock.gas, temperature, expansionOf(shock, density), 1);
        const gasForce = (position: number): number =>
          shaftArea * (pressureOfGas(slow, shaftArea * position) - ambientPressure);
        if (sizes !== undefined)
          return {
            kinematicViscosity,
            density,
            gasForce,
            ...straightForce(sizes, kinematicViscosity, density),
          };
        // Only a thinning oil has more to it than viscosity and density, and many draws ask for many temperatures.
        const thinning = oil.shearThinning === undefined ? {} : fluidAt(oil, temperature);
        const model = bindDamper(shock, { ...thinning, temperature, kinematicViscosity, density });
        return {
          kinematicViscosity,
          density,
          gasForce,
          // The gas in an emulsion adds a little that depends on the position.
          dampingForce: (speed, position) =>
            layout === 'emulsion'
              ? damperForce(model, { speed, position }).dampingForce
              : forceOfOil(model, speed),
        };
      },
    };
  };
}

/** Force and speed of straight holes, without binding a model for each of many states. */
function straightForce(
  sizes: StraightSizes,
  kinematicViscosity: number,
  density: number,
): Pick<WarmShock, 'dampingForce' | 'speedsAt'> {
  const build = straightBuild(sizes, kinematicViscosity, density);
  return {
    dampingForce: (speed) => {
      const force = new Float64Array(1);
      forcesOfStraight(build, Float64Array.of(speed), force);
      return force[0]!;
    },
    speedsAt: (forces) => {
      const speeds = new Float64Array(forces.length);
      straightSpeeds(build, forces, speeds);
      return speeds;
    },
  };
}

/** Oil volume over that at closing. */
function expansionOf({ gas }: Damper, density: number): number {
  return gas.closing.oilDensity === undefined ? 1 : gas.closing.oilDensity / density;
}

/**
 * The state of a damper as stated, to begin a fit at.
 *
 * @param damper - the shock as drilled and measured
 * @param oil - its oil as labelled
 * @throws InputError for a piston without holes
 * @public
 */
export function statedState(damper: Damper, oil: Oil): MeasuredState {
  requireShape({ damper, oil }, { damper: record, oil: madeWith('typical') });
  requireDamper(damper);
  return {
    kinematicViscosity: viscosityAt(oil.typical, reference),
    temperatureSlope: 1,
    density: oilDensity(oil.base, reference, oil.densityAt15Celsius),
    holeDiameter: firstHole(damper),
    gap: (damper.bore - damper.piston.diameter) / 2,
    friction: damper.seal.kineticForce,
    gasPressure: damper.gas.closing.pressure,
    ...exactInstruments,
  };
}
