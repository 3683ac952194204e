import { requireFinite, requireNotNegative, requirePositive, requireWithin } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { optional, type Shape } from '../../base/shape.js';
import type { Cushion } from './contact.js';
import { cushionShape } from './contact.js';

/**
 * One corner of the car: body and wheel, held apart by shock and spring.
 *
 * @public
 */
export interface Corner {
  /** Part of the body that this corner carries [kg], above 0. */
  readonly sprungMass: number;
  /** Wheel, hub and half the arm [kg], above 0. */
  readonly wheelMass: number;
  /** Shaft travel over wheel travel, above 0 to 2; constant. */
  readonly motionRatio: number;
  /** Rate at the shock [N/m], above 0. */
  readonly springRate: number;
  /** How far the spring is pressed at full extension [m], 0 or more. */
  readonly springPreload: number;
  readonly tyre: Cushion;
  readonly bumpStop: Cushion & {
    /** Travel at which it is touched [m], above 0 to the stroke. */
    readonly from: number;
  };
  /** Touched at full extension. */
  readonly droopStop: Cushion;
  /** Height of the chassis over flat ground at full extension, wheel just touching [m], above 0; for the slap of the chassis. */
  readonly clearance?: number;
}

/** Form of {@link Corner}. */
export const cornerShape: Shape = {
  sprungMass: 'kg',
  wheelMass: 'kg',
  motionRatio: '',
  springRate: 'N/m',
  springPreload: 'm',
  tyre: cushionShape,
  bumpStop: { stiffness: 'N/m', damping: 'N·s/m', progression: optional('N/m³'), from: 'm' },
  droopStop: cushionShape,
  clearance: optional('m'),
};

/** Throws unless masses, rates and stops are in their ranges. */
export function requireCorner(corner: Corner, stroke: number): void {
  requirePositive(corner.sprungMass, 'sprungMass', 'kg');
  requirePositive(corner.wheelMass, 'wheelMass', 'kg');
  requirePositive(corner.motionRatio, 'motionRatio', '');
  requireWithin(corner.motionRatio, 0, 2, 'motionRatio', '');
  requirePositive(corner.springRate, 'springRate', 'N/m');
  requireFinite(corner.springPreload, 'springPreload', 'm');
  requireNotNegative(corner.springPreload, 'springPreload', 'm');
  requireCushion(corner.tyre, 'tyre');
  requireCushion(corner.bumpStop, 'bumpStop');
  requireCushion(corner.droopStop, 'droopStop');
  const { from } = corner.bumpStop;
  requirePositive(from, 'bumpStop.from', 'm');
  if (from > stroke) {
    throw new InputError({
      field: 'bumpStop.from',
      value: from,
      unit: 'm',
      accepted: `at most the stroke of ${stroke}`,
    });
  }
  if (corner.clearance !== undefined) requirePositive(corner.clearance, 'clearance', 'm');
}

function requireCushion(cushion: Cushion, field: string): void {
  requirePositive(cushion.stiffness, `${field}.stiffness`, 'N/m');
  requireNotNegative(cushion.damping, `${field}.damping`, 'N·s/m');
  requireNotNegative(cushion.progression ?? 0, `${field}.progression`, 'N/m³');
}
