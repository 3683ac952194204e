import { requirePositive, requireWithin } from '../../base/checks.js';
import type { FluidState } from '../../fluid/oil/fluid-state.js';
import { bracketedRoot } from '../../numeric/root-finding.js';
import type { Hole } from '../geometry/hole.js';
import type { HoleLaw, HoleResistance } from './hole-law.js';
import { holeRangeWarnings } from './range-warnings.js';

/** Twice the stated range; far beyond it the ultimate coefficient would turn negative. */
const largestLengthRatio = 20;

function ultimateDischargeCoefficient(lengthRatio: number): number {
  return 0.827 - 0.0085 * lengthRatio;
}

/**
 * Discharge coefficient of a long orifice,
 * `1/Cd = 1/Cdu + (20/Re_h)(1 + 2.25 L/d) − 0.005 (L/d) / (1 + 7.5 (log10(0.00015 Re_h))²)`, `Cdu = 0.827 − 0.0085 L/d`.
 *
 * `Re_h` is formed with the ideal speed `sqrt(2 Δp/ρ)`, not with the mean speed; with the mean speed the law would leave a
 * pressure drop at no flow.
 *
 * @param idealReynoldsNumber - `d sqrt(2 Δp/ρ) / ν`, stated for 10 to 20 000
 * @param lengthRatio - `L/d`, stated for 2 to 10
 * @see Lichtarowicz, Duggins & Markland, J. Mech. Eng. Sci. 7 (1965) 210
 * @example
 * ```ts
 * dischargeCoefficientLichtarowicz(1000, 4); // 0.6860: the printed formula, by hand
 * ```
 * @public
 */
export function dischargeCoefficientLichtarowicz(idealReynoldsNumber: number, lengthRatio: number): number {
  requirePositive(idealReynoldsNumber, 'idealReynoldsNumber', '');
  requirePositive(lengthRatio, 'lengthRatio', '');
  return dischargeCoefficientOf(idealReynoldsNumber, lengthRatio);
}

/** {@link dischargeCoefficientLichtarowicz} of what was checked before. */
export function dischargeCoefficientOf(idealReynoldsNumber: number, lengthRatio: number): number {
  const ultimate = ultimateDischargeCoefficient(lengthRatio);
  const decades = Math.log10(0.00015 * idealReynoldsNumber);
  const inverse =
    1 / ultimate +
    (20 / idealReynoldsNumber) * (1 + 2.25 * lengthRatio) -
    (0.005 * lengthRatio) / (1 + 7.5 * decades * decades);
  return 1 / inverse;
}

function resistance(hole: Hole, fluid: FluidState): HoleResistance {
  const lengthRatio = hole.length / hole.diameter;
  requireWithin(lengthRatio, 0, largestLengthRatio, 'hole length/diameter in the Lichtarowicz law', '');
  const ultimate = ultimateDischargeCoefficient(lengthRatio);
  const dynamicViscosity = fluid.density * fluid.kinematicViscosity;
  // As Re_h → 0, V = Cd sqrt(2 Δp/ρ) tends to Δp d / (μ (10 + 22.5 L/d)).
  const creepingSlope = (dynamicViscosity / hole.diameter) * (10 + 22.5 * lengthRatio);
  const meanSpeed = (pressureDrop: number): number => {
    if (pressureDrop === 0) return 0;
    const idealSpeed = Math.sqrt((2 * Math.abs(pressureDrop)) / fluid.density);
    const idealReynoldsNumber = (idealSpeed * hole.diameter) / fluid.kinematicViscosity;
    const speed = dischargeCoefficientOf(idealReynoldsNumber, lengthRatio) * idealSpeed;
    return pressureDrop < 0 ? -speed : speed;
  };
  const pressureDrop = (speed: number): number => {
    if (speed === 0) return 0;
    const target = Math.abs(speed);
    // From u² = V u/Cdu + 2 V creepingSlope/ρ for the ideal speed u, less the small third term of the law.
    const low = 0.5 * creepingSlope * target;
    const high = 2 * creepingSlope * target + (fluid.density * target * target) / ultimate ** 2;
    const { root } = bracketedRoot(
      (drop) => meanSpeed(drop) - target,
      low,
      high,
      'Lichtarowicz pressure drop',
    );
    return speed < 0 ? -root : root;
  };
  const slope = (speed: number): number => {
    if (speed === 0) return creepingSlope;
    const step = Math.abs(speed) * 1e-4;
    return (pressureDrop(speed + step) - pressureDrop(speed - step)) / (2 * step);
  };
  return { pressureDrop, slope, meanSpeed, creepingSlope };
}

const range = {
  law: 'Lichtarowicz',
  lengthRatio: { low: 2, high: 10 },
  // Re_h 10 is Re 2.5 at L/d 2.
  reynoldsNumber: { low: 2.5, high: 16_000 },
};

/**
 * The long-orifice law of Lichtarowicz, Duggins & Markland (1965), as an alternative to compare with. Its creeping limit is 10
 * to 31 % too low, since no measurement it rests on goes below Re_h 10. Range: L/d 2 to 10, Re_h 10 to 20 000.
 *
 * @public
 */
export const lichtarowiczLaw: HoleLaw = {
  name: 'Lichtarowicz',
  resistance,
  rangeWarnings: (lengthRatio, reynoldsNumber) => holeRangeWarnings(range, lengthRatio, reynoldsNumber),
};
