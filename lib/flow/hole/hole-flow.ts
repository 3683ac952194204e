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
