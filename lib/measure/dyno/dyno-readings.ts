import { refuse, requirePositive } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { madeWith, requireShape, type Shape } from '../../base/shape.js';
import type { SteadyShock } from '../model/shock-law.js';
import type { ForceReading } from '../reading/reading.js';
import { median } from './median.js';
import type { DynoRecord } from './read-dyno.js';
import { dynoRecordShape } from './read-dyno.js';
import { smoothStroke } from './smooth-stroke.js';

/**
 * How a dyno record was taken.
 *
 * @public
 */
export interface DynoSetup {
  /** Temperature of the oil by the thermometer [K], above 0. */
  readonly temperature: number;
  /** Position of the shaft where the travel of the file is 0 [m from full extension]; for a file without travel, where the force was read. */
  readonly position: number;
  /** Standard uncertainty of the sensor [N], above 0: 0.05 to 0.15 is usual (common practice, no source). */
  readonly uncertainty: number;
  /** The same over the force, 0 or more: 0.01 is usual (common practice, no source). */
  readonly relativeUncertainty: number;
}

/** Form of {@link DynoSetup}. */
export const dynoSetupShape: Shape = {
  temperature: 'K',
  position: 'm from full extension',
  uncertainty: 'N',
  relativeUncertainty: '',
};

/** Slower samples than this part of the fastest are left out: friction turns there, and inertia counts. */
const slowest = 0.1;
/** Share of samples that may take power out of the shock before the sign counts as turned. */
const mostBackward = 0.8;
/** Damping so many times the parts' own, or so small a part of it, comes of exchanged columns. */
const farFromParts = 30;
/** Fastest over slowest speed below which there is only one. */
const oneSpeed = 1.2;
/** Samples each side of the middle of a window: short against a stroke, long against the noise of travel. */
const halfWidth = 3;

interface Sample {
  readonly time: number;
  readonly position: number;
  readonly speed: number;
  readonly force: number;
}

/** Samples of a record, no more of them than are independent. */
function samplesOf(record: DynoRecord, setup: DynoSetup): readonly Sample[] {
  const { length } = record.force;
  for (const name of ['speed', 'travel', 'time'] as const) {
    const column = record[name];
    if (column !== undefined && column.length !== length)
      refuse(column.length, `record.${name}.length`, '', `${length}, as many as forces`);
  }
  if (record.speed !== undefined) {
    return record.speed.map((speed, index) => ({
      time: record.time?.[index] ?? 0,
      position: setup.position + (record.travel?.[index] ?? 0),
      speed,
      force: record.force[index]!,
    }));
  }
  const stroke = smoothStroke(record, halfWidth);
  // Windows that overlap share their noise.
  return stroke.force.flatMap((force, index) =>
    index % (2 * halfWidth + 1) !== 0
      ? []
      : [
          {
            time: stroke.time[index]!,
            position: setup.position + stroke.travel[index]!,
            speed: stroke.speed[index]!,
            force,
          },
        ],
  );
}

/** Throws where the columns cannot be what their header says, judged by the shock as stated. */
function requireLikely(samples: readonly Sample[], stated: SteadyShock, temperature: number): void {
  const warm = stated.at(temperature);
  const net = samples.map(({ force, position }) => force - warm.gasForce(position));
  const backward = samples.filter(({ speed }, index) => speed * net[index]! < 0).length;
  if (backward > mostBackward * samples.length) {
    throw new InputError({
      field: 'force',
      value: `power out of the shock in ${backward} of ${samples.length} samples`,
      accepted: 'positive where the shock is pushed in; its sign, or that of the travel, is turned',
    });
  }
  const ratios = samples.map(({ speed, position }, index) => {
    const predicted = Math.abs(warm.dampingForce(speed, position)) + stated.friction;
    return Math.abs(net[index]!) / predicted;
  });
  const ratio = median(ratios);
  if (ratio > farFromParts || ratio < 1 / farFromParts) {
    const size = Number((ratio > 1 ? ratio : 1 / ratio).toPrecision(2));
    const times = ratio > 1 ? `${size} times` : `1/${size}`;
    throw new InputError({
      field: 'columns',
      value: `a damping ${times} that of the parts as stated`,
      accepted:
        'in the order of the header, in its units; speed and force look exchanged, or a unit is wrong',
    });
  }
}

/**
 * Readings of force from a dyno record: smoothed, with speed from travel where the file has none, thinned to independent samples, without the slow ends
 * of the stroke.
 *
 * @param record - from `readDynoFile`, compression and the force that answers it positive
 * @param setup - how it was taken
 * @param stated - the shock as its parts say it is, to tell exchanged columns and turned signs by
 * @throws InputError for a record that cannot be: gaps, one speed only, turned sign (`force`), exchanged columns (`columns`)
 * @public
 */
export function dynoReadings(
  record: DynoRecord,
  setup: DynoSetup,
  stated: SteadyShock,
): readonly ForceReading[] {
  requireShape(
    { record, setup, stated },
    { record: dynoRecordShape, setup: dynoSetupShape, stated: madeWith('at') },
  );
  requirePositive(setup.temperature, 'temperature', 'K');
  requirePositive(setup.uncertainty, 'uncertainty', 'N');
  const samples = samplesOf(record, setup);
  const fastest = Math.max(...samples.map(({ speed }) => Math.abs(speed)));
  const moving = samples.filter(({ speed }) => Math.abs(speed) > slowest * fastest);
  const least = Math.min(...moving.map(({ speed }) => Math.abs(speed)));
  if (!(fastest > oneSpeed * least)) {
    throw new InputError({
      field: 'speed',
      value: `${fastest} m/s`,
      accepted: 'more than one; at one speed friction and damping cannot be told apart',
    });
  }
  requireLikely(moving, stated, setup.temperature);
  const { temperature, uncertainty, relativeUncertainty } = setup;
  return moving.map(({ time, position, speed, force }) => ({
    kind: 'force',
    speed,
    position,
    temperature,
    time,
    force,
    uncertainty: Math.hypot(uncertainty, relativeUncertainty * force),
  }));
}
