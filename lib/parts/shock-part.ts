import type { SealFriction } from '../damper/seal-friction.js';
import type { ShockLengths } from '../fill/length/shock-length.js';
import type { GasSide } from '../gas/compensator.js';

/**
 * Friction of the seals as an interval: exact where it was given, wide where it is a guess.
 *
 * @public
 */
export interface SealInterval {
  readonly low: SealFriction;
  readonly typical: SealFriction;
  readonly high: SealFriction;
  /** Whether the file gives it; the interval then has no width. */
  readonly measured: boolean;
}

/**
 * Kind of what makes room for the shaft.
 *
 * @public
 */
export type CompensatorKind = 'air-pocket' | 'bladder' | 'vented-bladder' | 'foam' | 'emulsion' | 'none';

/**
 * What makes room for the shaft, as far as the parts file says.
 *
 * @public
 */
export interface CompensatorPart {
  readonly kind: CompensatorKind;
  /** Air of the pocket or behind the bladder as the cap is closed, or the whole foam [m³]. */
  readonly volume?: number;
  /** Pressure that walls add per volume taken [Pa/m³]. */
  readonly stiffness?: number;
  /** Part of a foam, or of oil and air together, that is gas. */
  readonly gasFraction?: number;
  /** Side of the piston on which it sits; the blind side where left out. */
  readonly side?: GasSide;
  /** Polytropic exponent of a stroke; that of a pocket of its size where left out. */
  readonly exponent?: number;
  /** Absolute pressure at which a cavity opens [Pa]; 0 where left out. */
  readonly airReleasePressure?: number;
}

/**
 * How the shock was closed, as far as the parts file says.
 *
 * @public
 */
export interface ClosingPart {
  /** How far the shaft was pushed in [m]. */
  readonly position?: number;
  /** Temperature of oil and gas [K]. */
  readonly temperature?: number;
  /** Absolute pressure outside [Pa]. */
  readonly ambientPressure?: number;
  /** Air left in the oil as bubbles [m³]. */
  readonly freeAir?: number;
  /** How often it was bled, 0 or more. */
  readonly bleeds?: number;
  /** Oil poured in [m³]. */
  readonly poured?: number;
  /** Oil that left again after the body was full to the rim with the shaft fully out [m³]. */
  readonly drawnOff?: number;
}

/**
 * A shock body with its shaft and what makes room for it, of the parts file.
 *
 * @public
 */
export interface ShockPart {
  readonly name: string;
  /** Bore [m]. */
  readonly bore: number;
  /** Shaft diameter [m]. */
  readonly shaftDiameter: number;
  /** Stroke [m]. */
  readonly stroke: number;
  /** Oil that stays in the closed shock [m³], where the file says so. */
  readonly oilVolume?: number;
  /** Friction of the seals, a guess where the file does not give it. */
  readonly seal: SealInterval;
  /** The inside of the body, where the file says so. */
  readonly inside?: ShockInside;
  /** What makes room for the shaft, where the file says so. */
  readonly compensator?: CompensatorPart;
  /** How it was closed, where the file says so. */
  readonly closing?: ClosingPart;
  /** Lengths from eyelet to eyelet, where the file says so. */
  readonly lengths?: ShockPartLengths;
}

/**
 * The inside of a shock body, of the parts file.
 *
 * @public
 */
export interface ShockInside {
  /** From the seal seat to the rim under the cap [m]. */
  readonly length: number;
  /** Hollow of the cap above the rim, with whatever sits in it [m³]. */
  readonly capVolume: number;
  /** Solid volume of piston, nut and spacers [m³]; that of the piston alone where the file leaves it out. */
  readonly solidVolume?: number;
}

/**
 * The lengths of a shock, of the parts file.
 *
 * @public
 */
export type ShockPartLengths = Omit<ShockLengths, 'pistonTravel'> & {
  /** Free travel of the piston inside [m]; the inner length less the piston where the file leaves it out. */
  readonly pistonTravel?: number;
};
