import { requireFinite, requirePositive, requireWithin } from '../../base/checks.js';
import { requireShape } from '../../base/shape.js';
import { onsetOfInertia } from './bound-loss.js';
import { sharpOnset } from './loss-shares.js';

/**
 * What makes the momentum of the jet out of a hole, for flow in one direction. Lengths and speeds are those of the narrowest section.
 *
 * @public
 */
export interface Jet {
  /** Area of the narrowest section over that of the exit which the jet fills while it follows the wall; 1 where nothing widens. */
  readonly attachedShare: number;
  /** What the jet carries once it has let go, in parts of what it would carry out of a straight hole; 1 by default, more for one that narrows behind the edge. */
  readonly separatedShare?: number;
  /** Reynolds number at which a widening exit has lost half of its hold on the jet, above 0, and how suddenly. */
  readonly separationNumber: number;
  readonly separationPower: number;
  /** Part that slow oil feels of the missing pressure at the face, the same both ways; 1 for a sharp exit, less for a wider mouth. */
  readonly creepingShare: number;
  /** Momentum over `ρ V² A` of its profile, between 4/3 (parabolic) and 1 (flat). */
  readonly momentum: number;
}

// Fitted to the forces of our own solutions (docs/piston.md).
const jetMomentum = 1.2;
/** The same before inertia sets in, as seen by the face behind. */
const slowMomentum = 0.644;
const perOnset = 1 / sharpOnset;
/** In creeping flow the mean pressure on the face behind lies below that far away by this, in `μ V/d` times the share of the bore. */
const creepingDeficit = 5.5;

/** The jet of an exit that does not widen. */
export const straightJet: Jet = {
  attachedShare: 1,
  separationNumber: 1,
  separationPower: 1,
  creepingShare: 1,
  momentum: jetMomentum,
};

const jetShape = {
  attachedShare: '',
  separationNumber: '',
  separationPower: '',
  creepingShare: '',
  momentum: '',
};

/**
 * Flow of momentum that a hole's jet carries off, over density and narrowest area [m²/s²]: `m V² + c ν V/d`.
 * {@link specificRecoil} makes the recoil of it: the part of the pressure on the face behind that a piston does not feel as force.
 *
 * @param jet - of the direction of flow
 * @param speed - mean speed in the narrowest section [m/s], 0 or more
 * @param diameter - narrowest diameter [m], above 0
 * @param kinematicViscosity - [m²/s], above 0
 * @example
 * ```ts
 * const jet = { attachedShare: 1, separationNumber: 100, separationPower: 2, creepingShare: 1, momentum: 4 / 3 };
 * jetMomentumFlow(jet, 0, 0.001, 350e-6); // 0: no flow, no momentum
 * jetMomentumFlow(jet, 10, 0.001, 1e-8); // 133.3: m V² of a fast parabolic jet, by hand
 * ```
 * @public
 */
export function jetMomentumFlow(
  jet: Jet,
  speed: number,
  diameter: number,
  kinematicViscosity: number,
): number {
  requireShape(
    { jet, speed, diameter, kinematicViscosity },
    { jet: jetShape, speed: 'm/s', diameter: 'm', kinematicViscosity: 'm²/s' },
  );
  requirePositive(diameter, 'diameter', 'm');
  requirePositive(kinematicViscosity, 'kinematicViscosity', 'm²/s');
  if (jet.separatedShare !== undefined) requireFinite(jet.separatedShare, 'separatedShare', '');
  requirePositive(jet.separationNumber, 'separationNumber', '');
  requireWithin(jet.separationPower, 0, 20, 'separationPower', '');
  return momentumOfJet(jet, speed, diameter / kinematicViscosity, kinematicViscosity / diameter);
}

/**
 * {@link jetMomentumFlow} of what was checked before.
 *
 * @param reynoldsPerSpeed - `d/ν` [s/m], and its inverse [m/s]: one division each saved where a hole is asked again and again
 */
export function momentumOfJet(
  jet: Jet,
  speed: number,
  reynoldsPerSpeed: number,
  viscousSpeed: number,
): number {
  const reynoldsNumber = speed * reynoldsPerSpeed;
  const onset = onsetOfInertia(reynoldsNumber * perOnset);
  const { attachedShare, momentum } = jet;
  let factor = slowMomentum + (momentum - slowMomentum) * onset;
  // What a widening exit leaves of the momentum, while the jet fills it and once it has let go.
  if (attachedShare < 1 && reynoldsNumber > 0) {
    const { separationNumber, separationPower, separatedShare = 1 } = jet;
    const held = (separationNumber / reynoldsNumber) ** separationPower;
    factor *= attachedShare + (separatedShare - attachedShare) / (1 + held);
  }
  return speed * (factor * speed + creepingDeficit * jet.creepingShare * viscousSpeed);
}

/** {@link jetMomentumFlow} over the speed, as that tends to zero [m/s]. */
export function creepingMomentum(jet: Jet, diameter: number, kinematicViscosity: number): number {
  return (creepingDeficit * jet.creepingShare * kinematicViscosity) / diameter;
}

/**
 * Recoil of the jets per density and area of their holes [m²/s²], 0 or more: `m V² + c ν V/d − ½ V U`. The force on a piston is its
 * area times the pressure drop to the face behind (from the total pressure before it), less this times density and area.
 *
 * @param momentumFlow - from {@link jetMomentumFlow} [m²/s²]
 * @param speed - mean speed in the holes [m/s], 0 or more
 * @param boreSpeed - mean speed of the oil in the bore as seen from the piston [m/s], 0 or more
 * @example
 * ```ts
 * specificRecoil(5, 2, 0.5); // 4.5: 5 − ½ · 2 · 0.5, by hand
 * ```
 * @public
 */
export function specificRecoil(momentumFlow: number, speed: number, boreSpeed: number): number {
  requireFinite(momentumFlow, 'momentumFlow', 'm²/s²');
  requireFinite(speed, 'speed', 'm/s');
  requireFinite(boreSpeed, 'boreSpeed', 'm/s');
  return recoilOfJet(momentumFlow, speed, boreSpeed);
}

/** {@link specificRecoil} of what was checked before. */
export function recoilOfJet(momentumFlow: number, speed: number, boreSpeed: number): number {
  return Math.max(momentumFlow - 0.5 * speed * boreSpeed, 0);
}
