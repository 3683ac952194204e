import { describe, expect, test } from 'vitest';
import {
  requireCount,
  requireFinite,
  requireNotNegative,
  requirePositive,
  requireWithin,
} from '../../lib/base/checks.js';
import { InputError } from '../../lib/base/input-error.js';

function refusal(check: () => void): InputError {
  try {
    check();
  } catch (error) {
    if (error instanceof InputError) return error;
  }
  throw new Error('accepted');
}

describe('a refusal', () => {
  test.each([
    ['above 0', () => requirePositive(0, 'size', 'm'), { above: 0 }],
    ['0 or more', () => requireNotNegative(-1, 'size', 'm'), { from: 0 }],
    ['within', () => requireWithin(4, 1, 3, 'size', 'm'), { from: 1, to: 3 }],
    ['a count', () => requireCount(1.5, 'size'), { from: 1 }],
    ['finite', () => requireFinite(Number.NaN, 'size', 'm'), {}],
  ])('says its limits as numbers: %s', (_name, check, limits) => {
    expect(refusal(check)).toMatchObject({ field: 'size', limits });
    expect(Object.keys(refusal(check).limits)).toEqual(Object.keys(limits));
  });

  test('shows the start of a long text, and signs that a terminal obeys or that turn the writing as letters', () => {
    const said = (value: unknown) => new InputError({ field: 'a', value, accepted: 'b' }).message;
    expect(said('x'.repeat(100))).toBe(`a must be b, got ${'x'.repeat(100)}`);
    expect(said('x'.repeat(1e6))).toBe(`a must be b, got ${'x'.repeat(100)}…`);
    expect(said('1\u202e2\u001b[2J\u061c')).toBe('a must be b, got 1\\u202e2\\u001b[2J\\u061c');
    expect(said('12 °C, 油')).toBe('a must be b, got 12 °C, 油');
    expect(said(Symbol('s'))).toBe('a must be b, got Symbol(s)');
    expect(said(10n)).toBe('a must be b, got 10');
  });

  test('says the same in words', () => {
    expect(refusal(() => requireWithin(4, 1, 3, 'size', 'm')).message).toBe('size must be 1 to 3 m, got 4 m');
  });
});
