import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spreadLabels } from '../../lib/plot/drawing/end-labels.js';

const wanted = fc.array(fc.record({ wanted: fc.double({ min: 0, max: 300, noNaN: true }) }), {
  minLength: 1,
  maxLength: 12,
});

describe('names at the ends of lines', () => {
  it('keep their order, their distance and the plot', () => {
    fc.assert(
      fc.property(wanted, (labels) => {
        const placed = spreadLabels(labels, 17, 0, 300);
        expect(placed.map((label) => label.wanted)).toEqual(
          labels.map((label) => label.wanted).sort((a, b) => a - b),
        );
        for (const [index, label] of placed.entries()) {
          expect(label.top).toBeGreaterThanOrEqual(-1e-9);
          expect(label.top).toBeLessThanOrEqual(300 + 1e-9);
          const below = placed[index + 1];
          if (below !== undefined) expect(below.top - label.top).toBeGreaterThanOrEqual(17 - 1e-9);
        }
      }),
    );
  });

  it('stay where they want to be while there is room', () => {
    expect(spreadLabels([{ wanted: 100 }, { wanted: 20 }], 17, 0, 300).map(({ top }) => top)).toEqual([
      20, 100,
    ]);
  });

  it('move apart about their mean', () => {
    expect(spreadLabels([{ wanted: 100 }, { wanted: 100 }], 20, 0, 300).map(({ top }) => top)).toEqual([
      90, 110,
    ]);
  });

  it('move least in the sense of least squares', () => {
    // Isotonic regression: the value at a place is the largest of the least means of what reaches it from below, and bounds cut it off
    // (Robertson, Wright & Dykstra, "Order Restricted Statistical Inference", 1988, theorem 1.4.4, from memory).
    fc.assert(
      fc.property(wanted, (labels) => {
        const moved = labels
          .map((label) => label.wanted)
          .sort((a, b) => a - b)
          .map((at, place) => at - 17 * place);
        const mean = (from: number, to: number): number =>
          moved.slice(from, to + 1).reduce((sum, at) => sum + at, 0) / (to + 1 - from);
        const places = [...moved.keys()];
        const least = places.map((place) =>
          Math.max(
            ...places
              .filter((from) => from <= place)
              .map((from) => Math.min(...places.filter((to) => to >= place).map((to) => mean(from, to)))),
          ),
        );
        const high = 300 - 17 * (labels.length - 1);
        const bounded = least.map((at, place) => Math.min(high, Math.max(0, at)) + 17 * place);
        const off = spreadLabels(labels, 17, 0, 300).map(
          ({ top }, place) => top - (bounded[place] ?? Number.NaN),
        );
        expect(Math.max(...off.map(Math.abs))).toBeLessThan(1e-6);
      }),
    );
  });

  it('run past the lower end where they do not fit', () => {
    const many = Array.from({ length: 4 }, () => ({ wanted: 10 }));
    expect(spreadLabels(many, 17, 0, 30).map(({ top }) => top)).toEqual([0, 17, 34, 51]);
  });
});
