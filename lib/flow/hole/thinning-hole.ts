import type { FluidState } from '../../fluid/oil/fluid-state.js';
import { exponentAt, ratioOfViscosity, type ShearThinning } from '../../fluid/shear/thinning-viscosity.js';
import { rootAbove } from '../../numeric/root-finding.js';
import type { HoleResistance } from './hole-law.js';

/**
 * Reynolds number (with the viscosity at rest) at which the profile no longer has time to develop, so that the wall is sheared faster than
 * in a long tube. Fitted to our own numerical reference for a Carreau oil (docs/shear-thinning.md).
 */
const developingReynoldsNumber = 40;

const fixedPointSteps = 60;

/**
 * Shear rate at the wall of a tube [1/s], `γ̇ = (8V/d) (3n + 1)/(4n)` with `n` the local exponent there.
 *
 * @see Rabinowitsch, Z. phys. Chem. A 145 (1929) 1; Mooney, J. Rheol. 2 (1931) 210 (from memory)
 */
export function tubeWallShearRate(thinning: ShearThinning, newtonianRate: number): number {
  let rate = newtonianRate;
  for (let step = 0; step < fixedPointSteps; step++) {
    const n = exponentAt(thinning, rate);
    const next = (newtonianRate * (3 * n + 1)) / (4 * n);
    if (Math.abs(next - rate) <= 1e-13 * rate) return next;
    rate = next;
  }
  return rate;
}

/** Viscosity of the Newtonian oil with the same wall stress at the same flow, over the viscosity at rest. */
export function apparentViscosityRatio(thinning: ShearThinning, newtonianRate: number): number {
  if (newtonianRate === 0) return 1;
  const rate = tubeWallShearRate(thinning, newtonianRate);
  return (ratioOfViscosity(thinning, rate) * rate) / newtonianRate;
}

/**
 * Apparent viscosity of an oil that thins in a hole, as the pressure drop and the jets take it [m²/s].
 *
 * @param diameter - narrowest diameter [m]
 * @param kinematicViscosity - at rest [m²/s]
 * @param thinning - how the oil thins
 * @param size - mean speed in the hole [m/s], 0 or more
 */
export function viscosityInHole(
  diameter: number,
  kinematicViscosity: number,
  thinning: ShearThinning,
  size: number,
): number {
  const developing = Math.sqrt(1 + (size * diameter) / kinematicViscosity / developingReynoldsNumber);
  return apparentViscosityRatio(thinning, (8 * size * developing) / diameter) * kinematicViscosity;
}

/**
 * A hole with an oil that thins: the Newtonian law with the apparent viscosity of a tube. Exact for a power-law oil in a long
 * tube; the ends of the hole are taken to thin alike.
 *
 * @param bind - the Newtonian law of the hole
 * @param diameter - narrowest diameter [m]
 * @param fluid - with the viscosity at rest
 * @param thinning - how the oil thins
 */
export function thinningResistance(
  bind: (fluid: FluidState) => HoleResistance,
  diameter: number,
  fluid: FluidState,
  thinning: ShearThinning,
): HoleResistance {
  const { kinematicViscosity, density } = fluid;
  const atRest = bind({ density, kinematicViscosity });
  const pressureDrop = (speed: number): number => {
    if (speed === 0) return 0;
    const viscosity = viscosityInHole(diameter, kinematicViscosity, thinning, Math.abs(speed));
    return bind({ density, kinematicViscosity: viscosity }).pressureDrop(speed);
  };
  const slope = (speed: number): number => {
    const step = Math.abs(speed) * 1e-5;
    return speed === 0
      ? atRest.creepingSlope
      : (pressureDrop(speed + step) - pressureDrop(speed - step)) / (2 * step);
  };
  const meanSpeed = (drop: number): number => {
    if (drop === 0) return 0;
    const size = Math.abs(drop);
    const excess = (speed: number): number => pressureDrop(speed) - size;
    // The oil at rest is the thickest, so its speed is low, but where it is far beyond the range of its law.
    const start = 0.9 * atRest.meanSpeed(size);
    return Math.sign(drop) * rootAbove(excess, start, Number.MAX_VALUE, 'speed of a thinning oil').root;
  };
  return { pressureDrop, slope, meanSpeed, creepingSlope: atRest.creepingSlope };
}
