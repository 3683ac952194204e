import { requireNotNegative, requirePositive, requireWithin } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { madeWith, requireShape, type Shape } from '../../base/shape.js';

/**
 * The lengths of a shock, measured along its axis.
 *
 * @public
 */
export interface ShockLengths {
  /** Centre of the upper eyelet to the face of the body where the shaft comes out [m], above 0. */
  readonly bodyEyelet: number;
  /** Shaft from the piston to the shoulder of the rod end [m], above 0. */
  readonly shaft: number;
  /** Seat on which the piston stops to the face where the shaft comes out [m]: seals and their carrier; 0 or more. */
  readonly sealStack: number;
  /** Shoulder of the rod end to the centre of the lower eyelet [m], 0 or more. */
  readonly rodEnd: number;
  /** Droop spacers on the shaft inside the body [m], 0 or more. */
  readonly innerSpacers: number;
  /** Bump stop or spacers on the shaft outside the body [m], 0 or more. */
  readonly bumpStop: number;
  /** Free travel of the piston inside, from its seat to the cap or bladder, without spacers [m], above 0. */
  readonly pistonTravel: number;
}

/** Form of {@link ShockLengths}. */
export const shockLengthsShape: Shape = {
  bodyEyelet: 'm',
  shaft: 'm',
  sealStack: 'm',
  rodEnd: 'm',
  innerSpacers: 'm',
  bumpStop: 'm',
  pistonTravel: 'm',
};

/**
 * What the lengths come to.
 *
 * @public
 */
export interface ShockLength {
  /** Shaft outside the body at full extension [m]. */
  readonly exposedExtended: number;
  /** Eyelet to eyelet at full extension [m]. */
  readonly extended: number;
  /** Eyelet to eyelet at full compression [m]. */
  readonly compressed: number;
  /** Stroke between the two [m]. */
  readonly usableStroke: number;
  /** What stops it at full compression: the bump stop outside or the piston inside. */
  readonly stoppedBy: 'bump stop' | 'piston';
}

/**
 * Eyelet to eyelet lengths and usable stroke of a shock.
 *
 * @param lengths - in metres, each in its range
 * @throws InputError for a length outside its range, or lengths that leave no stroke
 * @public
 */
export function shockLength(lengths: ShockLengths): ShockLength {
  requireShape({ lengths }, { lengths: shockLengthsShape });
  requirePositive(lengths.bodyEyelet, 'bodyEyelet', 'm');
  requirePositive(lengths.shaft, 'shaft', 'm');
  requirePositive(lengths.pistonTravel, 'pistonTravel', 'm');
  for (const name of ['sealStack', 'rodEnd', 'innerSpacers', 'bumpStop'] as const) {
    requireNotNegative(lengths[name], name, 'm');
  }
  const exposedExtended = lengths.shaft - lengths.sealStack - lengths.innerSpacers;
  const outside = exposedExtended - lengths.bumpStop;
  const inside = lengths.pistonTravel - lengths.innerSpacers;
  const usableStroke = Math.min(outside, inside);
  if (!(outside > 0)) {
    const accepted = `longer than seals, spacers and bump stop together, ${lengths.sealStack + lengths.innerSpacers + lengths.bumpStop}`;
    throw new InputError({ field: 'shaft', value: lengths.shaft, unit: 'm', accepted });
  }
  if (!(inside > 0)) {
    const accepted = `below the piston travel of ${lengths.pistonTravel}`;
    throw new InputError({ field: 'innerSpacers', value: lengths.innerSpacers, unit: 'm', accepted });
  }
  const extended = lengths.bodyEyelet + exposedExtended + lengths.rodEnd;
  return {
    exposedExtended,
    extended,
    compressed: extended - usableStroke,
    usableStroke,
    stoppedBy: outside <= inside ? 'bump stop' : 'piston',
  };
}

/**
 * Shaft outside the body at ride height [m].
 *
 * @param length - from {@link shockLength}
 * @param position - how far the shaft is pushed in at ride height [m], 0 to the usable stroke
 * @throws InputError for a position outside the usable stroke
 * @public
 */
export function shaftExposed(length: ShockLength, position: number): number {
  requireShape({ length }, { length: madeWith('exposedExtended') });
  requireWithin(position, 0, length.usableStroke, 'position', 'm');
  return length.exposedExtended - position;
}

/**
 * How unlike the two shocks of an axle are.
 *
 * @public
 */
export interface LengthMismatch {
  /** Left less right [m]. */
  readonly difference: number;
  /** The same at the wheels, as droop [m]. */
  readonly droopDifference: number;
  /** Whether the difference is accepted. */
  readonly withinTolerance: boolean;
}

/**
 * Compares the extended lengths of a left and a right shock.
 *
 * @param left - eyelet to eyelet at full extension [m], above 0
 * @param right - the same of the other side [m], above 0
 * @param axle - largest difference that is accepted [m], 0 or more; shaft travel per wheel travel, above 0
 * @throws InputError for a value outside its range
 * @public
 */
export function lengthMismatch(
  left: number,
  right: number,
  axle: { readonly tolerance: number; readonly motionRatio: number },
): LengthMismatch {
  requireShape({ axle }, { axle: { tolerance: '', motionRatio: '' } });
  requirePositive(left, 'left', 'm');
  requirePositive(right, 'right', 'm');
  requireNotNegative(axle.tolerance, 'tolerance', 'm');
  requirePositive(axle.motionRatio, 'motionRatio', '');
  const difference = left - right;
  return {
    difference,
    droopDifference: difference / axle.motionRatio,
    withinTolerance: Math.abs(difference) <= axle.tolerance,
  };
}
