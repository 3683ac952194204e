import type { MeasuredShock } from '../../lib/decisions/pair/measured-shock.js';
import type { Figure } from '../../lib/plot/chart/figure.js';
import { dotChart } from '../../lib/plot/figure/dot-chart.js';
import { percent } from '../base/wording.js';

/** Damping of each shock over the mean of all, with two standard uncertainties either way. */
export function pairFigure(shocks: readonly MeasuredShock[], limit: number): Figure {
  const mean = shocks.reduce((sum, { damping }) => sum + damping, 0) / shocks.length;
  const ratio = ({ damping }: MeasuredShock): number => damping / mean - 1;
  const sorted = [...shocks].sort((a, b) => a.damping - b.damping);
  const [softest, hardest] = [sorted[0], sorted.at(-1)];
  const apart = softest === undefined || hardest === undefined ? 0 : hardest.damping / softest.damping - 1;
  return dotChart({
    id: 'timed-shocks',
    title: 'Damping of each shock against the mean of all',
    alt: `${hardest?.name} damps ${percent(apart)} more than ${softest?.name}; shocks whose dots are closer than ${percent(limit)} make a pair. Whiskers: two standard uncertainties.`,
    category: 'Shock',
    categories: sorted.map(({ name }) => name),
    value: { label: 'Off the mean', unit: '%', dimension: 'ratio' },
    series: [
      {
        name: 'timed',
        dots: sorted.map((shock) => {
          const half = (2 * shock.relativeUncertainty * shock.damping) / mean;
          return {
            category: shock.name,
            value: ratio(shock),
            low: ratio(shock) - half,
            high: ratio(shock) + half,
          };
        }),
      },
    ],
  });
}
