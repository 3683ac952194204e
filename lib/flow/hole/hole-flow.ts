import { requireFinite } from '../../base/checks.js';
import type { FluidState } from '../../fluid/oil/fluid-state.js';
import { requireFluidState } from '../../fluid/oil/fluid-state.js';
import { areaOfHole, type Hole, requireHole } from '../geometry/hole.js';
import { type HoleLaw, requireLaw } from './hole-law.js';
import { sharpHoleLaw } from './sharp-hole.js';

/**
 * Reynolds number of a hole, `Re = V d / ν` with the mean speed `V`.
 *
 * @param hole - diameter and length above 0 m
 * @param fluid - viscosity above 0 m²/s
 * @param volumeFlow - flow through the hole [m³/s], either sign
 * @returns a pure number, 0 or more
 * @throws InputError for a size or a fluid property that is not above 0
 * @example
 * ```ts
 * const oil = { density: 970, kinematicViscosity: 350e-6 };
 * const hole = { diameter: 0.0013, length: 0.0025 };
 * holeReynoldsNumber(hole, oil, 1e-6); // 2.798: 4 Q/(π d ν), by hand
 * ```
 * @public
 */
export function holeReynoldsNumber(hole: Hole, fluid: FluidState, volumeFlow: number): number {
  requireFinite(volumeFlow, 'volumeFlow', 'm³/s');
  requireHole(hole);
  requireFluidState(fluid);
  return (Math.abs(volumeFlow) / areaOfHole(hole)) * (hole.diameter / fluid.kinematicViscosity);
}

/**
 * Pressure drop over a hole [Pa] at a flow, with the sign of the flow.
 *
 * @param hole - diameter and length above 0 m
 * @param fluid - density above 0 kg/m³, kinematic viscosity above 0 m²/s
 * @param volumeFlow - flow through the hole [m³/s], either sign
 * @param law - which law; {@link sharpHoleLaw} by default
 * @throws InputError for a size or a fluid property that is not above 0
 * @example
 * ```ts
 * const oil = { density: 970, kinematicViscosity: 350e-6 };
 * const hole = { diameter: 0.0013, length: 0.0025 };
 * holePressureDrop(hole, oil, 1e-6, oneConstantHoleLaw); // 15865: the formula of that law at Re 2.8, by hand
 * ```
 * @public
 */
export function holePressureDrop(
  hole: Hole,
  fluid: FluidState,
  volumeFlow: number,
  law: HoleLaw = sharpHoleLaw,
): number {
  requireLaw(law);
  requireFinite(volumeFlow, 'volumeFlow', 'm³/s');
  requireHole(hole);
  requireFluidState(fluid);
  return law.resistance(hole, fluid).pressureDrop(volumeFlow / areaOfHole(hole));
}

/**
 * Flow through a hole [m³/s] at a pressure drop: the inverse of {@link holePressureDrop}.
 *
 * @param hole - diameter and length above 0 m
 * @param fluid - density above 0 kg/m³, kinematic viscosity above 0 m²/s
 * @param pressureDrop - pressure before the hole less the pressure behind it [Pa], either sign
 * @param law - which law; {@link sharpHoleLaw} by default
 * @throws InputError for a size or a fluid property that is not above 0
 * @example
 * ```ts
 * const oil = { density: 970, kinematicViscosity: 350e-6 };
 * const hole = { diameter: 0.0013, length: 0.0025 };
 * holeFlow(hole, oil, 15864.66, oneConstantHoleLaw); // 1.0000e-6: the flow that costs so much, see holePressureDrop
 * ```
 * @public
 */
export function holeFlow(
  hole: Hole,
  fluid: FluidState,
  pressureDrop: number,
  law: HoleLaw = sharpHoleLaw,
): number {
  requireLaw(law);
  requireFinite(pressureDrop, 'pressureDrop', 'Pa');
  requireHole(hole);
  requireFluidState(fluid);
  return law.resistance(hole, fluid).meanSpeed(pressureDrop) * areaOfHole(hole);
}
