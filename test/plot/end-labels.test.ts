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
});
