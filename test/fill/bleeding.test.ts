import { describe, expect, test } from 'vitest';
import { airAfterBleeds, worthwhileBleeds } from '../../lib/fill/air/repeated-bleeding.js';

/** One size of bubble that takes 200 s to the cap. */
const oneSize = {
  airAtFill: 100e-9,
  smallestRadius: 0.1e-3,
  largestRadius: 0.1e-3,
  height: 20e-3,
  wait: 100,
  airDrawnIn: 0,
  riseSpeed: () => 0.1e-3,
};

describe('bleeding again', () => {
  test('of one size half leaves in half its time, and half of the rest with the next bleed', () => {
    const left = airAfterBleeds(oneSize, 3).map((air) => air * 1e9);
    [100, 50, 25, 12.5].forEach((expected, index) => {
      expect(left[index]).toBeCloseTo(expected, 9);
    });
  });

  test('all leave once the wait is long enough', () => {
    expect(airAfterBleeds({ ...oneSize, wait: 200 }, 1)[1]).toBe(0);
  });

  test('air drawn in at each opening sets a floor: half of what comes in stays', () => {
    const left = airAfterBleeds({ ...oneSize, airDrawnIn: 10e-9 }, 40);
    // x = (x + 10)/2
    expect((left.at(-1) ?? 0) * 1e9).toBeCloseTo(10, 6);
    expect((left[1] ?? 0) * 1e9).toBeCloseTo(50, 9);
    expect((left[2] ?? 0) * 1e9).toBeCloseTo(30, 9);
  });

  test('spread over sizes, air leaves in the share of ln R that has risen, and part of the rest', () => {
    // v ∝ R²; v(1 mm) t = 100 h, so all above 0.1 mm leave: R² share below. ∫ over ln R from 0.01 to 0.1 of (1 − 100 R²), half of two decades.
    const sizes = {
      ...oneSize,
      smallestRadius: 0.01e-3,
      largestRadius: 1e-3,
      wait: 1,
      height: 1,
      riseSpeed: (radius: number) => 100 * (radius / 1e-3) ** 2,
    };
    const left = airAfterBleeds(sizes, 1)[1] ?? 0;
    const expected = (Math.LN10 - (1 - 0.01) / 2) / (2 * Math.LN10);
    expect(left / 100e-9).toBeCloseTo(expected, 4);
  });

  test('the last bleed worth the work', () => {
    expect(worthwhileBleeds([100, 50, 25, 12.5, 6.25], 12)).toBe(3);
    expect(worthwhileBleeds([100, 99], 12)).toBe(0);
    expect(worthwhileBleeds([100], 12)).toBe(0);
    expect(() => worthwhileBleeds([100], 0)).toThrow(/smallestGain/u);
  });

  test('bad input is refused by name', () => {
    expect(() => airAfterBleeds({ ...oneSize, wait: 0 }, 1)).toThrow(/wait/u);
    expect(() => airAfterBleeds({ ...oneSize, largestRadius: 0.05e-3 }, 1)).toThrow(/largestRadius/u);
    expect(() => airAfterBleeds({ ...oneSize, airAtFill: -1 }, 1)).toThrow(/airAtFill/u);
  });
});
