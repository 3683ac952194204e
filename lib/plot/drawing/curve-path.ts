import thinned from 'simplify-js';
import type { Plot } from '../chart/layout.js';
import type { LinePoint, LinesInUnits } from '../chart/lines.js';

/** Writes points of a chart as paths over its plot; coordinates are rounded to 0.01 px. */
export interface CurvePaths {
  readonly line: (points: readonly LinePoint[]) => string;
  /** The area between `low` and `high` of the points that have them, or nothing. */
  readonly band: (points: readonly LinePoint[]) => string;
}

interface Place {
  readonly x: number;
  readonly y: number;
}

/** How far a path may pass by a point that it leaves out [px]: nobody sees it, and a smooth curve needs a quarter of its points. */
const leeway = 0.05;

/** Paths on the scales of a chart. */
export function curvePaths(
  { xDomain, yDomain }: Pick<LinesInUnits, 'xDomain' | 'yDomain'>,
  plot: Plot,
): CurvePaths {
  const [xLow, xHigh] = xDomain;
  const [yLow, yHigh] = yDomain;
  const perX = plot.width / (xHigh - xLow);
  const perY = plot.height / (yHigh - yLow);
  const place = (x: number, y: number): Place => ({ x: (x - xLow) * perX, y: (yHigh - y) * perY });
  return {
    line: (points) => `M${path(points.map(({ x, y }) => place(x, y)))}`,
    band: (points) => {
      const ends = points.flatMap(({ x, low, high }) =>
        low === undefined || high === undefined ? [] : [{ x, low, high }],
      );
      if (ends.length === 0) return '';
      const there = ends.map(({ x, high }) => place(x, high));
      const back = ends.map(({ x, low }) => place(x, low)).reverse();
      return `M${path(there)}L${path(back)}Z`;
    },
  };
}

function path(places: Place[]): string {
  return thinned(places, leeway, true)
    .map(({ x, y }) => `${rounded(x)},${rounded(y)}`)
    .join('L');
}

function rounded(pixels: number): number {
  return Math.round(100 * pixels) / 100;
}
