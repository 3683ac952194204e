import { describe, expect, test } from 'vitest';
import { discValveErrors } from './disc-valve-reference.js';

const errors = discValveErrors();

test('two discs at five flows each were solved', () => {
  expect(errors).toHaveLength(10);
  expect(new Set(errors.map(({ thickness }) => thickness))).toEqual(new Set([0.1, 0.15]));
});

describe.each(errors)('a disc of $thickness mm at $flow mm³/s', ({ pressure, load, lift, rim }) => {
  test('pressure and load within 3 %', () => {
    expect(Math.abs(pressure)).toBeLessThan(0.03);
    expect(Math.abs(load)).toBeLessThan(0.03);
  });

  test('lifts within 1.5 %', () => {
    for (const error of [lift, ...rim]) expect(Math.abs(error)).toBeLessThan(0.015);
  });
});
