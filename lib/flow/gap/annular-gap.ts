import { refuse, requireFinite, requirePositive, requireRecord, requireWithin } from '../../base/checks.js';
import { type FluidState, requireFluidState } from '../../fluid/oil/fluid-state.js';
import type { Piston } from '../geometry/piston.js';

/**
 * The gap between a piston and its bore.
 *
 * @public
 */
export interface AnnularGap {
  /** Bore diameter [m], above 0. */
  readonly bore: number;
  /** Piston diameter [m], above 0 and below the bore. */
  readonly pistonDiameter: number;
  /** Length along the flow [m], above 0. */
  readonly length: number;
  /** Distance of the axes as a fraction of the radial gap, 0 (centred) to 0.99; at contact the drag has no limit. */
  readonly eccentricity: number;
}

/** Largest eccentricity for which the drag of the gap is still computed. */
export const largestEccentricity = 0.99;

/** Throws unless there is a gap. */
export function requireAnnularGap(gap: AnnularGap): void {
  requireRecord(gap, 'gap');
  requirePositive(gap.bore, 'bore', 'm');
  requirePositive(gap.pistonDiameter, 'pistonDiameter', 'm');
  requirePositive(gap.length, 'length', 'm');
  requireWithin(gap.eccentricity, 0, largestEccentricity, 'eccentricity', '');
  if (gap.pistonDiameter >= gap.bore) {
    refuse(gap.pistonDiameter, 'pistonDiameter', 'm', `below the bore of ${gap.bore}`);
  }
}

/** The gap round a piston in its bore. */
export function rimGap(piston: Piston, bore: number): AnnularGap {
  const { diameter, thickness, eccentricity } = piston;
  return { bore, pistonDiameter: diameter, length: thickness, eccentricity };
}

/** Radial height of the gap [m]. */
export function gapHeight(gap: AnnularGap): number {
  return (gap.bore - gap.pistonDiameter) / 2;
}

/** Circumference half way across the gap [m]. */
export function gapCircumference(gap: AnnularGap): number {
  return Math.PI * (gap.bore - gapHeight(gap));
}

/**
 * Flow per pressure drop of a thin annular gap [m³/(s·Pa)], `π D h³ / (12 μ L) · (1 + 1.5 ε²)`.
 *
 * @param gap - sizes above 0 m, eccentricity 0 to 0.99
 * @param fluid - density above 0 kg/m³, kinematic viscosity above 0 m²/s
 * @throws InputError for a size, eccentricity or fluid property outside its range
 * @see Bird, Stewart & Lightfoot, Transport Phenomena, sec. 2.4, thin limit (from memory); eccentric factor: White, Viscous
 * Fluid Flow, eccentric annulus, thin limit (from memory)
 * @example
 * ```ts
 * const oil = { density: 970, kinematicViscosity: 350e-6 };
 * const gap = { bore: 0.012, pistonDiameter: 0.0118, length: 0.0025, eccentricity: 0 };
 * annularGapConductance(gap, oil); // 3.671e-12: π D h³/(12 μ L) with D = 11.9 mm, h = 0.1 mm, by hand
 * ```
 * @public
 */
export function annularGapConductance(gap: AnnularGap, fluid: FluidState): number {
  requireAnnularGap(gap);
  requireFluidState(fluid);
  const dynamicViscosity = fluid.density * fluid.kinematicViscosity;
  const eccentric = 1 + 1.5 * gap.eccentricity ** 2;
  return ((gapCircumference(gap) * gapHeight(gap) ** 3) / (12 * dynamicViscosity * gap.length)) * eccentric;
}

/**
 * Flow through the gap seen from the piston [m³/s]: the part driven by pressure plus the part dragged by the moving bore.
 *
 * @param gap - sizes above 0 m, eccentricity 0 to 0.99
 * @param fluid - density above 0 kg/m³, kinematic viscosity above 0 m²/s
 * @param pressureDrop - pressure drop along the flow [Pa], either sign
 * @param wallSpeed - speed of the bore past the piston, in the direction of the flow [m/s], either sign
 * @throws InputError for a size, eccentricity, fluid property, pressure or speed outside its range
 * @see plane Couette–Poiseuille flow: White, Fluid Mechanics, sec. 4.10 (from memory)
 * @example
 * ```ts
 * const oil = { density: 970, kinematicViscosity: 350e-6 };
 * const gap = { bore: 0.012, pistonDiameter: 0.0118, length: 0.0025, eccentricity: 0 };
 * annularGapFlow(gap, oil, 1e5, 0); // 3.671e-7: π D h³ Δp/(12 μ L), by hand
 * annularGapFlow(gap, oil, 0, 0.1); // 1.869e-7: half the speed of the wall times π D h, by hand
 * ```
 * @public
 */
export function annularGapFlow(
  gap: AnnularGap,
  fluid: FluidState,
  pressureDrop: number,
  wallSpeed: number,
): number {
  requireFinite(pressureDrop, 'pressureDrop', 'Pa');
  requireFinite(wallSpeed, 'wallSpeed', 'm/s');
  // The first of the sum checks gap and fluid.
  return (
    annularGapConductance(gap, fluid) * pressureDrop +
    (gapCircumference(gap) * gapHeight(gap) * wallSpeed) / 2
  );
}

/**
 * Viscous drag of the gap per sliding speed [N·s/m], `μ π D L / h / sqrt(1 − ε²)`.
 *
 * @param gap - sizes above 0 m, eccentricity 0 to 0.99
 * @param fluid - density above 0 kg/m³, kinematic viscosity above 0 m²/s
 * @throws InputError for a size, eccentricity or fluid property outside its range
 * @see Petroff drag of an eccentric journal, Sommerfeld integral (from memory)
 * @example
 * ```ts
 * const oil = { density: 970, kinematicViscosity: 350e-6 };
 * const gap = { bore: 0.012, pistonDiameter: 0.0118, length: 0.0025, eccentricity: 0 };
 * annularGapDrag(gap, oil); // 0.3173: π μ D L/h with D = 11.9 mm, h = 0.1 mm, by hand
 * ```
 * @public
 */
export function annularGapDrag(gap: AnnularGap, fluid: FluidState): number {
  requireAnnularGap(gap);
  requireFluidState(fluid);
  const dynamicViscosity = fluid.density * fluid.kinematicViscosity;
  const eccentric = 1 / Math.sqrt(1 - gap.eccentricity ** 2);
  return ((dynamicViscosity * gapCircumference(gap) * gap.length) / gapHeight(gap)) * eccentric;
}
