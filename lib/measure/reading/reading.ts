import { requireNotNegative, requirePositive } from '../../base/checks.js';
import { byKind, listOf, oneOf, type Shape } from '../../base/shape.js';
/**
 * How a time was taken: by hand, or by counting frames of a film.
 *
 * @public
 */
export type Timing = 'hand' | 'frames';

/**
 * Repeated times of one weight that moves the shaft.
 *
 * @public
 */
export interface DropReading {
  readonly kind: 'drop';
  /** Mass that hangs on the shaft or stands on it, with shaft and rod end [kg], above 0. */
  readonly mass: number;
  /** The times [s], each above 0, 1 or more of them. */
  readonly times: readonly number[];
  readonly timing: Timing;
  /** Standard uncertainty of one time [s], above 0, without what all times by hand share. */
  readonly uncertainty: number;
  /** Temperature of the oil by the thermometer [K], above 0. */
  readonly temperature: number;
  /** Where the timing begins [m from full extension], 0 or more. */
  readonly from: number;
  /** Where it ends [m from full extension], 0 or more, not `from`: below it where the weight pulls the shaft out. */
  readonly to: number;
}

/** Form of {@link DropReading}. */
export const dropReadingShape: Shape = {
  kind: oneOf('drop'),
  mass: 'kg',
  times: listOf('s'),
  timing: oneOf('hand', 'frames'),
  uncertainty: 's',
  temperature: 'K',
  from: 'm from full extension',
  to: 'm from full extension',
};

/**
 * What a scale shows while the shaft moves slowly over a place.
 *
 * @public
 */
export interface ScaleReading {
  readonly kind: 'scale';
  /** Where [m from full extension], 0 or more. */
  readonly position: number;
  /** Whether the shaft is pushed in or let out. */
  readonly moving: 'in' | 'out';
  /** Temperature of shock and air by the thermometer [K], above 0. */
  readonly temperature: number;
  /** What the scale shows [N]; negative where the shaft has to be pulled. */
  readonly force: number;
  /** Standard uncertainty [N], above 0. */
  readonly uncertainty: number;
}

/** Form of {@link ScaleReading}. */
export const scaleReadingShape: Shape = {
  kind: oneOf('scale'),
  position: 'm from full extension',
  moving: oneOf('in', 'out'),
  temperature: 'K',
  force: 'N',
  uncertainty: 'N',
};

/**
 * The viscosity of the oil by itself: a falling ball, a flow cup, a laboratory.
 *
 * @public
 */
export interface ViscosityReading {
  readonly kind: 'viscosity';
  /** Kinematic viscosity [m²/s], above 0. */
  readonly kinematicViscosity: number;
  /** Temperature of the oil by the thermometer [K], above 0. */
  readonly temperature: number;
  /** Standard uncertainty over the value, above 0. */
  readonly relativeUncertainty: number;
}

/** Form of {@link ViscosityReading}. */
export const viscosityReadingShape: Shape = {
  kind: oneOf('viscosity'),
  kinematicViscosity: 'm²/s',
  temperature: 'K',
  relativeUncertainty: '',
};

/**
 * The diameter of a hole, by pin gauge or drill shank.
 *
 * @public
 */
export interface HoleReading {
  readonly kind: 'hole';
  /** Diameter of the first group of holes [m], above 0. */
  readonly diameter: number;
  /** Standard uncertainty [m], above 0. */
  readonly uncertainty: number;
}

/** Form of {@link HoleReading}. */
export const holeReadingShape: Shape = { kind: oneOf('hole'), diameter: 'm', uncertainty: 'm' };

/**
 * The density of the oil, by weighing a known volume.
 *
 * @public
 */
export interface DensityReading {
  readonly kind: 'density';
  /** Density [kg/m³], above 0. */
  readonly density: number;
  /** Temperature of the oil by the thermometer [K], above 0. */
  readonly temperature: number;
  /** Standard uncertainty [kg/m³], above 0. */
  readonly uncertainty: number;
}

/** Form of {@link DensityReading}. */
export const densityReadingShape: Shape = {
  kind: oneOf('density'),
  density: 'kg/m³',
  temperature: 'K',
  uncertainty: 'kg/m³',
};

/**
 * A force at a speed, from a dyno.
 *
 * @public
 */
export interface ForceReading {
  readonly kind: 'force';
  /** Shaft speed [m/s], compression positive, not 0. */
  readonly speed: number;
  /** Where [m from full extension], 0 or more. */
  readonly position: number;
  /** Temperature of the oil by the thermometer [K], above 0. */
  readonly temperature: number;
  /** When [s], for the drift of the sensor; 0 where none is fitted. */
  readonly time: number;
  /** Force of the shock on the sensor [N], positive where it pushes the shaft out. */
  readonly force: number;
  /** Standard uncertainty [N], above 0. */
  readonly uncertainty: number;
}

/** Form of {@link ForceReading}. */
export const forceReadingShape: Shape = {
  kind: oneOf('force'),
  speed: 'm/s',
  position: 'm from full extension',
  temperature: 'K',
  time: 's',
  force: 'N',
  uncertainty: 'N',
};

/**
 * One thing that was measured.
 *
 * @public
 */
export type Reading =
  | DropReading
  | ScaleReading
  | ViscosityReading
  | HoleReading
  | DensityReading
  | ForceReading;

/** Form of {@link Reading}. */
export const readingShape: Shape = byKind({
  drop: dropReadingShape,
  scale: scaleReadingShape,
  viscosity: viscosityReadingShape,
  hole: holeReadingShape,
  density: densityReadingShape,
  force: forceReadingShape,
});

/** The numbers and words of a reading as one text; lists are left out. */
export function readingText(reading: Reading): string {
  return Object.entries(reading)
    .filter(([, value]) => typeof value === 'number' || typeof value === 'string')
    .join(' ');
}

/**
 * Standard uncertainty of a time between two frames of a film [s]: each end lies anywhere between two frames, `1/(f √6)`, and the eye has to
 * judge which frame it is.
 *
 * @param framesPerSecond - of the film [1/s], above 0
 * @param judging - standard uncertainty of that judgement [s], 0 or more; one to two frames are usual (common practice, no source)
 * @see JCGM 100:2008 (GUM), 4.3.7: two rectangular errors
 * @public
 */
export function frameUncertainty(framesPerSecond: number, judging = 0): number {
  requirePositive(framesPerSecond, 'framesPerSecond', '1/s');
  requireNotNegative(judging, 'judging', 's');
  return Math.hypot(1 / (framesPerSecond * Math.sqrt(6)), judging);
}

/**
 * Usual standard uncertainties, all common practice without a source. Put in your own where you know better.
 *
 * @public
 */
export const usualUncertainty = {
  /** One time by hand [s]. */
  stopwatch: 0.1,
  /** One time on a film of 60 frames a second [s]. */
  film60: 0.02,
  /** One time on a film of 240 frames a second [s]. */
  film240: 0.008,
  /** What all times by hand share [s]. */
  handDelay: 0.05,
  /** A thermometer [K]. */
  thermometer: 0.5,
  /** A kitchen scale [N], 2 g. */
  scale: 0.02,
  /** A falling ball, over the value. */
  fallingBall: 0.025,
  /** A flow cup, over the value. */
  flowCup: 0.04,
  /** A pin gauge [m]. */
  pinGauge: 5e-6,
  /** The shank of a drill [m]. */
  drillShank: 17.5e-6,
  /** A weighed volume of oil, over the value. */
  weighedOil: 0.005,
} as const;
