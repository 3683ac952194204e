import { requireFinite, requireMoving, requireNotNegative, requirePositive } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import type { DropReading, Reading } from './reading.js';

/** A time so many times its fellows, or so small a part of them, is a slip of the pen: a decimal point is ten. */
const slip = 5;
/** No hand starts and stops a watch within this [s] (common practice, no source). */
const shortestByHand = 0.2;

/** Mean of some times. */
export function meanTime(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function requireTimes({ times, timing }: DropReading, path: string): void {
  if (times.length === 0)
    throw new InputError({ field: `${path}times`, value: 0, accepted: '1 or more times' });
  times.forEach((time, index) => {
    requirePositive(time, `${path}times[${index}]`, 's');
  });
  const sorted = [...times].sort((first, second) => first - second);
  const usual = sorted[Math.floor((sorted.length - 1) / 2)]!;
  times.forEach((time, index) => {
    if (time > slip * usual || time < usual / slip) {
      throw new InputError({
        field: `${path}times[${index}]`,
        value: `${time} s`,
        accepted: `near to the others, ${usual} s, unless the decimal point is in the wrong place`,
      });
    }
  });
  if (timing === 'hand' && meanTime(times) < shortestByHand) {
    throw new InputError({
      field: `${path}times`,
      value: `${meanTime(times)} s`,
      accepted: `${shortestByHand} s or more by hand; film a shorter one`,
    });
  }
}

function requireDrop(drop: DropReading, path: string): void {
  requirePositive(drop.mass, `${path}mass`, 'kg');
  requireNotNegative(drop.from, `${path}from`, 'm');
  requireNotNegative(drop.to, `${path}to`, 'm');
  if (drop.from === drop.to) {
    throw new InputError({
      field: `${path}to`,
      value: `${drop.to} m`,
      accepted: 'another place than "from"',
    });
  }
  requireTimes(drop, path);
}

/**
 * Throws unless the numbers of one reading can be.
 *
 * @param reading - as it came in
 * @param path - put before the name of the field
 * @throws InputError that names the field
 */
export function requireReading(reading: Reading, path: string): void {
  if ('temperature' in reading) requirePositive(reading.temperature, `${path}temperature`, 'K');
  if (reading.kind === 'viscosity') {
    requirePositive(reading.relativeUncertainty, `${path}relativeUncertainty`, '');
    requirePositive(reading.kinematicViscosity, `${path}kinematicViscosity`, 'm²/s');
    return;
  }
  const unit = { drop: 's', scale: 'N', force: 'N', hole: 'm', density: 'kg/m³' }[reading.kind];
  requirePositive(reading.uncertainty, `${path}uncertainty`, unit);
  if (reading.kind === 'drop') requireDrop(reading, path);
  else if (reading.kind === 'hole') requirePositive(reading.diameter, `${path}diameter`, 'm');
  else if (reading.kind === 'density') requirePositive(reading.density, `${path}density`, 'kg/m³');
  else {
    requireFinite(reading.force, `${path}force`, 'N');
    requireNotNegative(reading.position, `${path}position`, 'm');
    if (reading.kind === 'force') requireMoving(reading.speed, `${path}speed`);
  }
}
