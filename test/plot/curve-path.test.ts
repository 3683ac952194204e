import { describe, expect, it } from 'vitest';
import { curvePaths } from '../../lib/plot/drawing/curve-path.js';

const paths = curvePaths({ xDomain: [0, 10], yDomain: [-1, 1] }, { width: 100, height: 50 });

describe('the paths of a chart', () => {
  it('run from the left end to the right, upwards as the values rise', () => {
    expect(
      paths.line([
        { x: 0, y: -1 },
        { x: 5, y: 0.5 },
        { x: 10, y: 1 },
      ]),
    ).toBe('M0,50L50,12.5L100,0');
  });

  it('leave out points that nobody would miss, and pass no other by more than 0.05 px', () => {
    const straight = Array.from({ length: 11 }, (_, x) => ({ x, y: x / 10 }));
    expect(paths.line(straight)).toBe('M0,25L100,0');
    const bent = Array.from({ length: 61 }, (_, index) => ({ x: index / 6, y: (index / 60) ** 2 }));
    const kept = paths
      .line(bent)
      .slice(1)
      .split('L')
      .map((place) => place.split(',').map(Number) as [number, number]);
    expect(kept.length).toBeLessThan(20);
    for (const { x, y } of bent) {
      const [left, top] = [10 * x, 25 * (1 - y)];
      const after = kept.findIndex(([at]) => at >= left - 0.01);
      const [b, a] = [kept[Math.max(after, 1)], kept[Math.max(after, 1) - 1]];
      if (a === undefined || b === undefined) throw new Error('the path ends before its points');
      const onPath = a[1] + ((b[1] - a[1]) * (left - a[0])) / (b[0] - a[0]);
      // 0.05 px square to the path, and 0.005 px of rounding; the path rises by less than 27° here.
      expect(Math.abs(onPath - top)).toBeLessThan(0.055 / Math.cos(Math.atan(0.5)));
    }
  });

  it('leave the plot with values outside the domain, where the chart cuts them off', () => {
    expect(
      paths.line([
        { x: -1, y: 3 },
        { x: 11, y: -2 },
      ]),
    ).toBe('M-10,-50L110,75');
  });

  it('go round a band, there along its high end and back along the low one', () => {
    expect(
      paths.band([
        { x: 0, y: 0, low: -1, high: 1 },
        { x: 10, y: 0, low: -0.5, high: 0.5 },
      ]),
    ).toBe('M0,0L100,12.5L100,37.5L0,50Z');
  });

  it('have no band where the points have none, or one end only', () => {
    expect(paths.band([{ x: 0, y: 0 }])).toBe('');
    const whole = { x: 0, y: 0, low: -1, high: 1 };
    for (const half of [
      { x: 5, y: 0, low: -1 },
      { x: 5, y: 0, high: 1 },
    ]) {
      expect(paths.band([half])).toBe('');
      expect(paths.band([whole, half, { ...whole, x: 10 }])).toBe('M0,0L100,0L100,50L0,50Z');
    }
  });

  it('round to 0.01 px', () => {
    const [, place] = paths.line([{ x: 10 / 3, y: 1 / 3 }]).split('M');
    expect(place).toBe('33.33,16.67');
  });
});
