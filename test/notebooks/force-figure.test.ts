import { describe, expect, test } from 'vitest';
import { cavitationOnset } from '../../lib/damper/cavitation-onset.js';
import { oilForce } from '../../lib/damper/oil-force.js';
import { curveOf } from '../../notebooks/base/chosen-shock.js';
import { dampingPerSpeedFigure, forceFigure } from '../../notebooks/base/force-figure.js';
import { fastestReboundOf } from '../../notebooks/base/shaft-speeds.js';
import { files } from './answers.js';
import { buildOf } from './landing-cases.js';

const build = buildOf(files.demo, 'buggy front');
const curve = curveOf('own', build, 293.15);
const words = { id: 'f', title: 'f', alt: 'Own.' };
const onset = cavitationOnset(curve.model, 'compression', 0)?.speed ?? Number.NaN;
const rebound = fastestReboundOf(build, 293.15) ?? Number.NaN;
const shownOf = ({ chart }: ReturnType<typeof forceFigure>) => {
  if (chart.kind !== 'line') throw new Error('no line');
  return chart.shows;
};

describe('force against shaft speed', () => {
  test('has its dots where cavitation begins and as fast as the spring lets it out, within what is shown', () => {
    const dots = (fast: number) =>
      (shownOf(forceFigure(words, [curve], fast)).points ?? []).map(({ x }) => x).toSorted((a, b) => a - b);
    expect(dots(1)).toEqual([-rebound, onset]);
    expect(dots((rebound + onset) / 2)).toEqual([Math.min(rebound, onset) === rebound ? -rebound : onset]);
    expect(dots(0.5 * Math.min(rebound, onset))).toEqual([]);
  });

  test('is that of whole oil up to the onset, without a band, and has one beyond', () => {
    const [series] = shownOf(forceFigure(words, [curve], 1)).series;
    const points = series?.points ?? [];
    expect(points).toHaveLength(62);
    expect([points[0]?.x, points.at(-1)?.x]).toEqual([-1, 1]);
    for (const { x, y, low, high } of points.filter(({ x }) => x > 0)) {
      if (x < onset) expect([low, high]).toEqual([undefined, undefined]);
      else expect(high ?? 0).toBeGreaterThanOrEqual(low ?? Number.NaN);
      if (x < onset) expect(y).toBeCloseTo(oilForce(curve.model, x), 9);
    }
  });

  test('per speed it is the force over the speed, its band the right way round, on an axis from 0', () => {
    const shown = shownOf(dampingPerSpeedFigure(words, [curve], 1));
    const forces = shownOf(forceFigure(words, [curve], 1)).series[0]?.points ?? [];
    for (const [place, { x, y, low, high }] of (shown.series[0]?.points ?? []).entries()) {
      if (x !== 0) expect(y).toBeCloseTo((forces[place]?.y ?? 0) / x, 9);
      if (low !== undefined) expect(high).toBeGreaterThanOrEqual(low);
    }
    const highest = Math.max(...(shown.series[0]?.points ?? []).map(({ y, high }) => high ?? y));
    const [from, to] = shown.y.domain ?? [];
    expect(from).toBe(0);
    expect(to).toBeGreaterThanOrEqual(highest);
    expect(to).toBeLessThan(3 * highest);
  });
});
