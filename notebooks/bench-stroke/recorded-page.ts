import type { Block } from '../../lib/page/blocks/block.js';
import type { Build, RecordedStroke } from '../../lib/parts/parts.js';
import type { Figure } from '../../lib/plot/chart/figure.js';
import { lineChart } from '../../lib/plot/figure/line-chart.js';
import { millilitres, millimetres } from '../base/bench-wording.js';
import { recordingDoubts } from '../base/recording-doubts.js';
import { shockAtWork } from '../base/shock-at-work.js';
import { celsius, percent, seconds, shaftSpeed } from '../base/wording.js';
import { joules } from './figures.js';
import { type Ridden, rides } from './recorded.js';
import { caseNames } from './tables.js';
import { newtonsOf } from './words.js';

/** Points of a figure at most. */
const mostDrawn = 160;

/** What a recording makes of a build. */
export interface RecordedAnswer {
  /** The first thing read. */
  readonly sentence: string;
  readonly blocks: readonly Block[];
  readonly doubts: readonly string[];
}

const time = { label: 'Time since the first row', unit: 's', dimension: 'time' } as const;

/** Heat that a ride made [J]. */
const heatOf = ({ ride: { lost } }: Ridden): number => lost.holes + lost.recoil + lost.rim + lost.seals;

/** A build moved as somebody recorded it. */
export function recordedAnswer(build: Build, temperature: number, stroke: RecordedStroke): RecordedAnswer {
  const all = rides(build, temperature, stroke);
  const [own] = all;
  if (own === undefined) throw new RangeError('the likely ride comes first');
  const { trace, warnings } = own.result;
  const [deepest, least] = [Math.max(...stroke.travels), Math.min(...stroke.travels)];
  const [inward, outward] = [
    trace.speeds.reduce((a, b) => Math.max(a, b), 0),
    trace.speeds.reduce((a, b) => Math.min(a, b), 0),
  ];
  const length = stroke.times.at(-1) ?? 0;
  const placeAt = ({ time: when }: { readonly time: number }): string => {
    const index = Math.round((when / length) * (trace.times.length - 1));
    return `${millimetres(trace.travels[index] ?? 0)} in, at ${seconds(when)}`;
  };
  const pulls = all.map(({ ride }) => -ride.smallestForce.value);
  const back =
    Math.max(...pulls) > 0
      ? `holds back with at most ${newtonsOf(pulls)} (${placeAt(own.ride.smallestForce)})`
      : `never holds back, since its gas pushes with at least ${newtonsOf(pulls.map((one) => -one))}`;
  const heat = heatOf(own);
  return {
    sentence: `Moved as recorded, ${seconds(length)} long, ${millimetres(least)} to ${millimetres(deepest)} in, up to ${shaftSpeed(inward)} in and ${shaftSpeed(-outward)} out, ${build.name} on ${build.oil.name} at ${celsius(temperature)} pushes out with at most ${newtonsOf(all.map(({ ride }) => ride.largestForce.value))} (${placeAt(own.ride.largestForce)}) and ${back}; the recording makes ${joules(heat)} of heat, ${Number((heat / length).toPrecision(2))} W on the mean.`,
    blocks: [
      { kind: 'figure', figure: forceFigure(all) },
      { kind: 'figure', figure: travelFigure(own) },
      shockAtWork(own.moving, trace, {
        id: 'recorded-at-work',
        title: 'The shock at work, as recorded',
        largestTravel: deepest,
        largestForce: own.ride.largestForce.value,
      }),
      { kind: 'list', items: [cavitySentence(own)] },
      {
        kind: 'table',
        id: 'recorded-figures',
        title: 'What the recording asks of the shock',
        table: {
          columns: [
            { label: 'Oil', unit: '' },
            { label: 'Pushes', unit: 'N', dimension: 'force', digits: 3 },
            { label: 'Pulls', unit: 'N', dimension: 'force', digits: 3 },
            { label: 'Heat', unit: 'J', digits: 3 },
            { label: 'Cavity', unit: 'ml', dimension: 'volume', digits: 2 },
            { label: 'Lost stroke', unit: 'mm', dimension: 'length', digits: 2 },
          ],
          rows: all.map((one) => [
            caseNames[one.end],
            one.ride.largestForce.value,
            -one.ride.smallestForce.value,
            heatOf(one),
            one.ride.largestCavity,
            one.result.lostStroke,
          ]),
        },
      },
    ],
    doubts: [
      ...warnings.map(({ message }) => message),
      ...recordingDoubts({ times: stroke.times, values: stroke.travels }),
      'The shock is taken to stand, its pressures equal, in the first row of the recording; between rows its travel follows a smooth line that passes none of them.',
    ],
  };
}

function cavitySentence({ ride, result }: Ridden): string {
  return ride.largestCavity > 0
    ? `A cavity of up to ${millilitres(ride.largestCavity)} is open for ${percent(ride.cavityShare)} of the recording; until it is full again, up to ${millimetres(result.lostStroke)} of the way meet no resistance of the oil.`
    : 'The oil stays whole all through the recording.';
}

/** Indices of a trace that are drawn. */
function drawn(points: number): readonly number[] {
  const stride = Math.ceil((points - 1) / mostDrawn);
  return Array.from({ length: Math.floor((points - 1) / stride) + 1 }, (_, place) => place * stride);
}

function forceFigure(all: readonly Ridden[]): Figure {
  const [own] = all;
  const trace = own?.result.trace;
  const places = drawn(trace?.times.length ?? 2);
  return lineChart({
    id: 'recorded-force',
    title: 'Force as recorded',
    alt: `The force on the shaft while it moves as recorded, out is positive: from ${newtonsOf([own?.ride.smallestForce.value ?? 0])} to ${newtonsOf([own?.ride.largestForce.value ?? 0])}. The band is what air in the oil leaves open.`,
    x: time,
    y: { label: 'Force on the shaft, out is positive', unit: 'N', dimension: 'force' },
    series: [
      {
        name: 'force',
        points: places.map((index) => {
          const forces = all.map(({ result }) => result.trace.forces[index] ?? 0);
          return {
            x: trace?.times[index] ?? 0,
            y: forces[0] ?? 0,
            low: Math.min(...forces),
            high: Math.max(...forces),
          };
        }),
      },
    ],
  });
}

function travelFigure({ result: { trace } }: Ridden): Figure {
  return lineChart({
    id: 'recorded-travel',
    title: 'Travel as recorded',
    alt: `How far the shaft is in, from the first row of the recording to its last, ${seconds(trace.times.at(-1) ?? 0)} later.`,
    x: time,
    y: { label: 'Shaft travel', unit: 'mm', dimension: 'length' },
    series: [
      {
        name: 'travel',
        points: drawn(trace.times.length).map((index) => ({
          x: trace.times[index] ?? 0,
          y: trace.travels[index] ?? 0,
        })),
      },
    ],
  });
}
