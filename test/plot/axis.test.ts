import fc from 'fast-check';
import { scale } from 'vega';
import { describe, expect, test } from 'vitest';
import { axisDomain, joinedDomain, tickWidth } from '../../lib/plot/chart/axis.js';
import { textWidth } from '../../lib/plot/chart/text-width.js';

const force = { label: 'Force', unit: 'N' };
// Vega may end at a zero below zero, which is none.
const niceByVega = (low: number, high: number): readonly number[] =>
  scale('linear')()
    .domain([low, high])
    .nice(6)
    .domain()
    .map((end: number) => end + 0);

describe('the ends of an axis', () => {
  test('are round numbers about the data, as the linear scale of Vega finds them', () => {
    expect(axisDomain(force, [8, 3, 17.3], 'round')).toEqual(niceByVega(3, 17.3));
    expect(axisDomain(force, [8, 3, 17.3], 'round with zero')).toEqual(niceByVega(0, 17.3));
    const value = fc.integer({ min: -100_000, max: 100_000 }).map((thousandth) => thousandth / 1000);
    fc.assert(
      fc.property(value, value, (one, other) => {
        fc.pre(one !== other);
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        expect(axisDomain(force, [one, other], 'round')).toEqual(niceByVega(low, high));
        expect(axisDomain(force, [one, other], 'round with zero')).toEqual(
          niceByVega(Math.min(0, low), Math.max(0, high)),
        );
      }),
      { numRuns: 30 },
    );
  });

  test('are the data, to six digits', () => {
    expect(axisDomain(force, [2 / 3, 1 / 3, 0.5], 'data')).toEqual([0.333333, 0.666667]);
  });

  test('lie half its size about a value by itself, and one about zero', () => {
    expect(axisDomain(force, [10], 'data')).toEqual([5, 15]);
    expect(axisDomain(force, [-10, -10], 'data')).toEqual([-15, -5]);
    expect(axisDomain(force, [0], 'data')).toEqual([-1, 1]);
    expect(axisDomain(force, [0], 'round with zero')).toEqual([-1, 1]);
  });

  test('are those given, in the unit shown, and in rising order', () => {
    const speed = { label: 'Speed', unit: 'mm/s', dimension: 'speed' } as const;
    expect(axisDomain({ ...speed, domain: [-0.2, 0.5] }, [9], 'round')).toEqual([-200, 500]);
    expect(() => axisDomain({ ...speed, domain: [0.5, 0.2] }, [9], 'round')).toThrow(
      'axis "Speed, mm/s" must be a domain in rising order, got 500 to 200',
    );
    expect(() => axisDomain(force, [1, Number.NaN], 'data')).toThrow(
      'axis "Force, N" must be a finite number, got NaN',
    );
  });

  test('of two cases hold both', () => {
    expect(joinedDomain([0, 10], [5, 20])).toEqual([0, 20]);
    expect(joinedDomain([5, 20], [0, 10])).toEqual([0, 20]);
    expect(joinedDomain([0, 20], [5, 10])).toEqual([0, 20]);
  });
});

test('the room of a number at an axis is that of the longer end, with up to one digit to spare', () => {
  for (const ends of [
    [-1000, 5],
    [5, 12_000],
  ] as const) {
    const longer = Math.max(...ends.map((end) => textWidth(String(end).replace('-', '−'), 12)));
    expect(tickWidth(ends)).toBeGreaterThanOrEqual(longer);
    expect(tickWidth(ends)).toBeLessThanOrEqual(longer + textWidth('0', 12) + 1e-9);
  }
});
