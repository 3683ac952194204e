import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { textWidth } from '../../lib/plot/chart/text-width.js';
import { pointLabels } from '../../lib/plot/drawing/point-labels.js';
import { boxOf, meets, pairsOf } from './boxes.js';

// A marked point is a circle of up to 12 px; its label is set in 12 px.
const plot = { width: 300, height: 200 };
const dotAt = (left: number, top: number) => ({
  left: left - 6,
  right: left + 6,
  top: top - 6,
  bottom: top + 6,
});
const alone = (left: number, top: number, label = 'ab') => {
  const [placed] = pointLabels([{ label, left, top }], [], plot);
  if (placed === undefined) throw new Error('no label');
  return placed;
};

describe('the label of a point by itself', () => {
  test.each([
    ['in the middle', 150, 100, 'right', 'above'],
    ['at the left edge', 2, 100, 'right', 'above'],
    ['at the right edge', 295, 100, 'left', 'above'],
    ['at the upper edge', 150, 3, 'right', 'below'],
    ['at the lower edge', 150, 197, 'right', 'above'],
    ['in the upper right corner', 298, 2, 'left', 'below'],
  ] as const)('%s stands beside it', (_, left, top, side, height) => {
    const box = boxOf(alone(left, top));
    // Beside the circle with no more than a few pixels between.
    const away = side === 'right' ? box.left - (left + 6) : left - 6 - box.right;
    expect(away).toBeGreaterThan(0);
    expect(away).toBeLessThan(4);
    const off = (box.top + box.bottom) / 2 - top;
    expect(height === 'above' ? -off : off).toBeGreaterThan(6);
    expect(Math.abs(off)).toBeLessThan(16);
  });

  test('where there is room on neither side stands about the middle, clear of the circle', () => {
    const [label] = pointLabels([{ label: 'nnnnnnnnnn', left: 52, top: 100 }], [], {
      width: 100,
      height: 200,
    });
    if (label === undefined) throw new Error('no label');
    const box = boxOf(label);
    expect((box.left + box.right) / 2).toBeCloseTo(52, 6);
    expect(meets(box, dotAt(52, 100))).toBe(false);
    expect(100 - label.top).toBeLessThan(30);
  });

  test.each([10, 90])('that is nearly as wide as the plot stays in it, at %s px', (left) => {
    const narrow = { width: 100, height: 200 };
    // Ten letters of the middle width are 73 px wide: neither side of the point nor its middle has room for them.
    const [label] = pointLabels([{ label: 'nnnnnnnnnnnn', left, top: 100 }], [], narrow);
    if (label === undefined) throw new Error('no label');
    expect(boxOf(label).left).toBeGreaterThanOrEqual(0);
    expect(boxOf(label).right).toBeLessThanOrEqual(100);
  });

  test('is shortened to the plot, and takes nearly all of it', () => {
    const { text } = alone(150, 100, 'n'.repeat(100));
    expect(textWidth(text, 12)).toBeLessThanOrEqual(300 - 12);
    expect(textWidth(text, 12)).toBeGreaterThan(300 - 12 - 2 * 12);
  });

  test('that says nothing takes no place', () => {
    expect(pointLabels([{ label: '', left: 150, top: 100 }], [], plot)).toEqual([]);
    const [beside] = pointLabels(
      [
        { label: '', left: 150, top: 150 },
        { label: 'ab', left: 150, top: 100 },
      ],
      [],
      plot,
    );
    expect(beside).toEqual(alone(150, 100));
  });
});

describe('labels of points in each other’s way', () => {
  test('take the four corners of one place first, and then rows further off', () => {
    const same = Array.from({ length: 6 }, (_, place) => ({ label: `${place}`, left: 150, top: 100 }));
    const placed = pointLabels(same, [], plot);
    const corners = placed
      .slice(0, 4)
      .map(({ left, top }) => `${left > 150 ? 'right' : 'left'} ${top < 100 ? 'above' : 'below'}`);
    expect(corners).toEqual(['right above', 'left above', 'right below', 'left below']);
    const off = placed.map(({ top }) => Math.abs(top - 100));
    expect(new Set(off.slice(0, 4)).size).toBe(1);
    for (const further of off.slice(4)) expect(further).toBeGreaterThan(off[0] ?? 0);
  });

  test('keep off a point that has no label, and off a text that is there before', () => {
    const free = alone(150, 100);
    const marked = { left: free.left + 8, top: free.top };
    const [beside] = pointLabels(
      [
        { label: 'ab', left: 150, top: 100 },
        { label: '', ...marked },
      ],
      [],
      plot,
    );
    expect(meets(boxOf(beside ?? free), dotAt(marked.left, marked.top))).toBe(false);
    // A text that ends, and one that begins, where the label would stand.
    for (const left of [free.left - 60, free.left + 4]) {
      const taken = { left, top: free.top + 5, text: 'nnnnnnnnn' };
      const [other] = pointLabels([{ label: 'ab', left: 150, top: 100 }], [taken], plot);
      expect(meets(boxOf(other ?? free), boxOf(taken))).toBe(false);
    }
    // One that ends well before it leaves it where it is.
    const before = { left: free.left - 90, top: free.top, text: 'nnnnnnnnn' };
    expect(pointLabels([{ label: 'ab', left: 150, top: 100 }], [before], plot)[0]).toEqual(free);
  });

  test('meet neither each other nor a point, with a space between two in a row, and stay in the plot', () => {
    const point = fc.record({
      left: fc.integer({ min: 0, max: 300 }),
      top: fc.integer({ min: 0, max: 200 }),
      label: fc.constantFrom('1', '12', 'ab', 'slow', ''),
    });
    fc.assert(
      fc.property(fc.array(point, { minLength: 1, maxLength: 6 }), (points) => {
        const placed = pointLabels(points, [], plot);
        expect(placed.map(({ text }) => text)).toEqual(
          points.map(({ label }) => label).filter((label) => label !== ''),
        );
        const boxes = placed.map(boxOf);
        // A line of text is 16 px high with its leading.
        const wrong = boxes.filter(
          (box) =>
            box.left < 0 ||
            box.right > 300 ||
            box.top < 2 ||
            box.bottom > 198 ||
            points.some(({ left, top }) => meets(box, dotAt(left, top))),
        );
        const near = pairsOf(boxes).filter(([a, b]) =>
          meets({ ...a, left: a.left - 6, right: a.right + 6 }, b),
        );
        expect([...wrong, ...near]).toEqual([]);
      }),
    );
  });

  test('are all drawn even where no place is left', () => {
    const many = Array.from({ length: 40 }, (_, place) => ({ label: `no. ${place}`, left: 30, top: 40 }));
    const placed = pointLabels(many, [], { width: 60, height: 80 });
    expect(placed).toHaveLength(40);
    for (const label of placed) {
      expect(boxOf(label).left).toBeGreaterThanOrEqual(0);
      expect(boxOf(label).right).toBeLessThanOrEqual(60);
    }
  });
});
