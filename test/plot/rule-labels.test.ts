import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { LinesInUnits, MarkedPoint, Rule } from '../../lib/plot/chart/lines.js';
import { placedRules } from '../../lib/plot/drawing/rule-labels.js';
import { boxOf, meets, pairsOf } from './boxes.js';

// A plot of 200 by 100 px from 0 to 10 across and 0 to 50 up, all moved by 30: 20 px and 2 px for a step of 1.
const plot = { width: 200, height: 100 };
const moved = 30;
const placed = (rules: readonly Rule[], points: readonly MarkedPoint[] = []) => {
  const shown: LinesInUnits = {
    title: '',
    x: { label: 'x', unit: '' },
    y: { label: 'y', unit: '' },
    series: [],
    startingCase: [],
    rules: rules.map((rule) => ({ ...rule, value: rule.value + moved })),
    points: points.map((point) => ({ ...point, x: point.x + moved, y: point.y + moved })),
    xDomain: [moved, moved + 10],
    yDomain: [moved, moved + 50],
  };
  return placedRules(shown, plot);
};
const upright = (value: number, label = 'ab'): Rule => ({ axis: 'x', value, label });
const level = (value: number, label = 'ab'): Rule => ({ axis: 'y', value, label });

describe('a rule', () => {
  test('crosses the whole plot at its value', () => {
    expect(placed([upright(3), level(20)]).rows).toEqual([
      { x: 33, x2: 33, y: 30, y2: 80 },
      { x: 30, x2: 40, y: 50, y2: 50 },
    ]);
  });

  test('is drawn, with its label, at an end of an axis but not outside', () => {
    expect(placed([upright(0), upright(10), level(0), level(50)]).rows).toHaveLength(4);
    const outside = placed([upright(-0.1), upright(10.1), level(-0.1), level(50.1), upright(20), level(11)]);
    expect(outside.rows).toEqual([{ x: 30, x2: 40, y: 41, y2: 41 }]);
    expect(outside.texts).toHaveLength(1);
  });
});

describe('the label of an upright rule', () => {
  test('stands at the top, right of it by half a letter', () => {
    const [label] = placed([upright(3)]).texts;
    expect(label?.left).toBeCloseTo(60 + 6, 9);
    // The first line of the plot: the height of its middle is between half a letter and a letter.
    expect(label?.top).toBeGreaterThan(6);
    expect(label?.top).toBeLessThan(12);
  });

  test('stands left of it where it would leave the plot, and inside where there is room on neither side', () => {
    const [label] = placed([upright(9.5)]).texts;
    expect(boxOf(label ?? { left: 0, top: 0, text: '' }).right).toBeCloseTo(190 - 6, 9);
    const [wide] = placed([upright(5, 'n'.repeat(60))]).texts;
    const box = boxOf(wide ?? { left: 0, top: 0, text: '' });
    expect(box.left).toBe(6);
    expect(box.right).toBeLessThanOrEqual(200 - 6);
    expect(box.right).toBeGreaterThan(200 - 6 - 2 * 12);
  });

  test('goes a row lower where it would run into one further left, and up again where there is room', () => {
    // 'nnnn' is about 30 px wide: the second begins at 66 px, where the first has not ended; the third at 146 px.
    const { texts } = placed([upright(7, 'third'), upright(3, 'nnnn'), upright(2, 'nnnn first')]);
    const topOf = (start: string): number =>
      texts.find(({ text }) => text.startsWith(start))?.top ?? Number.NaN;
    const second = texts.find(({ text }) => text === 'nnnn')?.top ?? Number.NaN;
    expect(second - topOf('nnnn first')).toBeGreaterThan(14);
    expect(second - topOf('nnnn first')).toBeLessThan(20);
    expect(topOf('third')).toBe(topOf('nnnn first'));
  });

  test('keeps half a letter to the next in its row', () => {
    // The first label begins at 26 px; four letters of 7.3 px end at 55.3 px.
    const at = (value: number) =>
      placed([upright(1, 'nnnn'), upright(value, 'b')]).texts.map(({ top }) => top);
    const [first, near] = at((55.3 + 4 - 6) / 20);
    expect(near).toBeGreaterThan(first ?? Number.NaN);
    const [one, far] = at((55.3 + 8 - 6) / 20);
    expect(far).toBe(one);
  });
});

describe('the label of a level rule', () => {
  test('stands just over it at the left edge', () => {
    const [label] = placed([level(20)]).texts;
    expect(label?.left).toBe(6);
    const off = 60 - (label?.top ?? Number.NaN);
    expect(off).toBeGreaterThan(6);
    expect(off).toBeLessThan(12);
  });

  test('stays in the plot where the rule is at its upper edge', () => {
    const [label] = placed([level(49)]).texts;
    expect(label?.top).toBeGreaterThan(6);
    expect(label?.top).toBeLessThan(12);
  });
});

describe('the labels of a level rule and of others', () => {
  test('under its rule where the label of an upright one stands over it', () => {
    const [label] = placed([level(42, 'level'), upright(0.2)]).texts.filter(({ text }) => text === 'level');
    // The rule stands at 16 px; over it is the row of the upright ones.
    expect(label?.left).toBe(6);
    expect(label?.top).toBeGreaterThan(16 + 6);
    expect(label?.top).toBeLessThan(16 + 12);
  });

  test('at the right end where another level rule is just under it and an upright one over it', () => {
    const { texts } = placed([upright(0.2), level(40, 'low'), level(43, 'high')]);
    const high = texts.find(({ text }) => text === 'high');
    expect(boxOf(high ?? { left: 0, top: 0, text: '' }).right).toBeCloseTo(200 - 6, 9);
  });

  test('never meet, wherever two level rules and an upright one are', () => {
    const value = (most: number) => fc.double({ min: 0, max: most, noNaN: true });
    fc.assert(
      fc.property(value(10), value(50), value(50), (x, one, other) => {
        const { texts } = placed([upright(x, 'upright'), level(one, 'one'), level(other, 'other')]);
        for (const [a, b] of pairsOf(texts.map(boxOf))) expect(meets(a, b)).toBe(false);
        for (const box of texts.map(boxOf)) {
          expect(box.top).toBeGreaterThanOrEqual(0);
          expect(box.bottom).toBeLessThanOrEqual(100);
        }
      }),
    );
  });
});

describe('a marked point', () => {
  test('has its label beside the place of its values', () => {
    const [label] = placed([], [{ x: 2, y: 10, label: 'p' }]).texts;
    // At 40 px across and 80 px down.
    expect(label?.left).toBeGreaterThan(40 + 6);
    expect(label?.left).toBeLessThan(40 + 10);
    expect(Math.abs((label?.top ?? Number.NaN) - 80)).toBeLessThan(16);
  });

  test('has a label inside the axes and at their ends only', () => {
    const at = (x: number, y: number) => placed([], [{ x, y, label: 'p' }]).texts.length;
    expect([at(0, 0), at(10, 50), at(5, 20)]).toEqual([1, 1, 1]);
    expect([at(-0.1, 20), at(10.1, 20), at(5, -0.1), at(5, 50.1)]).toEqual([0, 0, 0, 0]);
  });

  test('has a label that keeps off those of the rules', () => {
    const { texts } = placed(
      [upright(3, 'upright'), level(20, 'level')],
      [
        { x: 3, y: 45, label: 'a' },
        { x: 0.5, y: 20, label: 'b' },
      ],
    );
    expect(texts.map(({ text }) => text)).toEqual(['upright', 'level', 'a', 'b']);
    for (const [a, b] of pairsOf(texts.map(boxOf))) expect(meets(a, b)).toBe(false);
  });
});
