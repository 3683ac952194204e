import type { Figure } from '../../lib/plot/chart/figure.js';
import { dotChart } from '../../lib/plot/figure/dot-chart.js';
import { finePercent, percent } from '../base/wording.js';
import type { TimedGroup } from './groups.js';

/** Time of each shock of one build over the mean of all, with two standard uncertainties either way. */
export function timesFigure({ build, shocks }: TimedGroup, place: number, limit: number): Figure {
  const mean = shocks.reduce((sum, { damping }) => sum + damping, 0) / shocks.length;
  const sorted = [...shocks].sort((a, b) => a.damping - b.damping);
  const [quickest, slowest] = [sorted[0], sorted.at(-1)];
  const apart = quickest === undefined || slowest === undefined ? 0 : slowest.damping / quickest.damping - 1;
  return dotChart({
    id: `timed-shocks-${place + 1}`,
    title: `Times of ${build.name} against their mean`,
    alt: `${slowest?.name} took ${finePercent(apart)} longer than ${quickest?.name}; shocks whose dots are closer than ${percent(limit)} make a pair. Whiskers: two standard uncertainties of what the time says of damping.`,
    category: 'Shock',
    categories: sorted.map(({ name }) => name),
    value: { label: 'Time off the mean', unit: '%', dimension: 'ratio' },
    series: [
      {
        name: 'timed',
        dots: sorted.map(({ name, damping, relativeUncertainty }) => {
          const value = damping / mean - 1;
          const half = (2 * relativeUncertainty * damping) / mean;
          return { category: name, value, low: value - half, high: value + half };
        }),
      },
    ],
  });
}
