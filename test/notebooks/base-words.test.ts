import { describe, expect, test } from 'vitest';
import { duration, grams, makeRoom, millilitres, millimetres } from '../../notebooks/base/bench-wording.js';
import { cSt, labelOf, offBy, softOrHard } from '../../notebooks/base/decision-cases.js';
import { plusMinus } from '../../notebooks/base/measured-shocks.js';
import { holdsAgainst, sealRules, sealWords } from '../../notebooks/base/seal-words.js';
import { spanOf, spanText } from '../../notebooks/base/span.js';
import { furtherBy, harderBy } from '../../notebooks/base/two-landings.js';
import { clock, finePercent, listed, percent } from '../../notebooks/base/wording.js';
import { holesShort, holesText } from '../../notebooks/what-to-drill/naming.js';

// Every page speaks through these; expected texts are written by hand.

describe('sizes as a bench has them', () => {
  test('lengths to a tenth, volumes to a hundredth, forces as a scale shows them', () => {
    expect(millimetres(0.014_24)).toBe('14.2 mm');
    expect(millimetres(-1e-6)).toBe('0 mm');
    expect(millilitres(4.634e-6)).toBe('4.63 ml');
    // 1 N is 1000/9.80665 = 102 g.
    expect(grams(1)).toBe('102 g');
  });

  test('times in seconds, minutes and hours, as long as one would say them', () => {
    expect([0.84, 9.96, 10, 119, 120, 5399, 5400, 9000].map(duration)).toEqual([
      '0.8 s',
      '10 s',
      '10 s',
      '119 s',
      '2 min',
      '90 min',
      '1.5 h',
      '2.5 h',
    ]);
    expect(duration(Number.POSITIVE_INFINITY)).toBe('for ever');
  });

  test('a shock that is closed fully in cannot be closed further in', () => {
    expect(makeRoom(0.02, 0.02)).toBe('give it more gas');
    expect(makeRoom(0.01, 0.02)).toBe('close it with the shaft further in, or give it more gas');
  });
});

describe('parts and times of day', () => {
  test('percent whole or with two digits', () => {
    expect([0.454, 1.2, -0.036].map(percent)).toEqual(['45 %', '120 %', '−4 %']);
    expect([0.0789, 0.454, 1.26].map(finePercent)).toEqual(['7.9 %', '45 %', '130 %']);
  });

  test('lists, and the clock', () => {
    expect([[], ['a'], ['a', 'b'], ['a', 'b', 'c']].map(listed)).toEqual(['', 'a', 'a and b', 'a, b and c']);
    expect([0, 52_200, 52_229, 52_231, 86_340].map(clock)).toEqual([
      '00:00',
      '14:30',
      '14:30',
      '14:31',
      '23:59',
    ]);
  });
});

describe('comparisons', () => {
  test('too soft and too hard by whole percent, right within half of one', () => {
    expect([0.93, 0.996, 1.004, 1.07].map(softOrHard)).toEqual([
      '7 % too soft',
      'right',
      'right',
      '7 % too hard',
    ]);
    // A deviation of 20 % counted the other way is 1 − 1/1.2 = 17 %.
    expect(offBy({ typical: 0.2, meanRatio: 0.9 })).toBe('17 %');
    expect(offBy({ typical: 0.2, meanRatio: 1.1 })).toBe('20 %');
  });

  test('further and less far, harder and softer', () => {
    expect([0.0123, 0.0117, 0.012_04].map((travel) => furtherBy(travel, 0.012))).toEqual([
      '0.3 mm further',
      '0.3 mm less far',
      'as far',
    ]);
    expect([33, 24, 30.1].map((push) => harderBy(push, 30))).toEqual([
      '10 % harder',
      '20 % softer',
      'as hard',
    ]);
  });

  test('a value with what is open about it', () => {
    expect(spanOf([3, 2, 5])).toEqual({ typical: 3, low: 2, high: 5 });
    const newtons = (value: number) => `${value.toFixed(1)} N`;
    expect(spanText({ typical: 3.1, low: 2.4, high: 3.9 }, newtons)).toBe('3.1 N (2.4 to 3.9)');
    expect(spanText({ typical: 3.1, low: 3.08, high: 3.12 }, newtons)).toBe('3.1 N');
    expect(plusMinus(385.4, 20.3, 'cSt')).toBe('385 ± 20 cSt');
    expect(plusMinus(1234, 234, 'cSt')).toBe('1230 ± 230 cSt');
    expect(plusMinus(0.3456, 0.0234, 'N')).toBe('0.346 ± 0.023 N');
    expect(plusMinus(5.678, 1.234, 'N')).toBe('5.7 ± 1.2 N');
  });
});

describe('oils and holes', () => {
  test('a viscosity is the label of its oil at 25 °C, and warmer oil of that viscosity has a higher one', () => {
    expect(cSt(287.4e-6)).toBe('287 cSt');
    expect(labelOf(350e-6, 298.15)).toBeCloseTo(350e-6, 12);
    expect(labelOf(350e-6, 308.15)).toBeGreaterThan(350e-6);
  });

  test('straight holes, and those that are reamed at one side', () => {
    const straight = { count: 5, drill: 1.4e-3, taper: 0, thickness: 2e-3, oil: 'a' };
    expect([holesText(straight), holesShort(straight)]).toEqual(['5 holes of 1.4 mm', '5 × 1.4 mm']);
    const reamed = { ...straight, count: 1, drill: 1e-3, taper: 0.2e-3 };
    expect([holesText(reamed), holesShort(reamed)]).toEqual([
      'one hole of 0.9 mm, reamed to 1.1 mm at the shaft side',
      '1 × 0.9 mm, shaft side 1.1 mm',
    ]);
    expect(holesText({ ...reamed, taper: -0.2e-3 })).toContain('reamed to 1.1 mm at the blind side');
  });
});

test('seals hold a shaft, let it go, or nobody knows', () => {
  const friction = (kineticForce: number) => ({
    kineticForce,
    breakawayForce: 1.5 * kineticForce,
    stribeckSpeed: 0,
  });
  const guess = { low: friction(0.1), typical: friction(0.3), high: friction(1), measured: false } as never;
  expect([0.1, 0.11, 1, 1.01].map((force) => holdsAgainst(guess, force))).toEqual([
    'holds',
    'unknown',
    'unknown',
    'gives',
  ]);
  // 0.1, 0.3 and 1 N are 10.2, 30.6 and 102 g.
  expect(sealWords(guess)).toBe('10 g to 102 g (typically 31 g; a guess)');
  expect(sealRules(guess).map(({ value, label }) => `${value.toFixed(1)} ${label}`)).toEqual([
    '102.0 tightest seals guessed hold it below',
    '-102.0 and above',
    '10.2 loosest',
    '-10.2 loosest',
  ]);
});
