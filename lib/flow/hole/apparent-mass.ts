import { requireKind, requirePositive } from '../../base/checks.js';
import { noWarnings, type Warning } from '../../base/warning.js';
import { type FluidState, requireFluidState } from '../../fluid/oil/fluid-state.js';
import { areaOfHole, type Hole, requireHole } from '../geometry/hole.js';
import { sharpCreepingNumber } from './sharp-hole.js';

/** A parabolic profile carries 4/3 of the inertia of a flat one (Poiseuille's, at low frequency). */
const tubeInertia = 4 / 3;

/** Length that stands for the oil set in motion before and behind a hole, in diameters: from our own oscillating solutions. */
const endsInertia = 1.03;

/** Length of a column of oil across the hole that is as hard to speed up as the oil in and about it [m], `4/3 L + 1.03 d`. */
export const apparentLength = ({ diameter, length }: Pick<Hole, 'diameter' | 'length'>): number =>
  tubeInertia * length + endsInertia * diameter;

/**
 * Apparent mass of the oil in and about one hole, `ρ A (4/3 L + 1.03 d)` [kg], as seen by the flow through it: a flow that grows
 * needs the pressure drop of the steady law plus `apparentMass / A² · dQ/dt`, `A` the area of the hole.
 *
 * Both parts hold for slow changes; {@link unsteadyFlowError} says how slow.
 *
 * @param hole - diameter and length above 0 m
 * @param fluid - density above 0 kg/m³, kinematic viscosity above 0 m²/s
 * @throws InputError for a size or a fluid property that is not above 0
 * @see own numerical reference, oscillating creeping flow at L/d 0.5, 1.5, 3 (docs/hole-law.md)
 * @example
 * ```ts
 * const oil = { density: 970, kinematicViscosity: 350e-6 };
 * const hole = { diameter: 0.0013, length: 0.0025 };
 * apparentMass(hole, oil); // 6.016e-6: ρ A (4/3 L + 1.03 d), by hand
 * ```
 * @public
 */
export function apparentMass(hole: Hole, fluid: FluidState): number {
  requireHole(hole);
  requireFluidState(fluid);
  return fluid.density * areaOfHole(hole) * apparentLength(hole);
}

/**
 * How far laws for steady flow are off where the flow swings, as parts of the pressure swing.
 *
 * @public
 */
export interface UnsteadyFlowError {
  /** `ω d²/ν`, a pure number: how far vorticity fails to spread over the hole within a swing. */
  readonly frequencyNumber: number;
  /** Error of the steady law alone, 0 to 1. */
  readonly steadyLaw: number;
  /** Error of the steady law with {@link apparentMass}, at most; 0 to 1. */
  readonly withApparentMass: number;
}

// Largest error of steady law plus apparent mass of the three lengths solved, by ω d²/ν; below the first it falls with the square.
const errorKnots = [
  [1, 0.0004],
  [3, 0.0035],
  [10, 0.0257],
  [30, 0.09],
  [100, 0.2036],
  [300, 0.3115],
  [1000, 0.4003],
] as const;

function errorWithMass(frequencyNumber: number): number {
  const [first, ...rest] = errorKnots;
  let [low, lowError]: readonly [number, number] = first;
  if (frequencyNumber <= low) return lowError * (frequencyNumber / low) ** 2;
  for (const [high, highError] of rest) {
    if (frequencyNumber <= high) {
      const part = Math.log(frequencyNumber / low) / Math.log(high / low);
      return lowError * (highError / lowError) ** part;
    }
    [low, lowError] = [high, highError];
  }
  return 1;
}

/**
 * Error of the steady law of a sharp hole where the flow swings at a frequency, alone and with the apparent mass.
 *
 * Alone: `W ℓ/√(y² + (W ℓ)²)`, `W = ω d²/ν`, `ℓ = 4/3 L/d + 1.03`, `y` the creeping number: within 0.1 % of the swing up to W 3 and
 * 5 % above. With the mass: interpolated between our own solutions at L/d 0.5, the largest of three lengths; 1 above W 1000.
 * Creeping flow; flows with inertia that swing or start stand in docs/hole-law.md.
 *
 * @param hole - diameter and length above 0 m
 * @param fluid - density above 0 kg/m³, kinematic viscosity above 0 m²/s
 * @param frequency - of the swing [Hz], above 0
 * @throws InputError for a size, fluid property or frequency that is not above 0
 * @example
 * ```ts
 * const oil = { density: 970, kinematicViscosity: 350e-6 };
 * const hole = { diameter: 0.0013, length: 0.0025 };
 * unsteadyFlowError(hole, oil, 10).frequencyNumber; // 0.3034: ω d²/ν, by hand
 * ```
 * @public
 */
export function unsteadyFlowError(hole: Hole, fluid: FluidState, frequency: number): UnsteadyFlowError {
  requireHole(hole);
  requireFluidState(fluid);
  requirePositive(frequency, 'frequency', 'Hz');
  return errorOfSwing(hole, fluid, frequency);
}

/** {@link unsteadyFlowError} of what was checked before. */
export function errorOfSwing(hole: Hole, fluid: FluidState, frequency: number): UnsteadyFlowError {
  const lengthRatio = hole.length / hole.diameter;
  const frequencyNumber = (2 * Math.PI * frequency * hole.diameter ** 2) / fluid.kinematicViscosity;
  const inertia = (frequencyNumber * apparentLength(hole)) / hole.diameter;
  return {
    frequencyNumber,
    steadyLaw: inertia / Math.hypot(sharpCreepingNumber(lengthRatio), inertia),
    withApparentMass: errorWithMass(frequencyNumber),
  };
}

/** Above this `ω d²/ν` the steady law alone is off by 5 % of the pressure swing. */
export const largestSteadyNumber = 1;

/** Above this the apparent mass no longer holds the error below 3 %. */
const largestMassNumber = 10;

/**
 * Says where the flow through a hole swings too fast for the steady law, and for the steady law with {@link apparentMass}.
 *
 * @param hole - diameter and length above 0 m
 * @param fluid - density above 0 kg/m³, kinematic viscosity above 0 m²/s
 * @param frequency - of the swing [Hz], above 0
 * @param hasMass - whether the apparent mass is in the result
 * @throws InputError for a size, fluid property or frequency that is not above 0
 * @example
 * ```ts
 * const oil = { density: 970, kinematicViscosity: 350e-6 };
 * const hole = { diameter: 0.0013, length: 0.0025 };
 * unsteadyFlowWarnings(hole, oil, 0.1, false).length; // 0: slow enough for the steady law
 * unsteadyFlowWarnings(hole, oil, 1000, false).length > 0; // true: the flow lags behind
 * ```
 * @public
 */
export function unsteadyFlowWarnings(
  hole: Hole,
  fluid: FluidState,
  frequency: number,
  hasMass: boolean,
): readonly Warning[] {
  requireKind(hasMass, 'boolean', 'hasMass');
  const { frequencyNumber, steadyLaw, withApparentMass } = unsteadyFlowError(hole, fluid, frequency);
  const limit = hasMass ? largestMassNumber : largestSteadyNumber;
  if (frequencyNumber <= limit) return noWarnings;
  const percent = Math.round(100 * (hasMass ? withApparentMass : steadyLaw));
  const law = hasMass ? 'steady hole law with the apparent mass' : 'steady hole law';
  return [
    {
      code: hasMass ? 'hole-frequency-high-for-mass' : 'hole-frequency-high',
      message: `At ${Number(frequency.toPrecision(3))} Hz the ${law} is off by about ${percent} % of the pressure swing`,
      value: frequencyNumber,
      limit,
    },
  ];
}
