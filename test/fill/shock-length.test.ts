import { describe, expect, test } from 'vitest';
import { lengthMismatch, shaftExposed, shockLength } from '../../lib/fill/length/shock-length.js';

const lengths = {
  bodyEyelet: 52e-3,
  shaft: 46e-3,
  sealStack: 9e-3,
  rodEnd: 8e-3,
  innerSpacers: 2e-3,
  bumpStop: 3e-3,
  pistonTravel: 33e-3,
};

describe('length of a shock', () => {
  test('by hand', () => {
    const length = shockLength(lengths);
    // exposed 46 − 9 − 2 = 35; extended 52 + 35 + 8 = 95; outside 35 − 3 = 32, inside 33 − 2 = 31
    expect(length.exposedExtended).toBeCloseTo(35e-3, 12);
    expect(length.extended).toBeCloseTo(95e-3, 12);
    expect(length.usableStroke).toBeCloseTo(31e-3, 12);
    expect(length.compressed).toBeCloseTo(64e-3, 12);
    expect(length.stoppedBy).toBe('piston');
    expect(shaftExposed(length, 10e-3)).toBeCloseTo(25e-3, 12);
  });

  test('a thicker bump stop takes over', () => {
    expect(shockLength({ ...lengths, bumpStop: 6e-3 })).toMatchObject({ stoppedBy: 'bump stop' });
    expect(shockLength({ ...lengths, bumpStop: 6e-3 }).usableStroke).toBeCloseTo(29e-3, 12);
  });

  test('a droop spacer of 1 mm shortens the shock by 1 mm', () => {
    const spaced = shockLength({ ...lengths, innerSpacers: 3e-3 });
    expect(shockLength(lengths).extended - spaced.extended).toBeCloseTo(1e-3, 12);
    expect(spaced.compressed).toBeCloseTo(64e-3, 12);
  });

  test('lengths that leave no stroke are refused by name', () => {
    expect(() => shockLength({ ...lengths, shaft: 13e-3 })).toThrow(
      /shaft must be longer than .* 0\.01\d+ m/u,
    );
    expect(() => shockLength({ ...lengths, pistonTravel: 2e-3 })).toThrow(/innerSpacers must be below/u);
    expect(() => shockLength({ ...lengths, rodEnd: -1e-3 })).toThrow(/rodEnd/u);
    expect(() => shaftExposed(shockLength(lengths), 32e-3)).toThrow(/position/u);
  });

  test('left against right', () => {
    const axle = { tolerance: 0.2e-3, motionRatio: 0.5 };
    const unlike = lengthMismatch(95.3e-3, 95e-3, axle);
    expect(unlike.difference).toBeCloseTo(0.3e-3, 12);
    expect(unlike.droopDifference).toBeCloseTo(0.6e-3, 12);
    expect(unlike.withinTolerance).toBe(false);
    expect(lengthMismatch(94.9e-3, 95e-3, axle).withinTolerance).toBe(true);
  });
});
