import { describe, expect, test } from 'vitest';
import { keptResults } from '../../lib/base/kept-results.js';

function counted(most: number) {
  const kept = keptResults<object, string>(most);
  let computed = 0;
  const ask = (owner: object, input: unknown): string =>
    kept(owner, input, () => {
      computed += 1;
      return `result ${computed}`;
    });
  return { ask, computed: () => computed };
}

describe('kept results', () => {
  test('the same input of the same owner is computed once, whatever object it stands in', () => {
    const { ask, computed } = counted(4);
    const owner = {};
    expect(ask(owner, { speed: 1, at: [2] })).toBe('result 1');
    expect(ask(owner, { speed: 1, at: [2] })).toBe('result 1');
    expect(ask(owner, { speed: 1, at: [3] })).toBe('result 2');
    expect(ask({}, { speed: 1, at: [2] })).toBe('result 3');
    expect(computed()).toBe(3);
  });

  test('numbers that JSON has no word for are told apart', () => {
    const { ask } = counted(4);
    const owner = {};
    const asked = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NaN, null].map((input) =>
      ask(owner, { input }),
    );
    expect(new Set(asked).size).toBe(4);
  });

  test('what JSON cannot write is computed each time', () => {
    const { ask } = counted(4);
    const [owner, ring] = [{}, { speed: 1, self: {} }];
    ring.self = ring;
    expect([ask(owner, ring), ask(owner, ring), ask(owner, 3n)]).toEqual([
      'result 1',
      'result 2',
      'result 3',
    ]);
  });

  test('the one that was not asked for the longest goes first', () => {
    const { ask } = counted(2);
    const owner = {};
    ask(owner, 'a');
    ask(owner, 'b');
    ask(owner, 'a');
    ask(owner, 'c');
    expect([ask(owner, 'a'), ask(owner, 'b')]).toEqual(['result 1', 'result 4']);
  });

  test('nothing is kept of a computation that fails', () => {
    const kept = keptResults<object, number>(2);
    const owner = {};
    expect(() =>
      kept(owner, 1, () => {
        throw new RangeError('no');
      }),
    ).toThrow('no');
    expect(kept(owner, 1, () => 7)).toBe(7);
  });
});
