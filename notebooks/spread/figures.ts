import type { TolerancedBuild } from '../../lib/decisions/spread/toleranced-build.js';
import { capital } from '../../lib/page/blocks/capital.js';
import type { Figure } from '../../lib/plot/chart/figure.js';
import { dotChart } from '../../lib/plot/figure/dot-chart.js';
import { histogram } from '../../lib/plot/figure/histogram.js';
import { newtons, percent } from '../base/wording.js';
import { type Cause, drawn, type TwoSpreads } from './two-spreads.js';
import { answerPlace, motionText, plainName } from './wording.js';

/** How the force at the middle speed spreads over all builds drawn. */
export function histogramFigure(build: TolerancedBuild, { draws, together }: TwoSpreads): Figure {
  const all = draws();
  const outputs = build.speeds.length;
  const forces = Array.from({ length: drawn }, (_, index) =>
    Math.abs(all[index * outputs + answerPlace] ?? 0),
  );
  const spread = together()[answerPlace];
  const [low = 0, middle = 0, high = 0] = [spread?.low ?? 0, spread?.median ?? 0, spread?.high ?? 0]
    .map(Math.abs)
    .sort((a, b) => a - b);
  const motion = motionText(build.speeds[answerPlace] ?? 0);
  return histogram({
    id: 'force-spread',
    title: `Force in ${motion} over ${drawn} builds`,
    alt: `Half of the builds hold back with less than ${newtons(middle)}; one in twenty with less than ${newtons(low)}, one in twenty with more than ${newtons(high)}.`,
    value: { label: `Force in ${motion}`, unit: 'N', dimension: 'force' },
    values: forces,
    counted: 'builds',
    rules: [
      { axis: 'x', value: low, label: '5 %' },
      { axis: 'x', value: middle, label: 'half' },
      { axis: 'x', value: high, label: '95 %' },
    ],
  });
}

/** Which size causes which share of what sets left and right apart, at each speed. */
export function sharesFigure({ build, shares }: Cause): Figure {
  const ranked = [...(shares[answerPlace] ?? [])].sort((a, b) => b.total - a.total);
  const [first, second] = ranked;
  return dotChart({
    id: 'what-causes-it',
    title: 'Share of what sets left and right apart',
    alt: `In ${motionText(build.speeds[answerPlace] ?? 0)} ${first === undefined ? 'nothing' : plainName(first.name)} causes ${percent(Math.min(1, first?.total ?? 0))} of the spread between shocks${second === undefined ? '' : `, and ${plainName(second.name)} ${percent(second.total)}`}.`,
    category: 'Size',
    categories: ranked.map(({ name }) => capital(plainName(name))),
    value: {
      label: 'Share of the spread (variance)',
      unit: '%',
      dimension: 'ratio',
      domain: [0, 1],
      digits: 2,
    },
    series: build.speeds.map((speed, place) => ({
      name: motionText(speed),
      dots: ranked.map(({ name }) => ({
        category: capital(plainName(name)),
        value: Math.min(1, Math.max(0, shares[place]?.find((share) => share.name === name)?.total ?? 0)),
      })),
    })),
  });
}
