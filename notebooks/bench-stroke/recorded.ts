import { InputError } from '../../lib/base/input-error.js';
import { type BenchResult, benchStroke, type StrokeCycle } from '../../lib/motion/bench/bench-stroke.js';
import { highestSpeed } from '../../lib/motion/bench/stroke.js';
import { LockedOil } from '../../lib/motion/shock/locked-oil.js';
import type { Build, RecordedStroke } from '../../lib/parts/parts.js';
import { formatQuantity } from '../../lib/units/index.js';
import { millilitres, millimetres } from '../base/bench-wording.js';
import { type AirEnd, type MovingBuild, movingBuild } from '../base/moving-build.js';
import { seconds, shaftSpeed } from '../base/wording.js';

/** A build that was moved as somebody recorded it. */
export interface Ridden {
  readonly end: AirEnd;
  readonly moving: MovingBuild;
  readonly result: BenchResult;
  /** All of the recording. */
  readonly ride: StrokeCycle;
}

const key = 'recorded-stroke';
const leastParts = 480;
const mostParts = 4000;

/** Refuses a recording that leaves the stroke of the build or jumps, by its row. */
export function requireRides({ shock }: Build, { times, travels }: RecordedStroke): void {
  travels.forEach((travel, index) => {
    const row = `in row ${index + 1}`;
    if (travel < 0 || travel > shock.stroke) {
      throw new InputError({
        field: key,
        value: `${formatQuantity(travel, 'length', 'mm', 5)} ${row}`,
        accepted: `within the stroke of ${shock.name}, 0 to ${millimetres(shock.stroke)} in; "zero-at" says how far the shaft is in where the travel is 0`,
      });
    }
    if (index === 0) return;
    const step = (times[index] ?? 0) - (times[index - 1] ?? 0);
    const speed = Math.abs(travel - (travels[index - 1] ?? 0)) / step;
    if (speed > highestSpeed) {
      throw new InputError({
        field: key,
        value: `${shaftSpeed(speed)} ${row}`,
        accepted: `without jumps, at most ${shaftSpeed(highestSpeed)} from row to row; look at the row and at the unit of the time`,
      });
    }
  });
}

/** Moves a build as recorded, from rest. */
function ridden(build: Build, temperature: number, { times, travels }: RecordedStroke, end: AirEnd): Ridden {
  const moving = movingBuild(build, temperature, end);
  const parts = Math.min(mostParts, Math.max(leastParts, 4 * (times.length - 1)));
  const result = benchStroke(moving.shock, { kind: 'table', times, travels }, { parts, tolerance: 1e-5 });
  const [ride] = result.cycles;
  if (ride === undefined) throw new RangeError('a recording is one cycle');
  return { end, moving, result, ride };
}

/** The ride on the likely oil, and at both ends of what air does where the gas has room for it. */
export function rides(build: Build, temperature: number, stroke: RecordedStroke): readonly Ridden[] {
  requireRides(build, stroke);
  const ends: readonly AirEnd[] = ['likely', 'bubbles', 'early release'];
  return ends.flatMap((end) => {
    try {
      return ridden(build, temperature, stroke, end);
    } catch (error) {
      if (!(error instanceof LockedOil)) throw error;
      if (end !== 'likely') return [];
      throw new InputError({
        field: key,
        value: `a ride that locks at ${seconds(error.time)}, ${millimetres(error.travel)} in`,
        accepted: `one that the gas of ${build.name} has room for: shaft and cavity together ask for more than its ${millilitres(movingBuild(build, temperature).shock.gas.capacity)}, and the rest of the stroke for another ${millilitres(error.missing)}; let out oil, or ride it warmer or slower`,
      });
    }
  });
}
