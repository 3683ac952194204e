import type { Figure } from '../../lib/plot/chart/figure.js';
import { dotChart } from '../../lib/plot/figure/dot-chart.js';
import { changeIn, type Effect, type Measured } from './effects.js';

/** What each change does to slow and fast damping. */
export function changesFigure(before: Measured, effects: readonly Effect[], alt: string): Figure {
  const sorted = [...effects].sort((a, b) => b.gain - a.gain);
  const of = (measure: 'slow' | 'fast') =>
    sorted.map(({ name, after }) => ({ category: name, value: changeIn(measure, before, after) }));
  return dotChart({
    id: 'changes-figure',
    title: 'Slow and fast damping, more or less than now',
    alt,
    category: 'Change',
    categories: sorted.map(({ name }) => name),
    value: { label: 'Damping, more or less than now', unit: '%', dimension: 'ratio' },
    series: [
      { name: 'slow, in rebound', dots: of('slow') },
      { name: 'fast, pushed in', dots: of('fast') },
    ],
  });
}
