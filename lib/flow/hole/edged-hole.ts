import type { HoleEdge } from '../geometry/hole-shape.js';
import { creepingCone, creepingEnd, creepingMouth, creepingTube } from './creeping-parts.js';
import { edgeDepth, edgeWidening } from './hole-shape.js';
import { type Jet, straightJet } from './jet-momentum.js';
import type { LaminarHole } from './laminar-hole.js';
import { sharpLoss } from './sharp-hole.js';

// Fitted to our own solutions of chamfers of 30 to 60° and roundings, one end or both (docs/hole-law.md).
/** In creeping flow a quarter round costs what a 45° chamfer of this part of its radius costs. */
const roundCreeping = 0.699;
/** Oil that runs along a slope of tangent `t` costs `1 + 0.948 t^1.487` of what Poiseuille's tube says. */
const slopeLoss = 0.948;
const slopePower = 1.487;

/**
 * With inertia the depth of an inlet counts. A chamfer leaves a contraction by the angle where it meets the hole, however deep it is,
 * and a bubble that grows more slowly; behind a rounding it hardly grows.
 */
const inlet = {
  /** How soon a deeper edge takes its full effect, by depth over diameter. */
  depthEffect: 25,
  angleContraction: 1.011,
  anglePower: -1.122,
  chamferBubble: 0.336,
  roundContraction: 1.851,
  roundBubble: 20.4,
  chamferOnset: 0.23,
  roundOnset: 0.147,
  chamferGrowth: 1.078,
  chamferGrowthPower: -1.073,
  roundGrowth: 1.205,
} as const;

const outlet = {
  /** A rounding counts as a 45° chamfer of this part of its radius, a chamfer by the power of its slope. */
  rounding: 1.007,
  slopePower: -0.536,
  onset: 0.374,
  /** What it wins back while the jet follows it, less from a long hole, and when it lets go. */
  gain: 0.43,
  gainByLength: -0.247,
  separationNumber: 314,
  separationPower: 1.127,
} as const;

/** The mouth of an edge, over the diameter, as the jet and slow oil see it. */
function openMouth(edge: HoleEdge | undefined, diameter: number): number {
  const part = edge?.kind === 'rounded' ? 0.81 : 1;
  return 1 + (2 * part * edgeWidening(edge)) / diameter;
}

const creepingShare = (mouth: number) => mouth ** -3.4;

/** Creeping loss of an edge with its end, less that of the tube it replaces. */
function creepingEdge(edge: HoleEdge | undefined, diameter: number): number {
  if (edge === undefined) return creepingEnd(diameter, diameter);
  const rounded = edge.kind === 'rounded';
  const depth = rounded ? roundCreeping * edge.radius : edge.depth;
  const slope = rounded ? 1 : Math.tan(edge.halfAngle);
  const mouth = diameter + 2 * depth * slope;
  return (
    creepingEnd(diameter, mouth) +
    creepingCone(diameter, mouth, depth, slopeLoss * slope ** slopePower) -
    (creepingTube * depth) / diameter
  );
}

/** What an inlet leaves of the contraction and its bubble, how much later it makes inertia set in, and how much faster the profile develops. */
function inletEffect(edge: HoleEdge | undefined, diameter: number) {
  if (edge === undefined) return { contraction: 1, bubble: 1, onset: 1, growth: 1, flattening: 0 };
  const depth = edgeDepth(edge) / diameter;
  const mouth = 1 + 2 * depth;
  const left = Math.exp(-inlet.depthEffect * depth);
  const flattening = 0.085 * (1 - Math.exp(-10 * depth));
  if (edge.kind === 'rounded') {
    return {
      contraction: left + inlet.roundContraction * (1 - left),
      bubble: Math.exp(-inlet.roundBubble * depth),
      onset: mouth ** inlet.roundOnset,
      growth: 1 + inlet.roundGrowth * 2 * depth,
      flattening,
    };
  }
  const slope = Math.tan(edge.halfAngle);
  return {
    contraction: left + inlet.angleContraction * slope ** inlet.anglePower * (1 - left),
    bubble: left + inlet.chamferBubble * (1 - left),
    onset: mouth ** inlet.chamferOnset,
    growth: 1 + inlet.chamferGrowth * slope ** inlet.chamferGrowthPower * 2 * depth,
    flattening,
  };
}

/** Mouth over diameter of the 45° chamfer that stands for an outlet. */
function outletMouth(edge: HoleEdge | undefined, diameter: number): number {
  if (edge === undefined) return 1;
  const depth = edgeDepth(edge) / diameter;
  const part = edge.kind === 'rounded' ? outlet.rounding : Math.tan(edge.halfAngle) ** outlet.slopePower;
  return 1 + 2 * part * depth;
}

/** How far the jet still fills the mouth of an edge. */
function edgedJet(edge: HoleEdge | undefined, diameter: number, flattening: number): Jet {
  const mouth = openMouth(edge, diameter);
  return {
    ...straightJet,
    attachedShare: mouth ** -2,
    separationNumber: 11.2,
    creepingShare: mouth ** -5.18,
    momentum: straightJet.momentum - flattening,
  };
}

/** A straight hole with its edges, for flow in at one and out at the other. */
export function edgedHole(
  diameter: number,
  thickness: number,
  inletEdge: HoleEdge | undefined,
  outletEdge: HoleEdge | undefined,
  areaRatio: number,
): LaminarHole {
  const lengthRatio = thickness / diameter;
  const { contraction, bubble, onset, growth, flattening } = inletEffect(inletEdge, diameter);
  const mouth = outletMouth(outletEdge, diameter);
  const gain = outlet.gain * lengthRatio ** outlet.gainByLength * (1 - mouth ** -2);
  const sharp = sharpLoss(areaRatio);
  let creepingNumber = creepingTube * lengthRatio;
  for (const edge of [inletEdge, outletEdge]) {
    creepingNumber +=
      creepingEdge(edge, diameter) + creepingMouth(areaRatio, creepingShare(openMouth(edge, diameter)));
  }
  return {
    ...sharp,
    diameter,
    lengthRatio,
    creepingNumber,
    exit: sharp.exit - gain,
    profileLengthRatio: lengthRatio / growth,
    contraction: sharp.contraction * contraction,
    bubbleGrowth: sharp.bubbleGrowth * bubble,
    onset: sharp.onset * onset * mouth ** outlet.onset,
    ...(gain > 0
      ? {
          separation: {
            loss: gain,
            reynoldsNumber: outlet.separationNumber,
            power: outlet.separationPower,
          },
        }
      : {}),
    jet: edgedJet(outletEdge, diameter, flattening),
  };
}
