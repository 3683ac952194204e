import { requireNotNegative, requirePositive, requireWithin } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { requireShape, type Shape } from '../../base/shape.js';

/**
 * The inside of a shock body: what the oil, the gas, the piston and the shaft share.
 *
 * @public
 */
export interface ShockChamber {
  /** Bore of the body [m], above the shaft diameter. */
  readonly bore: number;
  /** Shaft diameter [m], above 0. */
  readonly shaftDiameter: number;
  /** Stroke from full extension to the bump stop [m], above 0. */
  readonly stroke: number;
  /** Inner length from the seal seat to the rim under the cap [m], at least the stroke and the shaft inside. */
  readonly length: number;
  /** Hollow of the cap above the rim [m³], with whatever sits in it; 0 or more. */
  readonly capVolume: number;
  /** Solid volume of piston, nut and spacers [m³], 0 or more. */
  readonly solidVolume: number;
  /** Shaft between the seal seat and the piston at full extension [m], the height of the droop spacers; 0 or more. */
  readonly shaftInside: number;
}

/** Form of {@link ShockChamber}. */
export const shockChamberShape: Shape = {
  bore: 'm',
  shaftDiameter: 'm',
  stroke: 'm',
  length: 'm',
  capVolume: 'm³',
  solidVolume: 'm³',
  shaftInside: 'm',
};

/** Cross-section of the shaft [m²]. */
export function shaftCrossSection(chamber: Pick<ShockChamber, 'shaftDiameter'>): number {
  return (Math.PI / 4) * chamber.shaftDiameter ** 2;
}

/**
 * Volume of the empty chamber [m³], cap included.
 *
 * @param chamber - sizes that fit into each other
 * @public
 */
export function chamberVolume(chamber: ShockChamber): number {
  requireShape({ chamber }, { chamber: shockChamberShape });
  return (Math.PI / 4) * chamber.bore ** 2 * chamber.length + chamber.capVolume;
}

/**
 * Volume of shaft inside the chamber [m³] at a position.
 *
 * @param chamber - sizes that fit into each other
 * @param position - how far the shaft is pushed in from full extension [m], 0 to the stroke
 * @public
 */
export function shaftVolumeInside(chamber: ShockChamber, position: number): number {
  requireShape({ chamber, position }, { chamber: shockChamberShape, position: 'm' });
  return shaftCrossSection(chamber) * (chamber.shaftInside + position);
}

/**
 * Volume left for oil and gas [m³] at a position: the chamber less piston and shaft.
 *
 * @param chamber - sizes that fit into each other
 * @param position - how far the shaft is pushed in from full extension [m], 0 to the stroke
 * @throws InputError for a size outside its range, a position outside the stroke, or parts that leave no room
 * @public
 */
export function fluidRoom(chamber: ShockChamber, position: number): number {
  requireShape({ chamber }, { chamber: shockChamberShape });
  requireChamber(chamber);
  requireWithin(position, 0, chamber.stroke, 'position', 'm');
  return chamberVolume(chamber) - chamber.solidVolume - shaftVolumeInside(chamber, position);
}

/** Throws unless the sizes are in range and fit into each other. */
function requireChamber(chamber: ShockChamber): void {
  requirePositive(chamber.bore, 'chamber.bore', 'm');
  requirePositive(chamber.shaftDiameter, 'chamber.shaftDiameter', 'm');
  requirePositive(chamber.stroke, 'chamber.stroke', 'm');
  requirePositive(chamber.length, 'chamber.length', 'm');
  requireNotNegative(chamber.capVolume, 'chamber.capVolume', 'm³');
  requireNotNegative(chamber.solidVolume, 'chamber.solidVolume', 'm³');
  requireNotNegative(chamber.shaftInside, 'chamber.shaftInside', 'm');
  if (chamber.shaftDiameter >= chamber.bore) {
    throw new InputError({
      field: 'chamber.shaftDiameter',
      value: chamber.shaftDiameter,
      unit: 'm',
      accepted: `below the bore of ${chamber.bore}`,
    });
  }
  const shortest = chamber.stroke + chamber.shaftInside;
  if (chamber.length < shortest) {
    throw new InputError({
      field: 'chamber.length',
      value: chamber.length,
      unit: 'm',
      accepted: `at least stroke and shaft inside, ${shortest}`,
    });
  }
  const free = chamberVolume(chamber) - shaftVolumeInside(chamber, chamber.stroke);
  if (chamber.solidVolume >= free) {
    throw new InputError({
      field: 'chamber.solidVolume',
      value: chamber.solidVolume,
      unit: 'm³',
      accepted: `below the room of ${free} left at full compression`,
    });
  }
}
