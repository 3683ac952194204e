import {
  type Drawing,
  drawnForces,
  type ForceSpread,
  type ToleranceShare,
} from '../../lib/decisions/spread/force-spread.js';
import type { TolerancedBuild } from '../../lib/decisions/spread/toleranced-build.js';
import type { Figure } from '../../lib/plot/chart/figure.js';
import { dotChart } from '../../lib/plot/figure/dot-chart.js';
import { histogram } from '../../lib/plot/figure/histogram.js';
import { newtons, percent, shaftSpeed } from '../base/wording.js';
import { capital, plainName } from './wording.js';

/** How the force at the middle speed spreads over all builds drawn. */
export function histogramFigure(
  build: TolerancedBuild,
  drawing: Drawing,
  spread: ForceSpread | undefined,
): Figure {
  const all = drawnForces(build, drawing, 0, drawing.count);
  const outputs = build.speeds.length;
  const forces = Array.from({ length: drawing.count }, (_, index) => -(all[index * outputs + 1] ?? 0));
  const [low, middle, high] = [spread?.high ?? 0, spread?.median ?? 0, spread?.low ?? 0].map(
    (force) => -force,
  );
  const at = shaftSpeed(Math.abs(build.speeds[1] ?? 0));
  return histogram({
    id: 'force-spread',
    title: `Rebound force at ${at} over ${drawing.count} builds`,
    alt: `Half of the builds hold back with less than ${newtons(middle ?? 0)}; one in twenty with less than ${newtons(low ?? 0)}, one in twenty with more than ${newtons(high ?? 0)}.`,
    value: { label: `Rebound force at ${at}`, unit: 'N', dimension: 'force' },
    values: forces,
    counted: 'builds',
    rules: [
      { axis: 'x', value: low ?? 0, label: '5 %' },
      { axis: 'x', value: middle ?? 0, label: 'half' },
      { axis: 'x', value: high ?? 0, label: '95 %' },
    ],
  });
}

/** Which size causes which share of the spread, at each speed. */
export function sharesFigure(build: TolerancedBuild, shares: readonly (readonly ToleranceShare[])[]): Figure {
  const ranked = [...(shares[1] ?? [])].sort((a, b) => b.total - a.total);
  const [first, second] = ranked;
  return dotChart({
    id: 'what-causes-it',
    title: 'Share of the spread that each size causes',
    alt: `At ${shaftSpeed(Math.abs(build.speeds[1] ?? 0))} ${first === undefined ? 'nothing' : plainName(first.name)} causes ${percent(first?.total ?? 0)} of the spread${second === undefined ? '' : `, and ${plainName(second.name)} ${percent(second.total)}`}.`,
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
      name: shaftSpeed(Math.abs(speed)),
      dots: ranked.map(({ name }) => ({
        category: capital(plainName(name)),
        value: Math.min(1, Math.max(0, shares[place]?.find((share) => share.name === name)?.total ?? 0)),
      })),
    })),
  });
}
