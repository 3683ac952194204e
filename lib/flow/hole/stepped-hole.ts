import { creepingEnd, creepingEnds, creepingMouth, creepingTube } from './creeping-parts.js';
import type { Jet } from './jet-momentum.js';
import { straightJet } from './jet-momentum.js';
import type { LaminarHole } from './laminar-hole.js';
import { developedExcessLoss } from './loss-shares.js';
import { sharpLoss } from './sharp-hole.js';

/** One part of a stepped hole. */
interface Part {
  readonly diameter: number;
  readonly length: number;
}

// Fitted to our own solutions of steps 1 : 1.15 to 1 : 1.7, both ways (docs/hole-law.md).
/** Creeping loss of the step, in ends of the narrow part: `1.228 (1 − (d/D)²)^1.424`. */
const stepLoss = 1.228;
const stepPower = 1.424;
const mouthPower = -1.6;

/** A small step leaves the hole one: the wide part then counts for the profile and for where the jet can land. */
const narrowing = {
  onset: -0.0348,
  step: 1.851,
  inlet: -14.43,
  development: 0.9765,
  developmentPower: -3,
  profile: -13.47,
  bubble: -28.8,
} as const;

const widening = {
  onset: 0.9,
  onsetByHeights: 0.1535,
  bubble: -8,
  /** What the wide part wins back while the jet lands in it, by Borda and Carnot's `4 q² (1 − q²)`. */
  recovery: 0.807,
  recoveryPower: 2.16,
  /** Reynolds number to which half of the jets land, by the length of the wide part in heights of the step. */
  landing: 15.36,
  landingPower: 1.3,
  suddenness: 1.237,
} as const;

/** How far the jet from a widening step still fills the wide part's exit. */
function wideningJet(ratio: number, heights: number): Jet {
  return {
    ...straightJet,
    attachedShare: ratio ** -1.43,
    separationNumber: 11.39 * heights ** 1.763,
    creepingShare: ratio ** -2.99,
  };
}

/**
 * A hole of two straight parts, for flow in at the first: tubes and ends of each, the step as the part of an end that the wider
 * part does not share, and by inertia the loss of the narrow part. Behind a widening step the jet gives back momentum (Borda and
 * Carnot) as long as it lands within the wide part.
 */
export function steppedHole(first: Part, second: Part, areaRatio: number): LaminarHole {
  const narrows = second.diameter <= first.diameter;
  const [narrow, wide] = narrows ? [second, first] : [first, second];
  const { diameter } = narrow;
  const ratio = wide.diameter / diameter;
  const areaShare = ratio ** -2;
  const narrowLength = narrow.length / diameter;
  const wideLength = wide.length / diameter;
  const sharp = sharpLoss(areaRatio);
  const common = {
    ...sharp,
    diameter,
    creepingNumber:
      creepingEnd(diameter, diameter) +
      creepingEnd(diameter, wide.diameter) +
      (creepingEnds / 2) * stepLoss * (1 - areaShare) ** stepPower +
      creepingTube * (narrowLength + wideLength * ratio ** -4) +
      creepingMouth(areaRatio, ratio ** mouthPower),
  };
  if (narrows) {
    return {
      ...common,
      lengthRatio: narrowLength + wideLength * ratio ** narrowing.bubble,
      profileLengthRatio: narrowLength + wideLength * ratio ** narrowing.profile,
      development:
        developedExcessLoss * (1 - narrowing.development * (ratio - 1) * ratio ** narrowing.developmentPower),
      contraction: sharp.contraction * ((1 - areaShare) ** narrowing.step + ratio ** narrowing.inlet),
      onset: sharp.onset * ratio ** narrowing.onset,
      jet: straightJet,
    };
  }
  const heights = (2 * wide.length) / (wide.diameter - diameter);
  const recovery = widening.recovery * (4 * areaShare * (1 - areaShare)) ** widening.recoveryPower;
  return {
    ...common,
    lengthRatio: narrowLength + wideLength * ratio ** widening.bubble,
    profileLengthRatio: narrowLength,
    exit: sharp.exit - recovery,
    onset: sharp.onset * ratio ** widening.onset * (heights / 5) ** widening.onsetByHeights,
    separation: {
      loss: recovery,
      reynoldsNumber: widening.landing * heights ** widening.landingPower,
      power: widening.suddenness,
    },
    jet: wideningJet(ratio, heights),
  };
}
