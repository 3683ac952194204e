import { InputError } from '../../base/input-error.js';
import { netForce } from '../model/drop-time.js';
import { dataOf } from '../reading/prediction.js';
import { type Reading, readingText } from '../reading/reading.js';
import { meanTime, requireReading } from '../reading/require-reading.js';
import type { MeasuredShockProblem } from './fit-problem.js';

/** Throws where a heavier weight took clearly longer over the same stretch of the same oil. */
function requireHeavierQuicker(readings: readonly Reading[]): void {
  const drops = readings.flatMap((reading, index) =>
    reading.kind === 'drop' ? [{ ...reading, index }] : [],
  );
  for (const heavy of drops) {
    for (const light of drops) {
      const alike =
        heavy.from === light.from &&
        heavy.to === light.to &&
        Math.abs(heavy.temperature - light.temperature) < 1;
      if (!alike || heavy.mass <= light.mass) continue;
      const [slow, quick] = [meanTime(heavy.times), meanTime(light.times)];
      const doubt = Math.hypot(
        heavy.uncertainty / Math.sqrt(heavy.times.length),
        light.uncertainty / Math.sqrt(light.times.length),
      );
      if (slow > quick + 2 * doubt) {
        throw new InputError({
          field: `readings[${heavy.index}].times`,
          value: `${slow} s`,
          accepted: `below the ${quick} s of the lighter weight`,
        });
      }
    }
  }
}

/** Throws where a weight could not have moved the shaft against the friction that is known or begun with. */
function requireMovingWeights({ law, known, readings, unknowns }: MeasuredShockProblem): void {
  // Unknown friction is begun with at a value that lets every weight move, where the caller has not chosen so.
  if (unknowns.some(({ quantity }) => quantity === 'friction')) return;
  const shock = law(known);
  readings.forEach((reading, index) => {
    if (reading.kind !== 'drop') return;
    const net = Math.min(netForce(shock, reading, reading.from), netForce(shock, reading, reading.to));
    if (net > 0) return;
    throw new InputError({
      field: `readings[${index}].mass`,
      value: `${reading.mass} kg`,
      accepted: `heavy enough to move the shaft against ${known.friction} N of friction; a weight that does not move it gives a bound, not a time`,
    });
  });
}

/** Which reading would tell a quantity that too few do. */
const tellingReading: Readonly<Record<string, string>> = {
  kinematicViscosity: 'a drop, or the oil by itself in a falling ball or a flow cup',
  friction: 'a drop of a second, heavier weight',
  gasPressure: 'the scale at one place, pushing in and letting out',
  temperatureSlope: 'a drop at a second temperature',
  holeDiameter: 'a pin gauge in the hole',
  handDelay: 'a filmed drop beside one by hand',
};

/** Throws where fewer different readings than unknowns without a prior are at hand. */
function requireEnough({ unknowns, readings }: MeasuredShockProblem): void {
  const open = unknowns.filter(({ prior }) => prior === undefined);
  const different = new Set(
    readings.map((reading) =>
      reading.kind === 'drop' ? readingText({ ...reading, times: [], uncertainty: 0 }) : readingText(reading),
    ),
  ).size;
  if (different >= open.length) return;
  const last = open[open.length - 1]!.quantity;
  const onlyDrops = readings.length > 0 && readings.every(({ kind }) => kind === 'drop');
  throw new InputError({
    field: onlyDrops ? `readings[${readings.length - 1}].times` : 'readings',
    value: different,
    accepted: `${open.length} or more different ones for ${open.map(({ quantity }) => quantity).join(', ')}; ${tellingReading[last] ?? 'another reading'} would do`,
  });
}

/**
 * Throws for readings that cannot be as they stand.
 *
 * @throws InputError with the field and, where something else would do, what
 */
export function requireReadings(problem: MeasuredShockProblem): void {
  problem.readings.forEach((reading, index) => {
    requireReading(reading, `readings[${index}].`);
  });
  if (
    problem.readings.flatMap(dataOf).length === 0 &&
    problem.unknowns.every(({ prior }) => prior === undefined)
  ) {
    throw new InputError({ field: 'readings', value: 0, accepted: '1 or more' });
  }
  requireHeavierQuicker(problem.readings);
  requireMovingWeights(problem);
  requireEnough(problem);
}
