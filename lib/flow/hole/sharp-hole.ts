import type { HoleLaw } from './hole-law.js';
import { developedExcessLoss, freeJetLoss, sharpOnset } from './inertial-loss.js';
import { laminarHoleResistance } from './laminar-hole.js';
import { holeRangeWarnings } from './range-warnings.js';

/**
 * Creeping loss of the two ends, `Δp d / (μ V)`: Sampson's orifice, of which the tube between the ends takes 1 % (Dagan,
 * Weinbaum & Pfeffer, J. Fluid Mech. 115 (1982) 505; the numerical reference gives 0.5 to 1.5 %).
 */
export const creepingEnds = 0.99 * 6 * Math.PI;

/** Poiseuille's tube, `Δp d / (μ V)` per length over diameter. */
export const creepingTube = 32;

const range = {
  law: 'sharp hole',
  lengthRatio: { low: 0.5, high: 5 },
  reynoldsNumber: { low: 0, high: 800 },
};

/** What inertia costs in such a hole, but for its length. */
export const sharpLoss = {
  exit: 1,
  development: developedExcessLoss,
  contraction: freeJetLoss,
  onset: sharpOnset,
} as const;

/** `Δp d / (μ V)` of such a hole in the creeping limit. */
export function sharpCreepingNumber(lengthRatio: number): number {
  return creepingEnds + creepingTube * lengthRatio;
}

/**
 * The default law, for a sharp-edged hole between two wide chambers:
 *
 * `Δp = (μ V / d) (0.99 · 6π + 32 L/d) + ½ ρ V² ζ(Re, L/d)`, `ζ` from {@link inertialLoss} with exit 1, development 1.25,
 * contraction 1.68, onset 27.
 *
 * The pressure drop is that between the chamber before the hole and the face behind it; what the jet gives back further
 * downstream is not in it. Smooth, odd and convex, so that both directions and the inverse are safe. Range: L/d 0.5 to 5,
 * Re 0 to 800, holes up to 12 % of the bore area: there within 0.5 % of the numerical reference for Re up to 30
 * and within 1 % up to Re 800. Above, it tends to within 15 % of the turbulent thick-edged orifice (Idelchik).
 *
 * @public
 */
export const sharpHoleLaw: HoleLaw = {
  name: 'sharp hole',
  resistance: ({ diameter, length }, fluid) => {
    const lengthRatio = length / diameter;
    const creepingNumber = sharpCreepingNumber(lengthRatio);
    return laminarHoleResistance({ ...sharpLoss, diameter, creepingNumber, lengthRatio }, fluid);
  },
  rangeWarnings: (lengthRatio, reynoldsNumber) => holeRangeWarnings(range, lengthRatio, reynoldsNumber),
};
