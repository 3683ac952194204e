import type { Plot } from './layout.js';
import type { LinePoint, LinesShown } from './lines.js';

/** Writes points of a chart as paths over its plot; coordinates are rounded to 0.01 px. */
export interface CurvePaths {
  readonly line: (points: readonly LinePoint[]) => string;
  /** The area between `low` and `high` of the points that have them, or nothing. */
  readonly band: (points: readonly LinePoint[]) => string;
}

/** Paths on the scales of a chart. */
export function curvePaths(
  { xDomain, yDomain }: Pick<LinesShown, 'xDomain' | 'yDomain'>,
  plot: Plot,
): CurvePaths {
  const [xLow, xHigh] = xDomain;
  const [yLow, yHigh] = yDomain;
  const perX = plot.width / (xHigh - xLow);
  const perY = plot.height / (yHigh - yLow);
  const place = (x: number, y: number): string =>
    `${rounded((x - xLow) * perX)},${rounded((yHigh - y) * perY)}`;
  return {
    line: (points) => `M${points.map(({ x, y }) => place(x, y)).join('L')}`,
    band: (points) => {
      const ends = points.flatMap(({ x, low, high }) =>
        low === undefined || high === undefined ? [] : [{ x, low, high }],
      );
      if (ends.length === 0) return '';
      const there = ends.map(({ x, high }) => place(x, high));
      const back = ends.map(({ x, low }) => place(x, low)).reverse();
      return `M${[...there, ...back].join('L')}Z`;
    },
  };
}

function rounded(pixels: number): number {
  return Math.round(100 * pixels) / 100;
}
