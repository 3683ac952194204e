import type { DayTemperature } from '../decisions/day/day-plan.js';
import type { Piston } from '../flow/geometry/piston.js';
import type { OilDefinition } from '../fluid/oil/oil-definition.js';
import type { DynoSetup } from '../measure/dyno/dyno-readings.js';
import type { RecordedCourse } from '../measure/dyno/read-course.js';
import type { DynoRecord } from '../measure/dyno/read-dyno.js';
import type { Reading } from '../measure/reading/reading.js';
import type { Corner } from '../motion/corner/corner.js';
import type { ShockPart } from './shock-part.js';

/**
 * An amount of money.
 *
 * @public
 */
export interface Price {
  readonly amount: number;
  /** Currency code of ISO 4217, for example `EUR`. */
  readonly currency: string;
}

/**
 * An oil of the parts file.
 *
 * @public
 */
export interface OilPart {
  readonly name: string;
  readonly definition: OilDefinition;
  /** What a bottle holds [m³] and costs, where the file says so. */
  readonly bottle?: { readonly volume: number; readonly price?: Price };
  /** What was taken for granted because the file does not say it, sentences for a person to read. */
  readonly assumptions?: readonly string[];
}

/**
 * A piston of the parts file.
 *
 * @public
 */
export interface PistonPart {
  readonly name: string;
  readonly piston: Piston;
}

/**
 * A spring of the parts file.
 *
 * @public
 */
export interface SpringPart {
  readonly name: string;
  /** Rate [N/m]. */
  readonly rate: number;
  /** Free length [m]. */
  readonly freeLength: number;
}

/**
 * An oil of the shop list, which says how it is sold.
 *
 * @public
 */
export type ShopOil = OilPart & { readonly bottle: NonNullable<OilPart['bottle']> };

/**
 * A shock timed with a stopwatch.
 *
 * @public
 */
export interface TimedShockPart {
  readonly name: string;
  /** Repeated times over the same travel under the same weight [s]. */
  readonly times: readonly number[];
  /** The build that it is one of; its parts say what was timed. */
  readonly build: Build;
}

/**
 * A dyno file, and how it was taken.
 *
 * @public
 */
export interface DynoPart {
  readonly record: DynoRecord;
  readonly setup: DynoSetup;
}

/**
 * What was measured on a shock, its oil or its piston.
 *
 * @public
 */
export interface MeasurementPart {
  /** Which of the shocks of the build, where the file says so. */
  readonly shock?: string;
  /** The build that was measured. */
  readonly build: Build;
  /** What came out, for `fitShock` of `dashpot/measure`; a scale gives two, a dyno none before the shock as stated is beside it. */
  readonly readings: readonly Reading[];
  /** What a dyno recorded, for `dynoReadings` of `dashpot/measure`. */
  readonly dyno?: DynoPart;
}

/**
 * Travel of a shaft against time as somebody recorded it.
 *
 * @public
 */
export interface RecordedStroke {
  /** Time of each row [s], from 0 on, rising. */
  readonly times: readonly number[];
  /** How far the shaft is in [m]. */
  readonly travels: readonly number[];
}

/**
 * How far sizes may be off, plus or minus: lengths [m], and what else has its unit beside it.
 *
 * @public
 */
export interface PartTolerances {
  readonly holeDiameter?: number;
  readonly holeTaper?: number;
  readonly thickness?: number;
  readonly bore?: number;
  readonly gap?: number;
  /** Viscosity against the label, relative: 0.05 stands for 5 %. */
  readonly viscosity?: number;
  /** Oil temperature [K]. */
  readonly temperature?: number;
  /** What the fill leaves for the gas [m³]. */
  readonly gasVolume?: number;
}

/**
 * The corner of a car that a shock carries.
 *
 * @public
 */
export type CornerOfCar = Pick<Corner, 'sprungMass' | 'motionRatio'>;

/**
 * What readings say of a build in place of what was stated.
 *
 * @public
 */
export interface MeasuredValues {
  /** Kinematic viscosity of its oil at 25 °C [m²/s]. */
  readonly viscosity: number;
  /** Diameter of its first holes over that stated. */
  readonly holes: number;
  /** Moving friction of its seals [N]. */
  readonly friction: number;
  /** Half of the interval of its damping, over the damping, 19 times of 20. */
  readonly doubt: number;
}

/**
 * One shock put together from parts of the file.
 *
 * @public
 */
export interface Build {
  readonly name: string;
  readonly shock: ShockPart;
  readonly piston: PistonPart;
  readonly oil: OilPart;
  readonly spring?: SpringPart;
  /** How many shocks of the car are built like this, 1 or more. */
  readonly quantity: number;
  /** How far the shaft is pushed in as the cap is closed [m], where the file says so. */
  readonly closeAt?: number;
  /** The corner of the car that it carries, where the file says so. */
  readonly corner?: CornerOfCar;
  /** The oil and its temperature [K] on which the shock damps as wanted, where the file says so. */
  readonly wanted?: { readonly oil: OilPart; readonly temperature: number };
  /** What was measured of it, where its oil, piston and seals are those and not as stated. */
  readonly measured?: MeasuredValues;
}

/**
 * A parts file, read, checked and in SI.
 *
 * @public
 */
export interface Parts {
  /** What the file says of itself, for example that its data are invented. */
  readonly about: string;
  /** What was taken for granted because the file does not say it, sentences for a person to read. */
  readonly assumptions: readonly string[];
  readonly oils: readonly OilPart[];
  readonly pistons: readonly PistonPart[];
  readonly shocks: readonly ShockPart[];
  readonly springs: readonly SpringPart[];
  readonly builds: readonly Build[];
  /** Bottles that could be bought, where the file lists some. */
  readonly shop?: readonly ShopOil[];
  /** Oil temperatures of a day in rising order of time, where the file lists some. */
  readonly day?: readonly DayTemperature[];
  /** Shocks timed with a stopwatch, where the file lists some. */
  readonly timed?: readonly TimedShockPart[];
  /** What was measured, where the file lists some. */
  readonly measurements?: readonly MeasurementPart[];
  /** How far sizes may be off, where the file says so. */
  readonly tolerances?: PartTolerances;
  /** A recording of the travel of a shaft, where the file has one. */
  readonly recordedStroke?: RecordedStroke;
  /** Height of the ground under a wheel, where the file has it. */
  readonly recordedGround?: RecordedCourse;
}
