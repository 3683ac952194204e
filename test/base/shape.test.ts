import { describe, expect, test } from 'vitest';
import { InputError } from '../../lib/base/input-error.js';
import {
  anything,
  built,
  byKind,
  listOf,
  madeWith,
  numbers,
  oneOf,
  record,
  requireShape,
  type Shape,
} from '../../lib/base/shape.js';
import { distinctWarnings, type Warning } from '../../lib/base/warning.js';

function refusal(check: () => void): InputError | undefined {
  try {
    check();
  } catch (error) {
    if (error instanceof InputError) return error;
  }
  return undefined;
}

describe('the form of a thing', () => {
  const shape = byKind({ round: { radius: 'm' }, slot: { width: 'm', face: oneOf('blind', 'shaft') } });

  test('is told by its kind, and each kind has its own fields', () => {
    expect(refusal(() => requireShape({ kind: 'round', radius: 1 }, shape, 'hole'))).toBeUndefined();
    expect(refusal(() => requireShape({ kind: 'slot', radius: 1 }, shape, 'hole'))?.field).toBe('hole.width');
    const face = { kind: 'slot', width: 1, face: 'left' };
    expect(refusal(() => requireShape([face], listOf(shape), 'holes'))?.field).toBe('holes[0].face');
  });

  test('that may lack all its fields is told from what has none: a date, a map, typed numbers, a boxed number', () => {
    class Setting {
      readonly hole = 1;
    }
    for (const good of [{}, { hole: 1 }, new Setting(), Object.create(null)])
      expect(refusal(() => requireShape(good, record, 'settings'))).toBeUndefined();
    for (const bad of [new Date(0), new Map(), Float64Array.of(1), Object(3), [], null, 3, 'a', () => ({})])
      expect(refusal(() => requireShape(bad, record, 'settings'))?.field).toBe('settings');
  });

  test('is a plain list without holes, and typed numbers where those are asked for, but no view without a length', () => {
    const fault = (value: unknown, of: Shape) => refusal(() => requireShape(value, of, 'all'))?.message;
    const lists = [listOf('m'), listOf({ size: 'm' })];
    expect(lists.map((of) => fault([], of))).toEqual([undefined, undefined]);
    for (const of of lists) {
      for (const odd of [Float64Array.of(), new DataView(new ArrayBuffer(8)), { length: 0 }, new Set()])
        expect(fault(odd, of)).toMatch(/^all must be a list/u);
    }
    const holed = Object.assign([1], { length: 2 });
    expect(fault(holed, listOf('m'))).toBe('all[1] must be a finite number m, got undefined');
    expect(fault(holed, listOf(anything))).toBe('all[1] must be given, got undefined');
    expect([fault(Float64Array.of(1, 2), numbers), fault([1, 2], numbers)]).toEqual([undefined, undefined]);
    expect(fault(new DataView(new ArrayBuffer(8)), numbers)).toMatch(/^all must be a list/u);
    expect(fault(Float64Array.of(1, Number.NaN), numbers)).toMatch(/^all\[1\] must be a finite number/u);
  });

  test('that the language names is told by that name', () => {
    expect(refusal(() => requireShape(new Map(), built('Map'), 'pictures'))).toBeUndefined();
    for (const odd of [{ get: () => 1 }, new Set(), null, undefined])
      expect(refusal(() => requireShape(odd, built('Map'), 'pictures'))?.message).toMatch(
        /^pictures must be a Map/u,
      );
  });

  test('of another kind is refused by the kind, whether it has a name or is the whole', () => {
    const odd = refusal(() => requireShape({ kind: 'star' }, shape, 'hole'));
    expect([odd?.field, odd?.accepted]).toEqual(['hole.kind', 'one of round, slot']);
    expect(refusal(() => requireShape({ kind: 'star' }, shape, ''))?.field).toBe('kind');
  });

  test('of what the library made is told by one field, named where it is missing', () => {
    const made = madeWith('typical');
    expect(refusal(() => requireShape({ typical: undefined }, made, 'oil'))).toBeUndefined();
    expect(refusal(() => requireShape({ other: 1 }, made, 'oil'))?.field).toBe('oil.typical');
    expect(refusal(() => requireShape(3, made, 'oil'))?.field).toBe('oil');
  });
});

test('of warnings of one code the first is kept', () => {
  const warning = (code: Warning['code'], value: number): Warning => ({ code, message: '', value, limit: 1 });
  const kept = distinctWarnings([
    warning('cavitation', 1),
    warning('shear-thinning', 2),
    warning('cavitation', 3),
  ]);
  expect(kept.map(({ code, value }) => [code, value])).toEqual([
    ['cavitation', 1],
    ['shear-thinning', 2],
  ]);
});
