import { refuse, requirePositive, requireRecord, requireWithin } from '../base/checks.js';
import type { Piston } from '../flow/geometry/piston.js';
import { requirePiston } from '../flow/piston/piston.js';
import { type Gas, requireGas } from '../gas/gas.js';
import { requireSealFriction, type SealFriction } from './seal-friction.js';

/**
 * One shock absorber without its spring.
 *
 * @public
 */
export interface Damper {
  /** Bore of the body [m], above the piston diameter and up to 0.1. */
  readonly bore: number;
  /** Shaft diameter [m], below the piston diameter. */
  readonly shaftDiameter: number;
  /** Stroke from full extension to the bump stop [m], above 0 and up to 0.5. */
  readonly stroke: number;
  readonly piston: Piston;
  /** What makes room for the shaft. */
  readonly gas: Gas;
  readonly seal: SealFriction;
}

/**
 * Where a damper stands and how fast it moves. One sign convention holds everywhere: compression is positive, for position,
 * speed and flow; a positive force pushes the shaft out.
 *
 * @public
 */
export interface ShaftMotion {
  /** Shaft speed [m/s]; positive in compression (bump), negative in rebound. */
  readonly speed: number;
  /** How far the shaft is pushed in from full extension [m], 0 to the stroke. */
  readonly position: number;
}

/** Beyond these a number was given in millimetres: no scale model is so large [m]. */
const largestBore = 0.1;
const largestStroke = 0.5;

/**
 * Throws unless the sizes fit into each other and the gas makes room for the whole shaft. The gap is checked where its flow is bound.
 *
 * @param damper - sizes in m
 * @throws InputError that names the field
 * @example
 * ```ts
 * // model: of the example of damperModel
 * requireDamper({ ...shock, bore: 12 }); // throws: a bore of 12 m is one of 12 mm without its unit
 * ```
 * @public
 */
export function requireDamper(damper: Damper): void {
  requireRecord(damper, 'damper');
  const { bore, shaftDiameter, stroke, piston, gas, seal } = damper;
  requirePositive(bore, 'bore', 'm');
  requireWithin(bore, 0, largestBore, 'bore', 'm');
  requirePositive(shaftDiameter, 'shaftDiameter', 'm');
  requirePositive(stroke, 'stroke', 'm');
  requireWithin(stroke, 0, largestStroke, 'stroke', 'm');
  requirePiston(piston);
  if (shaftDiameter >= piston.diameter) {
    refuse(shaftDiameter, 'shaftDiameter', 'm', `below the piston diameter of ${piston.diameter}`);
  }
  requireGas(gas);
  requireGasForStroke(damper);
  requireSealFriction(seal);
}

/** Throws where the shaft locks before the end of its stroke, at the temperature of closing. */
function requireGasForStroke({ gas, shaftDiameter, stroke }: Damper): void {
  const volume = gas.rooms.reduce((sum, room) => sum + room.volume, 0);
  const needed = shaftArea({ shaftDiameter }) * stroke - gas.closing.displacedVolume;
  // Closed with nothing but oil and the shaft all the way in, it never goes further.
  if (volume > needed || (volume === 0 && needed <= 0)) return;
  refuse(
    volume,
    'gas.rooms',
    'm³',
    `more, all together, than the ${needed} that the shaft still takes from where the shock was closed to the end of its stroke: it locks there. Volumes in`,
  );
}

/** Cross-section of the shaft [m²]. */
export function shaftArea({ shaftDiameter }: Pick<Damper, 'shaftDiameter'>): number {
  return (Math.PI / 4) * shaftDiameter * shaftDiameter;
}

/** Throws unless it is a damper bound to a fluid. */
export function requireModel(model: { readonly damper: Damper }): void {
  // Asked for with each force, so that it looks at no more than it must.
  if (model?.constructor !== Object || !model.damper) refuse(model, 'model', '', 'of damperModel');
}

/** Throws unless the position lies in the stroke. */
export function requirePosition(position: number, stroke: number): void {
  requireWithin(position, 0, stroke, 'position', 'm');
}
