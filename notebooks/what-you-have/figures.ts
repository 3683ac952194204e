import { dampingAnswers, type ForcePlace } from '../../lib/measure/answer/damping-answer.js';
import { measuredSpeeds } from '../../lib/measure/answer/measured-speeds.js';
import type { ShockFit } from '../../lib/measure/fit/fit-shock.js';
import type { Figure } from '../../lib/plot/chart/figure.js';
import type { LinePoint } from '../../lib/plot/chart/lines.js';
import { lineChart } from '../../lib/plot/figure/line-chart.js';
import { celsius, shaftSpeed } from '../base/wording.js';
import type { DynoGroup } from './dyno-groups.js';

const points = 40;

/** Curve of one way on the dyno, with what the sensor leaves open, 19 times of 20. */
function dynoCurve(groups: readonly DynoGroup[], way: DynoGroup['way']) {
  const own = groups.filter((group) => group.way === way);
  if (own.length < 2) return [];
  const points = own.map(({ speed, read, uncertainty }) => ({
    x: speed,
    y: read,
    low: read - 2 * uncertainty,
    high: read + 2 * uncertainty,
  }));
  return [{ name: way === 'in' ? 'dyno, going in' : 'dyno, coming out', points }];
}

/** Force against speed with its band: solid where measured, dashed beyond; beside it what a dyno shows. */
export function forceFigure(
  name: string,
  fit: ShockFit,
  fastest: number,
  place: ForcePlace,
  groups: readonly DynoGroup[],
): Figure {
  const known = measuredSpeeds(fit.problem.readings);
  const line = (low: number, high: number): readonly LinePoint[] => {
    const speeds = Array.from({ length: points }, (_, index) => low + ((high - low) * index) / (points - 1));
    return dampingAnswers(fit, speeds, place).map(({ speed, dampingForce, interval }) => ({
      x: speed,
      y: dampingForce,
      low: interval[0],
      high: interval[1],
    }));
  };
  const [slowest, quickest] = known ?? [fastest / points, fastest / points];
  const measured =
    known === undefined
      ? "The shaft was not moved: the line is the law's word alone."
      : `Measured from ${shaftSpeed(slowest)} to ${shaftSpeed(quickest)}; beyond, the line is the law's word and its band grows.`;
  const beyond = { name: 'the law beyond', points: line(quickest, Math.max(fastest, 2 * quickest)) };
  const within = quickest > slowest ? [{ name: 'measured', points: line(slowest, quickest) }] : [];
  return lineChart({
    id: 'measured-force',
    title: `Damping force of ${name} at ${celsius(place.temperature)}`,
    alt: `Damping force in compression with its 95 % band. ${measured}${groups.length === 0 ? '' : ' The lines of the dyno are means of neighbouring speeds.'}`,
    x: { label: 'Shaft speed', unit: 'mm/s', dimension: 'speed' },
    y: { label: 'Damping force', unit: 'N', dimension: 'force' },
    series: [...within, beyond, ...dynoCurve(groups, 'in'), ...dynoCurve(groups, 'out')],
  });
}
