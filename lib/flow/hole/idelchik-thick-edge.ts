import { requirePositive, requireWithin } from '../../base/checks.js';
import type { FluidState } from '../../fluid/oil/fluid-state.js';
import type { Hole } from '../geometry/hole.js';
import type { HoleLaw, HoleResistance } from './hole-law.js';
import { holeRangeWarnings } from './range-warnings.js';

/**
 * Loss coefficient of a thick-edged orifice without its wall friction, on the speed in the hole:
 * `ζ = 0.5 (1−b)^0.75 + τ (1−b)^1.375 + (1−b)²`, `τ = (2.4 − l) 10^−φ`, `φ = 0.25 + 0.535 l⁸/(0.05 + l⁸)`, `l = L/d`.
 *
 * @param lengthRatio - `L/d`, above 0; `τ` is 0 from 2.4 on
 * @param areaRatio - hole area over bore area `b`, 0 to 1
 * @see Idelchik, Handbook of Hydraulic Resistance, thick-edged orifice; as in Modelica Standard Library
 * Fluid.Dissipation dp_thickEdgedOverall
 * @example
 * ```ts
 * lossCoefficientIdelchikThickEdge(2.4); // 1.5: half a head at the entrance and one at the exit, Idelchik
 * ```
 * @public
 */
export function lossCoefficientIdelchikThickEdge(lengthRatio: number, areaRatio = 0): number {
  requirePositive(lengthRatio, 'lengthRatio', '');
  requireWithin(areaRatio, 0, 0.99, 'areaRatio', '');
  return thickEdgeLoss(lengthRatio, areaRatio);
}

/** {@link lossCoefficientIdelchikThickEdge} of what was checked before. */
export function thickEdgeLoss(lengthRatio: number, areaRatio = 0): number {
  const eighth = lengthRatio ** 8;
  // Written as 1 − 0.05/(…) so that a very long hole does not divide infinity by infinity.
  const phi = 0.25 + 0.535 * (1 - 0.05 / (0.05 + eighth));
  const tau = lengthRatio < 2.4 ? (2.4 - lengthRatio) * 10 ** -phi : 0;
  const free = 1 - areaRatio;
  return 0.5 * free ** 0.75 + tau * free ** 1.375 + free ** 2;
}

function resistance(hole: Hole, fluid: FluidState): HoleResistance {
  const lengthRatio = hole.length / hole.diameter;
  const dynamicViscosity = fluid.density * fluid.kinematicViscosity;
  // Wall friction of laminar tube flow, λ = 64/Re.
  const creepingSlope = (32 * dynamicViscosity * lengthRatio) / hole.diameter;
  const inertial = 0.5 * fluid.density * thickEdgeLoss(lengthRatio);
  return {
    creepingSlope,
    pressureDrop: (speed) => speed * (creepingSlope + inertial * Math.abs(speed)),
    slope: (speed) => creepingSlope + 2 * inertial * Math.abs(speed),
    meanSpeed: (drop) =>
      (2 * drop) / (creepingSlope + Math.sqrt(creepingSlope ** 2 + 4 * inertial * Math.abs(drop))),
  };
}

const range = {
  law: 'Idelchik thick-edge',
  lengthRatio: { low: 0.015, high: Number.POSITIVE_INFINITY },
  reynoldsNumber: { low: 1000, high: 100_000 },
};

/**
 * Idelchik's thick-edged orifice with laminar wall friction, as an alternative to compare with. It holds above Re 1000; at
 * low speed it lacks the viscous loss of the two ends.
 *
 * @public
 */
export const idelchikThickEdgeLaw: HoleLaw = {
  name: 'Idelchik thick-edge',
  resistance,
  rangeWarnings: (lengthRatio, reynoldsNumber) => holeRangeWarnings(range, lengthRatio, reynoldsNumber),
};
