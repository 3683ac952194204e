import { requireNotNegative, requirePositive, requireRecord } from '../../base/checks.js';
import { molarGasConstant } from '../../base/constants.js';
import { noWarnings, type Warning } from '../../base/warning.js';

/**
 * A silicone at one temperature, as the estimate of its relaxation time needs it.
 *
 * @public
 */
export interface PolymerState {
  /** Kinematic viscosity at rest [m²/s], above 0. */
  readonly kinematicViscosity: number;
  /** Molar mass [kg/mol], above 0. */
  readonly molarMass: number;
  /** Temperature [K], above 0. */
  readonly temperature: number;
}

/** Shear rate times relaxation time from which a polymer oil may thin; about 10 % by Cross' formula with exponent 0.7. */
export const shearThinningLimit = 0.05;

/**
 * Longest relaxation time of a polymer by Rouse's model [s], `λ = 6 η M / (π² ρ R T)`, where `η = ρ ν` cancels the density.
 *
 * An estimate for warnings only: no measured thinning curve of silicones of 100 to 12500 mm²/s was found to back it.
 *
 * @param polymer - viscosity, molar mass and temperature
 * @throws InputError unless all are above 0
 * @see Rouse, J. Chem. Phys. 21 (1953) 1272; from memory
 * @public
 */
export function rouseRelaxationTime(polymer: PolymerState): number {
  requireRecord(polymer, 'polymer');
  const { kinematicViscosity, molarMass, temperature } = polymer;
  requirePositive(kinematicViscosity, 'kinematicViscosity', 'm²/s');
  requirePositive(molarMass, 'molarMass', 'kg/mol');
  requirePositive(temperature, 'temperature', 'K');
  return (6 * kinematicViscosity * molarMass) / (Math.PI ** 2 * molarGasConstant * temperature);
}

/**
 * The warning that an oil is sheared fast enough to thin, or none.
 *
 * @param relaxationTime - longest relaxation time [s], 0 or more
 * @param shearRate - shear rate at the wall [1/s], 0 or more
 * @throws InputError outside these
 * @see The limit of 0.05 is our own choice: 10 % by Cross, J. Colloid Sci. 20 (1965) 417, with exponent 0.7
 * @public
 */
export function shearThinningWarnings(relaxationTime: number, shearRate: number): readonly Warning[] {
  requireNotNegative(relaxationTime, 'relaxationTime', 's');
  requireNotNegative(shearRate, 'shearRate', '1/s');
  if (!(relaxationTime * shearRate > shearThinningLimit)) return noWarnings;
  return [
    {
      code: 'shear-thinning',
      message: 'At this shear rate the oil is likely to thin: its true viscosity may be lower',
      value: shearRate,
      limit: shearThinningLimit / relaxationTime,
    },
  ];
}
