import type { FluidState } from '../../fluid/oil/fluid-state.js';
import { type ShearThinning, writeThinned } from '../../fluid/shear/thinning-viscosity.js';
import { powerRoot } from '../../numeric/power-root.js';
import { evaluateHole, type HoleResistance } from './hole-law.js';

/**
 * Reynolds number (with the viscosity at rest) at which the profile no longer has time to develop, so that the wall is sheared faster than
 * in a long tube. Fitted to our own numerical reference for a Carreau oil (docs/shear-thinning.md).
 */
const developingReynoldsNumber = 40;

const stepLimit = 60;

/** Change of a logarithm after which one more step of Newton's would change nothing in double precision. */
const settled = 1e-8;

/** Filled and read within one call and never handed out. */
const thinned = new Float64Array(3);

/** Writes viscosity ratio, local exponent and its slope at the wall into {@link thinned}, and returns the shear rate there. */
function thinnedAtWall(thinning: ShearThinning, newtonianRate: number): number {
  let rate = newtonianRate;
  for (let step = 0; step < stepLimit; step++) {
    writeThinned(thinning, rate, thinned);
    const [ratio = 1, n = 1, slope = 0] = thinned;
    const excess = Math.log((rate * 4 * n) / (newtonianRate * (3 * n + 1)));
    const change = -excess / (1 + slope / (n * (3 * n + 1)));
    rate *= Math.exp(change);
    if (Math.abs(change) > settled) continue;
    // Along their slopes over the last step, which is too short for more.
    thinned[0] = ratio * (1 + (n - 1) * change);
    thinned[1] = n + slope * change;
    break;
  }
  return rate;
}

/**
 * Shear rate at the wall of a tube [1/s], `γ̇ = (8V/d) (3n + 1)/(4n)` with `n` the local exponent there.
 *
 * @see Rabinowitsch, Z. phys. Chem. A 145 (1929) 1; Mooney, J. Rheol. 2 (1931) 210 (from memory)
 */
export function tubeWallShearRate(thinning: ShearThinning, newtonianRate: number): number {
  return thinnedAtWall(thinning, newtonianRate);
}

/** Viscosity of the Newtonian oil with the same wall stress at the same flow, over the viscosity at rest. */
export function apparentViscosityRatio(thinning: ShearThinning, newtonianRate: number): number {
  if (newtonianRate === 0) return 1;
  const rate = thinnedAtWall(thinning, newtonianRate);
  return (thinned[0]! * rate) / newtonianRate;
}

/** How much faster than in a long tube the wall is sheared, since the profile has no time to develop. */
function developing(diameter: number, kinematicViscosity: number, size: number): number {
  return 1 + (size * diameter) / kinematicViscosity / developingReynoldsNumber;
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
  const faster = Math.sqrt(developing(diameter, kinematicViscosity, size));
  return apparentViscosityRatio(thinning, (8 * size * faster) / diameter) * kinematicViscosity;
}

/**
 * A hole with an oil that thins: the Newtonian law with the apparent viscosity of a tube. Exact for a power-law oil in a long
 * tube; the ends of the hole are taken to thin alike.
 *
 * The law is bound once, to the oil at rest: with a viscosity `r` times as high the pressure drop at a speed `V` is `r²` times that at `V/r`, since a drop is `ρν²/d²` times a
 * function of the Reynolds number alone. So is its slope by viscosity, `dΔp/d ln ν = 2Δp − V dΔp/dV`.
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
  const { creepingSlope } = atRest;
  const evaluate = (speed: number, out: Float64Array): void => {
    if (speed === 0) {
      out[0] = 0;
      out[1] = creepingSlope;
      return;
    }
    const size = Math.abs(speed);
    const faster = developing(diameter, kinematicViscosity, size);
    const newtonianRate = (8 * size * Math.sqrt(faster)) / diameter;
    const rate = thinnedAtWall(thinning, newtonianRate);
    const [atWall = 1, n = 1, slope = 0] = thinned;
    const ratio = (atWall * rate) / newtonianRate;
    evaluateHole(atRest, speed / ratio, out);
    const drop = ratio * ratio * out[0]!;
    // Powers: of the wall's stress by the tube's rate, less that of the rate itself; and of the tube's rate by the speed.
    const byRate = n / (1 + slope / (n * (3 * n + 1))) - 1;
    const bySpeed = 1 + (faster - 1) / (2 * faster);
    const plain = ratio * out[1]!;
    out[0] = drop;
    out[1] = plain + ((2 * drop) / speed - plain) * byRate * bySpeed;
  };
  const one = new Float64Array(2);
  const pressureDrop = (speed: number): number => {
    evaluate(speed, one);
    return one[0]!;
  };
  const slope = (speed: number): number => {
    evaluate(speed, one);
    return one[1]!;
  };
  const meanSpeed = (drop: number): number => {
    if (drop === 0) return 0;
    const sign = Math.sign(drop);
    const excess = (speed: number, out: Float64Array): void => {
      evaluate(sign * speed, out);
      out[1] = (out[1]! * speed) / (sign * out[0]!);
      out[0] = Math.log(out[0]! / drop);
    };
    return sign * powerRoot(excess, sign * atRest.meanSpeed(drop), 'speed of a thinning oil').root;
  };
  return { pressureDrop, slope, meanSpeed, evaluate, creepingSlope };
}
