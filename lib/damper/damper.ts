import { requirePositive, requireWithin } from '../base/checks.js';
import { InputError } from '../base/input-error.js';
import type { Piston } from '../flow/geometry/piston.js';
import { type GasSide, requireGasSide } from './gas.js';
import { requireSealFriction, type SealFriction } from './seal-friction.js';

/**
 * One shock absorber without its spring.
 *
 * @public
 */
export interface Damper {
  /** Bore of the body [m], above the piston diameter. */
  readonly bore: number;
  /** Shaft diameter [m], below the piston diameter. */
  readonly shaftDiameter: number;
  /** Stroke from full extension to the bump stop [m], above 0. */
  readonly stroke: number;
  readonly piston: Piston;
  readonly gas: GasSide;
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

/** Throws unless sizes fit into each other. The piston and its gap are checked where the flow is bound. */
export function requireDamper(damper: Damper): void {
  requirePositive(damper.bore, 'bore', 'm');
  requirePositive(damper.shaftDiameter, 'shaftDiameter', 'm');
  requirePositive(damper.stroke, 'stroke', 'm');
  if (damper.shaftDiameter >= damper.piston.diameter) {
    throw new InputError({
      field: 'shaftDiameter',
      value: damper.shaftDiameter,
      unit: 'm',
      accepted: `below the piston diameter of ${damper.piston.diameter}`,
    });
  }
  requireGasSide(damper.gas);
  requireSealFriction(damper.seal);
}

/** Cross-section of the shaft [m²]. */
export function shaftArea(damper: Pick<Damper, 'shaftDiameter'>): number {
  return (Math.PI / 4) * damper.shaftDiameter ** 2;
}

/** Throws unless the position lies in the stroke. */
export function requirePosition(position: number, stroke: number): void {
  requireWithin(position, 0, stroke, 'position', 'm');
}
