import type { Reading } from '../reading/reading.js';
import type { LawError } from './law-error.js';

/** Slowest and fastest shaft speed [m/s] that readings went through; none where no reading moved the shaft at a known speed. */
export function measuredSpeeds(readings: readonly Reading[]): readonly [number, number] | undefined {
  const speeds = readings.flatMap((reading) => {
    if (reading.kind === 'force') return [Math.abs(reading.speed)];
    if (reading.kind !== 'drop') return [];
    return reading.times.map((time) => Math.abs(reading.to - reading.from) / time);
  });
  return speeds.length === 0 ? undefined : [Math.min(...speeds), Math.max(...speeds)];
}

/** Relative standard deviation of the law's word at a speed [m/s, not 0]. */
export function lawDeviation(
  error: LawError,
  speed: number,
  measured: readonly [number, number] | undefined,
): number {
  if (measured === undefined) return error.inside;
  const [slowest, fastest] = measured;
  const beyond = Math.max(Math.abs(speed) / fastest, slowest / Math.abs(speed), 1);
  return error.inside + error.perThreefold * (Math.log(beyond) / Math.log(3));
}
