import { requireRecord, requireWithin, requireWord } from '../../base/checks.js';
import { zeroCelsius } from '../../base/constants.js';
import type { Warning } from '../../base/warning.js';
import { rouseRelaxationTime } from '../shear/shear-thinning.js';
import {
  lowestBarryMolarMass,
  siliconeMolarMass,
  siliconeViscosityOfMolarMass,
} from '../shear/silicone-molar-mass.js';
import type { ShearThinning } from '../shear/thinning-viscosity.js';
import { type ViscosityLine, viscosityAt } from '../viscosity/viscosity-line.js';
import { oilDensity } from './density.js';
import type { FluidState } from './fluid-state.js';
import type { Oil } from './oil.js';
import type { MeasuredThinning } from './oil-definition.js';

/**
 * An oil at one temperature, with what is doubtful about it.
 *
 * @public
 */
export interface OilState extends FluidState {
  /** Temperature [K]. */
  readonly temperature: number;
  readonly warnings: readonly Warning[];
}

/** Thinner silicones [m²/s at 25 °C] get no relaxation time: Barry's relation ends, and none is needed. */
const thinnestPolymer = siliconeViscosityOfMolarMass(lowestBarryMolarMass);

/**
 * State of an oil at a temperature: viscosity, density, relaxation time of a silicone, and warnings.
 *
 * @param oil - the oil, see {@link createOil}
 * @param temperature - temperature [K], 200 to 600
 * @param bound - which end of an interval to take
 * @throws InputError outside these, and where the viscosity line has no value
 * @see ASTM D341 or Barry 1946 for the viscosity, {@link oilDensity} for the density
 * @example
 * ```ts
 * const oil = createOil({ base: 'silicone', viscosity: { kind: 'silicone', point: { temperature: 298.15, kinematicViscosity: 350e-6 } } });
 * fluidAt(oil, 323.15).kinematicViscosity; // 2.2e-4: 10^(763.1/T − 2.559) times that at 25 °C, Barry 1946 (from memory)
 * ```
 * @public
 */
export function fluidAt(
  oil: Oil,
  temperature: number,
  bound: 'low' | 'typical' | 'high' = 'typical',
): OilState {
  requireRecord(oil, 'oil');
  requireWord(bound, ['low', 'typical', 'high'], 'bound');
  requireWithin(temperature, 200, 600, 'temperature', 'K');
  const line = oil[bound];
  const kinematicViscosity = viscosityAt(line, temperature);
  const density = oilDensity(oil.base, temperature, oil.densityAt15Celsius);
  const warnings = stateWarnings(oil, temperature);
  const relaxationTime =
    oil.base === 'silicone' ? siliconeRelaxationTime(line, kinematicViscosity, temperature) : undefined;
  const thinning = oil.shearThinning;
  const state = {
    temperature,
    kinematicViscosity,
    density,
    warnings,
    ...(thinning === undefined ? {} : { shearThinning: thinningAt(thinning, line, temperature) }),
  };
  return relaxationTime === undefined ? state : { ...state, relaxationTime };
}

/** Thinning at another temperature: its time goes with viscosity over temperature, as a polymer's relaxation does (Rouse). */
function thinningAt(measured: MeasuredThinning, line: ViscosityLine, temperature: number): ShearThinning {
  const ratio =
    (viscosityAt(line, temperature) * measured.temperature) /
    (viscosityAt(line, measured.temperature) * temperature);
  return { ...measured.thinning, time: ratio * measured.thinning.time };
}

function siliconeRelaxationTime(
  line: ViscosityLine,
  kinematicViscosity: number,
  temperature: number,
): number | undefined {
  const at25Celsius = line.kind === 'silicone' ? line.viscosityAt25Celsius : viscosityAt(line, 298.15);
  if (at25Celsius < thinnestPolymer) return undefined;
  const molarMass = siliconeMolarMass(at25Celsius);
  return rouseRelaxationTime({ kinematicViscosity, molarMass, temperature });
}

function stateWarnings(oil: Oil, temperature: number): readonly Warning[] {
  const { lowestTemperature, highestTemperature } = oil;
  if (temperature >= lowestTemperature && temperature <= highestTemperature) return oil.warnings;
  const [at, low, high] = [temperature, lowestTemperature, highestTemperature].map((value) =>
    Math.round(value - zeroCelsius),
  );
  return [
    ...oil.warnings,
    {
      code: 'viscosity-extrapolated',
      message: `The viscosity at ${at} °C is extrapolated: the oil is known from ${low} to ${high} °C`,
      value: temperature,
      limit: temperature < lowestTemperature ? lowestTemperature : highestTemperature,
    },
  ];
}
