import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readParts } from '../../lib/parts/index.js';
import { builtShock } from '../../notebooks/build-sheet/built-shock.js';
import { hangTime } from '../../notebooks/build-sheet/hang-test.js';
import { buildOf } from './landing-cases.js';

const rare = readParts(readFileSync(new URL('../parts/files/rare.yaml', import.meta.url), 'utf8'));
const exact = { hole: 0, temperature: 0 };

test('a weight has a time, is too light for the seals, or hangs on a shaft that is locked', () => {
  // Closed fully in without gas, and then as if its stroke went on for 5 mm: there nothing gives way.
  const full = builtShock(buildOf(rare, 'no room'), 293.15);
  const { chamber } = full.shock;
  const longer = {
    ...full,
    shock: { ...full.shock, chamber: { ...chamber, stroke: chamber.stroke + 5e-3 } },
  };
  expect(hangTime(longer, 293.15, 0.1, exact, { from: 0.024, to: 0.002 })).toBe('the shaft locks before');
  const usual = builtShock(buildOf(rare, 'usual'), 293.15);
  // 10 g pull with 0.098 N, below the 0.3 N of the seals.
  expect(hangTime(usual, 293.15, 0.01, exact)).toBe('too light, friction holds the shaft');
  const time = hangTime(usual, 293.15, 0.1, exact);
  if (typeof time === 'string') throw new Error(time);
  expect([time.low / time.typical, time.high / time.typical].map((part) => Number(part.toFixed(6)))).toEqual([
    1, 1,
  ]);
  const open = hangTime(usual, 293.15, 0.1, { hole: 3e-5, temperature: 2 });
  if (typeof open === 'string') throw new Error(open);
  expect(open.low).toBeLessThan(time.typical);
  expect(open.high).toBeGreaterThan(time.typical);
});

test('what else is wrong is told as it is', () => {
  const usual = builtShock(buildOf(rare, 'usual'), 293.15);
  expect(() => hangTime(usual, 293.15, 0.1, exact, { from: 0.05, to: 0.002 })).toThrow(/from/u);
});
