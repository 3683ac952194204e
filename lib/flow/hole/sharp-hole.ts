import { typicalAreaRatio } from '../geometry/hole.js';
import { creepingEnds, creepingTube } from './creeping-parts.js';
import type { HoleLaw } from './hole-law.js';
import { laminarHoleResistance } from './laminar-hole.js';
import { developedExcessLoss, freeJetLoss, sharpOnset } from './loss-shares.js';
import { holeRangeWarnings, sharpHoleRange } from './range-warnings.js';

/**
 * What inertia costs in a sharp hole but for its length, by the share of the bore that the holes take. In a narrower bore the oil
 * turns less before the hole, the jet's bubble is shorter, and slow oil already presses less on the face behind. Fitted.
 */
export function sharpLoss(areaRatio: number) {
  return {
    slow: 0.69 * areaRatio,
    exit: 1 - 0.216 * areaRatio,
    development: developedExcessLoss,
    contraction: freeJetLoss / (1 + 1.444 * areaRatio),
    bubbleGrowth: 1 / (1988 * (1 + 0.84 * areaRatio)),
    onset: sharpOnset,
  };
}

/** `Δp d / (μ V)` of such a hole in the creeping limit. */
export function sharpCreepingNumber(lengthRatio: number): number {
  return creepingEnds + creepingTube * lengthRatio;
}

/**
 * The default law, for a sharp-edged hole between two wide chambers:
 *
 * `Δp = (μ V / d) (0.991 · 6π + 32 L/d) + ½ ρ V² ζ(Re, L/d, a)`, `ζ` from {@link inertialLoss} with the constants of a sharp edge.
 *
 * The pressure drop is that between the total pressure before the hole and the face behind it; what the jet gives back further
 * downstream is not in it. Smooth, odd and convex, so that both directions and the inverse are safe. Range: L/d 0.3 to 6,
 * Re 0 to 800, holes up to 16 % of the bore: there within 0.33 % of held-out solutions to Re 30 and within 0.82 % to Re 800. Above, it tends to within 15 % of the
 * turbulent thick-edged orifice (Idelchik).
 *
 * @public
 */
export const sharpHoleLaw: HoleLaw = {
  name: 'sharp hole',
  resistance: ({ diameter, length, areaRatio = typicalAreaRatio }, fluid) => {
    const lengthRatio = length / diameter;
    const creepingNumber = sharpCreepingNumber(lengthRatio);
    return laminarHoleResistance({ ...sharpLoss(areaRatio), diameter, creepingNumber, lengthRatio }, fluid);
  },
  rangeWarnings: (lengthRatio, reynoldsNumber) =>
    holeRangeWarnings(sharpHoleRange, lengthRatio, reynoldsNumber),
};
