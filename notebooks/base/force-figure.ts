import { cavitationOnset } from '../../lib/damper/cavitation-onset.js';
import type { DamperModel } from '../../lib/damper/damper-model.js';
import { creepingDampingCoefficient } from '../../lib/damper/force-point.js';
import type { Figure } from '../../lib/plot/chart/figure.js';
import type { LineChart, LinePoint } from '../../lib/plot/chart/lines.js';
import { lineChart } from '../../lib/plot/figure/line-chart.js';
import { formatQuantity } from '../../lib/units/index.js';
import { type DampingSpan, dampingAfterTravel, dampingSpan, strokeOf } from './after-onset.js';

/** Points of a curve on each side of rest, beside those at the onset. */
const pointsEachWay = 30;

/** With more curves than this only the first keeps its band: many bands over each other show nothing. */
const mostBands = 3;

/** One shock whose force is drawn. */
export interface ForceCurve {
  readonly name: string;
  readonly model: DamperModel;
  /** The same shock with the thinnest and the thickest oil that its label allows, where it is sold by an interval. */
  readonly bounds?: readonly [DamperModel, DamperModel];
  /** Fastest speed at which its spring drives it out [m/s, positive], where a spring is known. */
  readonly fastestRebound?: number;
}

/** Id, title and caption of a picture. */
export interface FigureWords {
  readonly id: string;
  readonly title: string;
  readonly alt: string;
}

/**
 * Damping force against shaft speed: whole oil up to the onset of cavitation, beyond it the force after the travel that the page names, in a band from the start of
 * the stroke to its end. Dots mark the onset, and the fastest that a spring drives the shock out.
 */
export function forceFigure(words: FigureWords, curves: readonly ForceCurve[], fast: number): Figure {
  return lineChart({
    ...words,
    alt: `${words.alt} ${figureKey(curves, fast)}`.trim(),
    x: { label: 'Shaft speed, compression positive', unit: 'mm/s', dimension: 'speed' },
    y: { label: 'Damping force', unit: 'N', dimension: 'force' },
    ...drawn(curves, fast, (span) => span),
  });
}

/** The same per speed, where slow speeds can be seen. */
export function dampingPerSpeedFigure(
  words: FigureWords,
  curves: readonly ForceCurve[],
  fast: number,
): Figure {
  const chart = drawn(curves, fast, ({ damping, low, high }, speed, model) => {
    if (speed === 0) return { damping: creepingDampingCoefficient(model) };
    const [one, other] = [(low ?? damping) / speed, (high ?? damping) / speed];
    const ends = low === undefined ? {} : { low: Math.min(one, other), high: Math.max(one, other) };
    return { damping: damping / speed, ...ends };
  });
  const highest = Math.max(...chart.series.flatMap(({ points }) => points.map(({ y, high }) => high ?? y)));
  return lineChart({
    ...words,
    x: { label: 'Shaft speed, compression positive', unit: 'mm/s', dimension: 'speed' },
    y: { label: 'Damping per speed', unit: 'N·s/m', domain: [0, roundAbove(highest)] },
    ...chart,
  });
}

type Change = (span: DampingSpan, speed: number, model: DamperModel) => DampingSpan;

function drawn(
  curves: readonly ForceCurve[],
  fast: number,
  change: Change,
): Pick<LineChart, 'series' | 'points'> {
  return {
    series: curves.map(({ name, model, bounds }, index) => ({
      name,
      points: speedsOf(model, fast).map((speed): LinePoint => {
        const at = (one: DamperModel): DampingSpan => change(dampingSpan(one, speed), speed, one);
        if (index > 0 && curves.length > mostBands)
          return { x: speed, y: change(dampingAfterTravel(model, speed), speed, model).damping };
        const { damping, low, high } = at(model);
        if (bounds === undefined) {
          // The band begins where the cavity does, with no width.
          const begins = onsets(model, fast).includes(speed);
          return begins ? pointOf(speed, damping, damping, damping) : pointOf(speed, damping, low, high);
        }
        const ends = [low ?? damping, high ?? damping, ...bounds.flatMap((one) => endsOf(at(one)))];
        return pointOf(speed, damping, Math.min(...ends), Math.max(...ends));
      }),
    })),
    points: curves.flatMap(({ model, fastestRebound }) =>
      marksOf(model, fast, fastestRebound).map((speed) => ({
        x: speed,
        y: change(dampingAfterTravel(model, speed), speed, model).damping,
        label: '',
      })),
    ),
  };
}

const endsOf = ({ damping, low = damping, high = damping }: DampingSpan): readonly number[] => [low, high];

function pointOf(x: number, y: number, low: number | undefined, high: number | undefined): LinePoint {
  return low === undefined || high === undefined ? { x, y } : { x, y, low, high };
}

/** Speeds at which a cavity begins to open with the shaft fully out, within those shown, with their sign. */
function onsets(model: DamperModel, fast: number): readonly number[] {
  return (['compression', 'rebound'] as const).flatMap((direction) => {
    const onset = cavitationOnset(model, direction, 0);
    return onset === undefined || Math.abs(onset.speed) >= fast ? [] : [onset.speed];
  });
}

function marksOf(model: DamperModel, fast: number, fastestRebound: number | undefined): readonly number[] {
  const driven = fastestRebound === undefined || fastestRebound >= fast ? [] : [-fastestRebound];
  return [...onsets(model, fast), ...driven];
}

/** Even steps, and the onset itself, so that the band begins where it does. */
function speedsOf(model: DamperModel, fast: number): readonly number[] {
  const even = Array.from(
    { length: 2 * pointsEachWay + 1 },
    (_, step) => (fast * (step - pointsEachWay)) / pointsEachWay,
  );
  const speeds = [...new Set([...even, ...onsets(model, fast)])];
  return speeds.sort((one, other) => one - other);
}

/** What dots, band and line beyond the onset mean, for the caption. */
function figureKey(curves: readonly ForceCurve[], fast: number): string {
  const [first] = curves;
  if (first === undefined) return '';
  const sentences: string[] = [];
  const opening = curves.filter(({ model }) => onsets(model, fast).length > 0);
  if (opening.length > 0) {
    const inward = opening.some(({ model }) => onsets(model, fast).some((speed) => speed > 0));
    const whose = curves.length > mostBands ? `, drawn for ${first.name}` : '';
    const travel = formatQuantity(strokeOf(first.model, 1).travel, 'length', 'mm', 2);
    sentences.push(
      `Where cavitation begins there is a dot, and from there on a band${whose}: from the force as a stroke begins ${inward ? 'fully out' : 'all the way in'} to the force at its end; the line is the force after ${travel}.`,
    );
  }
  if (curves.some(({ fastestRebound }) => fastestRebound !== undefined && fastestRebound < fast))
    sentences.push('Left of the dot in rebound is beyond what the spring can do.');
  return sentences.join(' ');
}

/** The next of 1, 1.5, 2, 2.5 … times a power of ten. */
function roundAbove(value: number): number {
  const step = 10 ** Math.floor(Math.log10(value)) / 2;
  return Math.ceil(value / step) * step;
}
