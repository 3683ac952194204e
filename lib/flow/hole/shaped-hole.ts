import type { FluidState } from '../../fluid/oil/fluid-state.js';
import type { HoleEdge, HoleShape } from '../geometry/hole-shape.js';
import type { HoleResistance } from './hole-law.js';
import { edgeDepth, edgeWidening } from './hole-shape.js';
import { developedExcessLoss, freeJetLoss, sharpOnset } from './inertial-loss.js';
import { type LaminarHole, laminarHoleResistance } from './laminar-hole.js';
import { creepingEnds, creepingTube } from './sharp-hole.js';
import { slotHole } from './slot.js';
import { steppedHole } from './stepped-hole.js';
import { twoWayResistance } from './two-way.js';

/** A quarter round costs what a 45° chamfer of this part of its radius costs, in creeping flow; from our numerical reference. */
const roundAsChamfer = 0.65;

/** Creeping loss of one end that opens with a mouth of another diameter: half of Sampson's orifice, on the speed at `diameter`. */
export function creepingEnd(diameter: number, mouth: number): number {
  return (creepingEnds / 2) * (diameter / mouth) ** 3;
}

/**
 * Creeping loss of a cone, `Δp d/(μ V)` on its narrow end: Poiseuille's tube integrated along it, and `1/cos²` of its half angle
 * for the oil that no longer runs along the axis.
 */
export function creepingCone(diameter: number, wide: number, length: number): number {
  const q = diameter / wide;
  const slope = (wide - diameter) / (2 * length);
  return ((creepingTube * length * (q + q * q + q ** 3)) / (3 * diameter)) * (1 + slope * slope);
}

/** The 45° chamfer that stands for an edge, or the chamfer itself: depth and mouth diameter. */
function asChamfer(edge: HoleEdge | undefined, diameter: number): { depth: number; mouth: number } {
  const part = edge?.kind === 'rounded' ? roundAsChamfer : 1;
  return { depth: part * edgeDepth(edge), mouth: diameter + 2 * part * edgeWidening(edge) };
}

/** A straight hole with its edges, for flow in at one and out at the other. */
function edgedHole(
  diameter: number,
  thickness: number,
  inlet: HoleEdge | undefined,
  outlet: HoleEdge | undefined,
): LaminarHole {
  const entry = asChamfer(inlet, diameter);
  const exit = asChamfer(outlet, diameter);
  let creepingNumber = (creepingTube * (thickness - entry.depth - exit.depth)) / diameter;
  for (const { depth, mouth } of [entry, exit]) {
    creepingNumber += creepingEnd(diameter, mouth);
    if (depth > 0) creepingNumber += creepingCone(diameter, mouth, depth);
  }
  const entryWidening = 1 - (diameter / entry.mouth) ** 2;
  const exitWidening = 1 - (diameter / exit.mouth) ** 2;
  return {
    diameter,
    creepingNumber,
    lengthRatio: thickness / diameter,
    exit: 1 - 0.16 * exitWidening,
    development: developedExcessLoss * (1 - 0.3 * entryWidening),
    contraction: freeJetLoss * (1 - entryWidening) ** 2,
    onset: sharpOnset * (exit.mouth / diameter) * (entry.mouth / diameter) ** 0.15,
  };
}

/**
 * Reynolds number times the tangent of the half angle at which the jet leaves the wall of a widening cone; laminar flow stands only a
 * slow widening. From our numerical reference.
 */
const separationNumber = 50;

/** A tapered hole, for flow in at one diameter and out at the other. */
function conicalHole(thickness: number, inlet: number, outlet: number): LaminarHole {
  const diameter = Math.min(inlet, outlet);
  const creepingNumber =
    creepingEnd(diameter, inlet) +
    creepingEnd(diameter, outlet) +
    creepingCone(diameter, Math.max(inlet, outlet), thickness);
  const narrowing = diameter / inlet;
  const widening = diameter / outlet;
  return {
    diameter,
    creepingNumber,
    lengthRatio: thickness / diameter,
    exit: widening ** 4,
    development: developedExcessLoss * narrowing ** 2.5,
    contraction: freeJetLoss * narrowing ** 4,
    onset: sharpOnset / widening ** 2,
    ...(outlet > inlet
      ? {
          separation: {
            loss: 1 - widening ** 4,
            reynoldsNumber: (separationNumber * 2 * thickness) / (outlet - inlet),
          },
        }
      : {}),
  };
}

/** A hole for flow in one direction. */
function laminarHole(
  diameter: number,
  shape: HoleShape,
  thickness: number,
  towardsShaft: boolean,
): LaminarHole {
  switch (shape.kind) {
    case 'straight':
      return towardsShaft
        ? edgedHole(diameter, thickness, shape.blindEdge, shape.shaftEdge)
        : edgedHole(diameter, thickness, shape.shaftEdge, shape.blindEdge);
    case 'conical':
      return towardsShaft
        ? conicalHole(thickness, diameter, shape.shaftSideDiameter)
        : conicalHole(thickness, shape.shaftSideDiameter, diameter);
    case 'stepped': {
      const blind = { diameter, length: thickness - shape.shaftSideLength };
      const shaft = { diameter: shape.shaftSideDiameter, length: shape.shaftSideLength };
      return towardsShaft ? steppedHole(blind, shaft) : steppedHole(shaft, blind);
    }
    case 'slot':
      return slotHole(diameter, shape.travel, thickness);
  }
}

/**
 * Resistance of a hole that is not straight and sharp. Sizes are not checked here.
 *
 * @param diameter - of the group: at the blind side of a tapered or stepped hole, width of a slot [m]
 * @param shape - its shape
 * @param thickness - of the piston [m]
 * @param fluid - density [kg/m³] and kinematic viscosity [m²/s]
 */
export function shapedHoleResistance(
  diameter: number,
  shape: HoleShape,
  thickness: number,
  fluid: FluidState,
): HoleResistance {
  const bind = (towardsShaft: boolean) =>
    laminarHoleResistance(laminarHole(diameter, shape, thickness, towardsShaft), fluid);
  return twoWayResistance(bind(true), bind(false));
}
