import { describe, expect, it } from 'vitest';
import { randomNumbers } from '../laws/random-damper.js';
import { isNamed, runRandomCorner } from './random-corner.js';

const peaks = [
  'largestTravel',
  'largestShockForce',
  'largestBodyAcceleration',
  'fastestCompression',
  'largestBlindPressure',
] as const;

/** The same random corner, dropped: followed for 0.6 s, or only as long as asked. */
function dropped(index: number, until?: 'deepest' | 'touched') {
  const next = randomNumbers(20_261_126 + 7919 * index);
  for (let i = 0; i < 8; i++) next();
  const event = { kind: 'landing', dropHeight: 0.02 + ((index * 0.618_034) % 1) } as const;
  try {
    return runRandomCorner(next, 0.6, { event, ...(until && { until }) });
  } catch (error) {
    if (!isNamed(error)) throw error;
    return undefined;
  }
}

describe('a landing followed for its peaks alone', () => {
  const pairs = Array.from(
    { length: 24 },
    (_, index) => [dropped(index), dropped(index, 'deepest')] as const,
  );
  const both = pairs.flatMap(([whole, short]) => (whole && short ? [{ whole, short }] : []));

  it('has those of the whole landing', () => {
    expect(both.length).toBeGreaterThan(15);
    for (const { whole, short } of both) {
      for (const name of peaks)
        expect(Math.abs(short[name].value / whole[name].value - 1)).toBeLessThan(1e-9);
      expect(short.bottomings.length > 0).toBe(whole.bottomings.length > 0);
    }
  });

  it('is shorter, and its trace ends where it does', () => {
    const steps = (of: 'whole' | 'short') => both.reduce((sum, one) => sum + one[of].steps, 0);
    expect(steps('short')).toBeLessThan(0.95 * steps('whole'));
    for (const { short } of both) {
      const { times, travels } = short.trace;
      expect(times.length).toBe(travels.length);
      expect(times.at(-1)).toBeGreaterThan(short.largestTravel.time - 0.6 / 50);
    }
  });

  it('ends at the bump stop where that is asked', () => {
    for (const [index, [whole]] of pairs.entries()) {
      if (whole === undefined) continue;
      const touched = dropped(index, 'touched');
      expect(touched?.bottomings.at(0)?.time).toBe(whole.bottomings.at(0)?.time);
      expect(touched?.bottomings.length).toBeLessThan(2);
    }
  });

  it('is refused over ground that gives energy', () => {
    const next = randomNumbers(3);
    expect(() =>
      runRandomCorner(next, 0.1, { event: { kind: 'step', height: 0.01 }, until: 'deepest' }),
    ).toThrow('until must be nothing but with a landing');
  });
});
