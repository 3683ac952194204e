import { timeOfDrop } from '../model/drop-time.js';
import { rememberTemperatures, type ShockLaw, type SteadyShock } from '../model/shock-law.js';
import type { MeasuredState } from '../model/shock-state.js';
import { type Reading, readingText } from './reading.js';

/** One number of a reading: what was read, and how far off it may be. */
export interface Datum {
  /** Index of its reading, and of the number in it. */
  readonly reading: number;
  readonly repeat: number;
  readonly value: number;
  readonly uncertainty: number;
}

/** What a shock shows at one reading without the errors of the instruments. */
function readingOf(shock: SteadyShock, state: MeasuredState, reading: Reading): number {
  const warmer = (temperature: number): number => temperature + state.thermometerError;
  switch (reading.kind) {
    case 'drop':
      return timeOfDrop(shock, { ...reading, temperature: warmer(reading.temperature) });
    case 'scale':
      return (
        shock.at(warmer(reading.temperature)).gasForce(reading.position) +
        (reading.moving === 'in' ? shock.friction : -shock.friction)
      );
    case 'viscosity':
      return Math.log(shock.at(warmer(reading.temperature)).kinematicViscosity);
    case 'hole':
      return state.holeDiameter;
    case 'density':
      return shock.at(warmer(reading.temperature)).density;
    case 'force': {
      const warm = shock.at(warmer(reading.temperature));
      const { speed, position } = reading;
      return warm.dampingForce(speed, position) + warm.gasForce(position) + Math.sign(speed) * shock.friction;
    }
  }
}

/** What the instruments add to it. */
function instrumentError(state: MeasuredState, reading: Reading): number {
  switch (reading.kind) {
    case 'drop':
      return reading.timing === 'hand' ? state.handDelay : 0;
    case 'scale':
      return state.scaleZero;
    case 'force':
      return state.sensorZero + state.sensorDrift * reading.time;
    default:
      return 0;
  }
}

/** The numbers of a reading. A viscosity counts by its logarithm. */
export function dataOf(reading: Reading, index: number): readonly Datum[] {
  const one = (value: number, uncertainty: number): readonly Datum[] => [
    { reading: index, repeat: 0, value, uncertainty },
  ];
  switch (reading.kind) {
    case 'drop':
      return reading.times.map((value, repeat) => ({
        reading: index,
        repeat,
        value,
        uncertainty: reading.uncertainty,
      }));
    case 'scale':
    case 'force':
      return one(reading.force, reading.uncertainty);
    case 'viscosity':
      return one(Math.log(reading.kinematicViscosity), reading.relativeUncertainty);
    case 'hole':
      return one(reading.diameter, reading.uncertainty);
    case 'density':
      return one(reading.density, reading.uncertainty);
  }
}

/** Readings that a shock answers alike are computed once. */
function sameAnswer(reading: Reading): string {
  if (reading.kind === 'drop') {
    const { mass, temperature, from, to } = reading;
    return `drop ${mass} ${temperature} ${from} ${to}`;
  }
  if (reading.kind === 'scale') return `scale ${reading.position} ${reading.moving} ${reading.temperature}`;
  return readingText(reading);
}

/** What each reading should show: a function of the state, bound to the readings. */
export type Prediction = (state: MeasuredState) => Float64Array;

/**
 * Binds the readings to a law: what each should show, one number a reading.
 *
 * @param law - of the shock
 * @param readings - what was measured
 */
export function predictionOf(law: ShockLaw, readings: readonly Reading[]): Prediction {
  const seen = new Map<string, number>();
  const first = readings.map((reading, index) => {
    const key = sameAnswer(reading);
    const known = seen.get(key);
    if (known === undefined) seen.set(key, index);
    return known ?? index;
  });
  return (state) => {
    const shock = rememberTemperatures(law(state));
    const values = new Float64Array(readings.length);
    readings.forEach((reading, index) => {
      const twin = first[index]!;
      values[index] = twin < index ? values[twin]! : readingOf(shock, state, reading);
    });
    // Last, since twins share the first part but not always the instrument.
    readings.forEach((reading, index) => {
      values[index] = values[index]! + instrumentError(state, reading);
    });
    return values;
  };
}
