import type { Shape } from '../../base/shape.js';
/**
 * What may be unknown of a shock.
 *
 * @public
 */
export interface ShockState {
  /** Kinematic viscosity of the oil at 25 °C [m²/s], above 0. */
  readonly kinematicViscosity: number;
  /** Factor on the slope of the logarithm of the viscosity against 1/T: 1 as stated for the oil, above 0. */
  readonly temperatureSlope: number;
  /** Density of the oil at 25 °C [kg/m³], above 0. */
  readonly density: number;
  /** Diameter of the first group of holes [m], above 0; other groups are larger or smaller by as much as stated. */
  readonly holeDiameter: number;
  /** Radial gap between piston and bore [m], 0 or more. */
  readonly gap: number;
  /** Friction of the seals while the shaft moves [N]. */
  readonly friction: number;
  /** Absolute gas pressure when the shock was closed [Pa], above 0; that at full extension for a pocket stated so. */
  readonly gasPressure: number;
}

/**
 * Errors that all readings of one instrument share.
 *
 * @public
 */
export interface InstrumentState {
  /** How late the hand stops the watch more than it starts it [s]. */
  readonly handDelay: number;
  /** Error of the thermometer [K]: oil temperature less reading. */
  readonly thermometerError: number;
  /** What the scale shows without load [N]. */
  readonly scaleZero: number;
  /** What the force sensor of the dyno shows without load [N]. */
  readonly sensorZero: number;
  /** How fast that changes [N/s]. */
  readonly sensorDrift: number;
}

/**
 * All that decides what a reading shows.
 *
 * @public
 */
export interface MeasuredState extends ShockState, InstrumentState {}

/** Form of {@link MeasuredState}. */
export const measuredStateShape: Shape = {
  kinematicViscosity: 'm²/s',
  temperatureSlope: '',
  density: 'kg/m³',
  holeDiameter: 'm',
  gap: 'm',
  friction: 'N',
  gasPressure: 'Pa',
  handDelay: 's',
  thermometerError: 'K',
  scaleZero: 'N',
  sensorZero: 'N',
  sensorDrift: 'N/s',
};

/**
 * Name of one of them.
 *
 * @public
 */
export type Quantity = keyof MeasuredState;

/**
 * Instruments without error.
 *
 * @public
 */
export const exactInstruments: InstrumentState = {
  handDelay: 0,
  thermometerError: 0,
  scaleZero: 0,
  sensorZero: 0,
  sensorDrift: 0,
};
