import { dequal } from 'dequal/lite';
import { madeWith, requireShape } from '../../base/shape.js';
import type { Figure } from '../chart/figure.js';
import { dotsBeside } from './dot-chart.js';
import { linesBeside } from './line-chart.js';
import { scatterBeside } from './scatter-chart.js';

/**
 * A figure with the same figure of an earlier case in grey behind it. Its axes hold both cases, so that they stand still
 * while the new case stays within the range of the earlier one.
 *
 * @param figure - the figure of the case looked at
 * @param start - the figure of the case that the eye compares with
 * @returns the figure with both; the figure as it is where the two are of different kinds, or show the same
 *
 * @public
 */
export function besideStart(figure: Figure, start: Figure): Figure {
  requireShape({ figure, start }, { figure: madeWith('drawings'), start: madeWith('drawings') });
  return withStart(figure, start);
}

/** The same of figures that were checked when they were made. */
export function withStart(figure: Figure, start: Figure): Figure {
  const [now, before] = [figure.chart, start.chart];
  if (dequal(now.shows.series, before.shows.series)) return figure;
  if (now.kind === 'line' && before.kind === 'line') return linesBeside(now.shows, before.shows);
  if (now.kind === 'dot' && before.kind === 'dot') return dotsBeside(now.shows, before.shows);
  if (now.kind === 'scatter' && before.kind === 'scatter') return scatterBeside(now.shows, before.shows);
  return figure;
}
