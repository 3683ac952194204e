import { InputError } from '../../base/input-error.js';
import { type DynoRecord, readDynoFile } from '../../measure/dyno/read-dyno.js';
import { formatQuantity } from '../../units/index.js';
import type { DynoPart } from '../parts.js';
import { MeasurementFault } from './measured-readings.js';
import type { MeasurementEntry } from './measurement-schema.js';

/** Usual standard uncertainty of a sensor [N], and over the force (common practice, no source). */
const usualSensor = { uncertainty: 0.1, relativeUncertainty: 0.01 };
/** Travel beyond the stroke that a play of the ends explains [m]. */
const play = 0.5e-3;

function recordOf(text: string): DynoRecord {
  try {
    return readDynoFile(text);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new MeasurementFault(['dyno', 'record'], `cannot be used: ${error.message}`);
  }
}

/** Throws where the travel of the record does not lie in the stroke. */
function requireInStroke({ travel }: DynoRecord, zeroAt: number, stroke: number): void {
  if (travel === undefined) return;
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const value of travel) {
    least = Math.min(least, zeroAt + value);
    most = Math.max(most, zeroAt + value);
  }
  if (least >= -play && most <= stroke + play) return;
  const shown = (length: number): string => formatQuantity(length, 'length', 'mm');
  throw new MeasurementFault(
    ['dyno', 'zero-at'],
    `must be such that the travel of the record, which would go from ${shown(least)} to ${shown(most)} in, lies within the stroke of ${shown(stroke)}`,
  );
}

/**
 * What a dyno recorded, as an entry of the file has it.
 *
 * @param entry - one measurement, in SI
 * @param stroke - of the shock that was measured [m]
 * @returns the record and how it was taken; `undefined` for an entry of another kind
 * @throws MeasurementFault with the place in the entry, where the record cannot be read or does not fit the stroke
 */
export function measuredDyno({ dyno, temperature }: MeasurementEntry, stroke: number): DynoPart | undefined {
  if (dyno === undefined || temperature === undefined) return undefined;
  const record = recordOf(dyno.record);
  const position = dyno['zero-at'] ?? (record.travel === undefined ? stroke / 2 : 0);
  requireInStroke(record, position, stroke);
  const sensor =
    dyno.uncertainty === undefined ? usualSensor : { ...usualSensor, uncertainty: dyno.uncertainty };
  if (!(sensor.uncertainty > 0)) throw new MeasurementFault(['dyno', 'uncertainty'], 'must be above 0 N');
  return { record, setup: { temperature, position, ...sensor } };
}
