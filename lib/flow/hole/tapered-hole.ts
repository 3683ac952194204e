import { creepingCone, creepingEnd, creepingMouth } from './creeping-parts.js';
import { straightJet } from './jet-momentum.js';
import type { LaminarHole } from './laminar-hole.js';
import { developedExcessLoss } from './loss-shares.js';
import { sharpLoss } from './sharp-hole.js';

// Fitted to our own solutions of tapers to 1 : 1.5, both ways (docs/hole-law.md).
/** What the slope of a cone adds to Poiseuille's tube in creeping flow, by the square of the tangent of the half angle. */
const slopeLoss = 1.205;
const mouthPower = -1.6;

/** Momentum over `ρ V² A` of a free jet behind a sharp edge: it has narrowed to 0.611 of the hole (Kirchhoff, from memory). */
const freeJetMomentum = 1 / 0.611;

/** The oil is speeded up on its way, which keeps its profile flat, and goes on narrowing behind the hole. */
const narrowing = {
  onset: 0.0306,
  development: -1.429,
  growth: 98.5,
  growthByLength: 0.44,
  growthByRatio: 0.43,
  contraction: -19.1,
  angleContraction: 0.0915,
  anglePower: -0.515,
  jet: 0.6186,
  jetPower: 0.749,
  flattening: 0.275,
} as const;

const widening = {
  onset: 0.857,
  exit: -3.97,
  development: -1.514,
  profile: -0.748,
  /** A wall that falls back is harder to land on. */
  bubble: -5.226,
  bubbleByLength: 1.084,
  separation: 0.5924,
  separationPower: -30.4,
  /** Reynolds number at which the jet leaves the wall, by the slope: laminar flow stands only a slow widening. */
  separationNumber: 120.3,
  separationBySlope: -0.8053,
  suddenness: 3.427,
  /** What the wider exit leaves of the momentum while the jet fills it; a jet off the wall is a free one. */
  jetShare: -2.17,
  jetSeparationNumber: 64,
  jetSeparationBySlope: -1.13,
  jetSuddenness: 0.92,
} as const;

/** A tapered hole, for flow in at one diameter and out at the other. */
export function taperedHole(
  thickness: number,
  inlet: number,
  outlet: number,
  areaRatio: number,
): LaminarHole {
  const diameter = Math.min(inlet, outlet);
  const wide = Math.max(inlet, outlet);
  const ratio = wide / diameter;
  const lengthRatio = thickness / diameter;
  const slope = (wide - diameter) / (2 * thickness);
  const sharp = sharpLoss(areaRatio);
  const common = {
    ...sharp,
    diameter,
    lengthRatio,
    creepingNumber:
      creepingEnd(diameter, diameter) +
      creepingEnd(diameter, wide) +
      creepingCone(diameter, wide, thickness, slopeLoss * slope * slope) +
      creepingMouth(areaRatio, ratio ** mouthPower),
    jet: straightJet,
  };
  if (ratio === 1) return common;
  if (inlet > outlet) {
    const growth =
      narrowing.growth *
      slope *
      lengthRatio ** narrowing.growthByLength *
      (ratio - 1) ** narrowing.growthByRatio;
    const left = ratio ** narrowing.contraction;
    return {
      ...common,
      exit: sharp.exit + narrowing.jet * slope ** narrowing.jetPower,
      development: developedExcessLoss * ratio ** narrowing.development,
      profileLengthRatio: lengthRatio / (1 + growth),
      contraction:
        sharp.contraction *
        (left + narrowing.angleContraction * (2 * slope) ** narrowing.anglePower * (1 - left)),
      onset: sharp.onset * ratio ** narrowing.onset,
      jet: { ...straightJet, momentum: straightJet.momentum - narrowing.flattening * (1 - 1 / ratio) },
    };
  }
  return {
    ...common,
    exit: sharp.exit - 1 + ratio ** widening.exit,
    development: developedExcessLoss * ratio ** widening.development,
    profileLengthRatio: lengthRatio * ratio ** widening.profile,
    lengthRatio: lengthRatio ** widening.bubbleByLength * ratio ** widening.bubble,
    onset: sharp.onset * ratio ** widening.onset,
    separation: {
      loss: widening.separation * (1 - ratio ** widening.separationPower),
      reynoldsNumber: widening.separationNumber * slope ** widening.separationBySlope,
      power: widening.suddenness,
    },
    jet: {
      ...straightJet,
      attachedShare: ratio ** widening.jetShare,
      separatedShare: freeJetMomentum / straightJet.momentum,
      separationNumber: widening.jetSeparationNumber * slope ** widening.jetSeparationBySlope,
      separationPower: widening.jetSuddenness,
      creepingShare: ratio ** -2.99,
    },
  };
}
