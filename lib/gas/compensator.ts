import { requireNotNegative, requirePositive, requireWithin } from '../base/checks.js';
import { byKind, flag, oneOf, optional, type Shape } from '../base/shape.js';
import type { GasLayout } from './gas.js';
import type { GasRoom } from './gas-room.js';

/**
 * The side of the piston on which a compensator sits.
 *
 * @public
 */
export type GasSide = Exclude<GasLayout, 'emulsion'>;

/**
 * What makes room for the shaft that goes in.
 *
 * - `air-pocket`: air left under the cap; `volume` when the cap is closed
 * - `bladder`: a rubber cup or diaphragm; `volume` is the air behind it, `stiffness` what the rubber itself adds, and `vented` says
 *   that a hole in the cap keeps that air at the pressure outside
 * - `foam`: a closed-cell insert of `volume`, of which `gasFraction` is gas; `stiffness` is what its walls add
 * - `emulsion`: air beaten into the oil, `gasFraction` of the whole volume
 * - `none`: nothing; the oil locks as soon as the shaft goes in further than where the cap was closed
 *
 * Volumes [m³] and gas fractions above 0 (fractions below 1); stiffness is pressure per volume [Pa/m³], 0 or more, and
 * above 0 where vented. Air pocket, bladder and foam sit on the blind side of the piston unless `side` says otherwise.
 *
 * @public
 */
export type Compensator =
  | { readonly kind: 'air-pocket'; readonly volume: number; readonly side?: GasSide }
  | {
      readonly kind: 'bladder';
      readonly volume: number;
      readonly stiffness: number;
      readonly vented: boolean;
      readonly side?: GasSide;
    }
  | {
      readonly kind: 'foam';
      readonly volume: number;
      readonly gasFraction: number;
      readonly stiffness: number;
      readonly side?: GasSide;
    }
  | { readonly kind: 'emulsion'; readonly gasFraction: number }
  | { readonly kind: 'none' };

/** Form of {@link Compensator}. */
export const compensatorShape: Shape = byKind({
  'air-pocket': { volume: '', side: optional(oneOf('blind-side', 'shaft-side')) },
  bladder: { volume: '', stiffness: '', vented: flag, side: optional(oneOf('blind-side', 'shaft-side')) },
  foam: { volume: '', gasFraction: '', stiffness: '', side: optional(oneOf('blind-side', 'shaft-side')) },
  emulsion: { gasFraction: '' },
  none: {},
});

/** Throws unless each number of the compensator is in its range. */
export function requireCompensator(compensator: Compensator): void {
  if ('volume' in compensator) requirePositive(compensator.volume, 'compensator.volume', 'm³');
  if ('gasFraction' in compensator) {
    requirePositive(compensator.gasFraction, 'compensator.gasFraction', '');
    requireWithin(compensator.gasFraction, 0, 1 - Number.EPSILON, 'compensator.gasFraction', '');
  }
  if ('stiffness' in compensator) {
    requireNotNegative(compensator.stiffness, 'compensator.stiffness', 'Pa/m³');
    if (compensator.kind === 'bladder' && compensator.vented) {
      // A slack bladder under a vented cap would leave the pressure undefined once it is full.
      requirePositive(compensator.stiffness, 'compensator.stiffness', 'Pa/m³');
    }
  }
}

/** Room that the compensator takes from the oil when the cap is closed [m³]. */
export function compensatorVolume(compensator: Compensator, roomAtClosing: number): number {
  switch (compensator.kind) {
    case 'none':
      return 0;
    case 'emulsion':
      return compensator.gasFraction * roomAtClosing;
    default:
      return compensator.volume;
  }
}

/** Solid part of the compensator [m³], which never gives way: the walls of a foam. */
export function compensatorSolidVolume(compensator: Compensator): number {
  return compensator.kind === 'foam' ? (1 - compensator.gasFraction) * compensator.volume : 0;
}

/** The gas that gives way, as it is when the cap is closed. */
export function compensatorGas(compensator: Compensator, roomAtClosing: number): GasRoom | undefined {
  const volume = compensatorVolume(compensator, roomAtClosing) - compensatorSolidVolume(compensator);
  switch (compensator.kind) {
    case 'none':
      return undefined;
    case 'bladder':
      return { volume, stiffness: compensator.stiffness, vented: compensator.vented };
    case 'foam':
      return { volume, stiffness: compensator.stiffness, vented: false };
    default:
      return { volume, stiffness: 0, vented: false };
  }
}

/** Where the gas of a compensator is; where nothing makes room, the air left in the oil is under the cap. */
export function compensatorLayout(compensator: Compensator): GasLayout {
  if (compensator.kind === 'emulsion') return 'emulsion';
  return ('side' in compensator ? compensator.side : undefined) ?? 'blind-side';
}
