import { requireWithin } from '../../base/checks.js';
import { standardAtmosphere } from '../../base/constants.js';

/**
 * Air at one temperature and the standard pressure.
 *
 * @public
 */
export interface Air {
  /** [m²/s] */
  readonly kinematicViscosity: number;
  /** [W/(m·K)] */
  readonly conductivity: number;
  readonly prandtlNumber: number;
}

const gasConstant = 287.05;
const specificHeat = 1006;

/**
 * Air between 200 and 500 K.
 *
 * @param temperature - [K]
 * @see U.S. Standard Atmosphere 1976, Eqs. (51) and (53), for viscosity and conductivity (from memory)
 * @public
 */
export function airAt(temperature: number): Air {
  requireWithin(temperature, 150, 2000, 'temperature', 'K');
  const viscosity = (1.458e-6 * temperature ** 1.5) / (temperature + 110.4);
  const conductivity = (2.64638e-3 * temperature ** 1.5) / (temperature + 245.4 * 10 ** (-12 / temperature));
  const density = standardAtmosphere / (gasConstant * temperature);
  return {
    kinematicViscosity: viscosity / density,
    conductivity,
    prandtlNumber: (viscosity * specificHeat) / conductivity,
  };
}
