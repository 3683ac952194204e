import { requireCount, requireNotNegative, requirePositive, requireWithin } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { byKind, listOf, oneOf, type Shape } from '../../base/shape.js';
import { longestRun } from '../input/options.js';
import { risingTable, type Table } from '../input/table.js';

/**
 * A stroke repeated between two ends, from rest at the extended end.
 *
 * @public
 */
export interface RepeatedStroke {
  /** Sine of travel, or constant speed to and fro. */
  readonly kind: 'sine' | 'triangle';
  /** Middle of the travel [m]. */
  readonly middle: number;
  /** Half the travel from end to end [m], above 0. */
  readonly amplitude: number;
  /** Strokes to and fro in a second [Hz], above 0 to 200. */
  readonly frequency: number;
  /** How many, 1 or more. */
  readonly cycles: number;
}

/** Form of {@link RepeatedStroke}. */
export const repeatedStrokeShape: Shape = {
  kind: oneOf('sine', 'triangle'),
  middle: 'm',
  amplitude: 'm',
  frequency: 'Hz',
  cycles: '',
};

/**
 * A stroke given by a table of travel against time, for example one recorded.
 *
 * @public
 */
export interface TableStroke {
  readonly kind: 'table';
  /** Rising times [s], two or more. */
  readonly times: readonly number[];
  /** Travel at each [m], 0 to the stroke of the shock. */
  readonly travels: readonly number[];
}

/** Form of {@link TableStroke}. */
export const tableStrokeShape: Shape = { kind: oneOf('table'), times: listOf('s'), travels: listOf('m') };

/** @public */
export type BenchStroke = RepeatedStroke | TableStroke;

/** Form of {@link BenchStroke}. */
export const benchStrokeShape: Shape = byKind({
  sine: repeatedStrokeShape,
  triangle: repeatedStrokeShape,
  table: tableStrokeShape,
});

/** Travel, speed and acceleration at a time, written anew by each evaluation. */
export interface Place {
  travel: number;
  speed: number;
  acceleration: number;
}

/** A smooth piece of a stroke. */
export interface Piece {
  readonly from: number;
  readonly to: number;
  /** Times inside at which a step has to end [s]. */
  readonly knots: readonly number[];
  readonly evaluate: (time: number, place: Place) => void;
}

/** One cycle: its pieces one after another. */
export type Cycle = readonly Piece[];

/** Highest frequency at which one pressure in a chamber still holds [Hz], and highest speed of a shaft [m/s]. */
export const highestFrequency = 200;
export const highestSpeed = 10;

/** Cycles of a stroke, checked against the travel of a shock. */
export function strokeCycles(stroke: BenchStroke, travelOfShock: number): readonly Cycle[] {
  return stroke.kind === 'table' ? [tableCycle(stroke, travelOfShock)] : repeated(stroke, travelOfShock);
}

function repeated(stroke: RepeatedStroke, travelOfShock: number): readonly Cycle[] {
  const { middle, amplitude, frequency, cycles } = stroke;
  requirePositive(amplitude, 'stroke.amplitude', 'm');
  requireWithin(middle, amplitude, travelOfShock - amplitude, 'stroke.middle', 'm');
  requirePositive(frequency, 'stroke.frequency', 'Hz');
  requireWithin(frequency, 0, highestFrequency, 'stroke.frequency', 'Hz');
  requireCount(cycles, 'stroke.cycles');
  requireWithin(cycles / frequency, 0, longestRun, 'stroke.cycles over stroke.frequency', 's');
  const period = 1 / frequency;
  const fastest = stroke.kind === 'sine' ? 2 * Math.PI * frequency * amplitude : 4 * amplitude * frequency;
  requireWithin(fastest, 0, highestSpeed, 'speed of the stroke', 'm/s');
  const cycle = stroke.kind === 'sine' ? sineCycle : triangleCycle;
  return Array.from({ length: cycles }, (_, k) => cycle(stroke, k * period, period));
}

function sineCycle({ middle, amplitude }: RepeatedStroke, from: number, period: number): Cycle {
  const omega = (2 * Math.PI) / period;
  const evaluate = (time: number, place: Place): void => {
    const angle = omega * (time - from);
    const cosine = amplitude * Math.cos(angle);
    place.travel = middle - cosine;
    place.speed = omega * amplitude * Math.sin(angle);
    place.acceleration = omega * omega * cosine;
  };
  // Friction turns round at the far end.
  return [{ from, to: from + period, knots: [from + period / 2], evaluate }];
}

function triangleCycle({ middle, amplitude }: RepeatedStroke, from: number, period: number): Cycle {
  const speed = (4 * amplitude) / period;
  const half = from + period / 2;
  const line = (start: number, travel: number, rate: number) => (time: number, place: Place) => {
    place.travel = travel + rate * (time - start);
    place.speed = rate;
    place.acceleration = 0;
  };
  return [
    { from, to: half, knots: [], evaluate: line(from, middle - amplitude, speed) },
    { from: half, to: from + period, knots: [], evaluate: line(half, middle + amplitude, -speed) },
  ];
}

function tableCycle({ times, travels }: TableStroke, travelOfShock: number): Cycle {
  const table: Table = risingTable(times, travels, 'stroke.times', 'stroke.travels');
  requireNotNegative(times[0] ?? 0, 'stroke.times[0]', 's');
  const from = times[0] as number;
  const to = times.at(-1) as number;
  requireWithin(to - from, 0, longestRun, 'time of the stroke', 's');
  travels.forEach((travel, i) => {
    requireWithin(travel, 0, travelOfShock, `stroke.travels[${i}]`, 'm');
    if (i === 0) return;
    const speed = (travel - (travels[i - 1] as number)) / ((times[i] as number) - (times[i - 1] as number));
    if (Math.abs(speed) > highestSpeed) {
      throw new InputError({
        field: `stroke.travels[${i}]`,
        value: travel,
        unit: 'm',
        accepted: `reached without a jump (${Math.abs(speed)} m/s here, where ${highestSpeed} m/s may be), in`,
      });
    }
  });
  const evaluate = (time: number, place: Place): void => {
    table.evaluate(time);
    place.travel = table.value;
    place.speed = table.slope;
    place.acceleration = table.bend;
  };
  return [{ from, to, knots: times.slice(1, -1), evaluate }];
}
