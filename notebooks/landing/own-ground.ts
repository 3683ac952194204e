import { standardGravity } from '../../lib/base/constants.js';
import { InputError } from '../../lib/base/input-error.js';
import type { RecordedCourse } from '../../lib/measure/dyno/read-course.js';
import type { Corner } from '../../lib/motion/corner/corner.js';
import type { CornerOutcome } from '../../lib/motion/corner/corner-outcome.js';
import { moveCorner } from '../../lib/motion/corner/move-corner.js';
import { LockedOil } from '../../lib/motion/shock/locked-oil.js';
import type { Block } from '../../lib/page/blocks/block.js';
import type { Build } from '../../lib/parts/parts.js';
import { lineChart } from '../../lib/plot/figure/line-chart.js';
import { millilitres, millimetres } from '../base/bench-wording.js';
import { type AirEnd, cornerOf, movingBuild } from '../base/moving-build.js';
import { recordingDoubts } from '../base/recording-doubts.js';
import { newtons, seconds, shaftSpeed } from '../base/wording.js';
import { between, weights } from './words.js';

/** How long the corner is followed after the last row [s], and at most. */
const afterwards = 0.3;
const longest = 60;
const parts = 240;
/** Highest ground over the first row [m], either way: beyond it a wheel does not follow. */
const highest = 0.5;

const key = 'recorded-ground';

/** What recorded ground makes of a build. */
export interface GroundAnswer {
  readonly sentence: string;
  readonly blocks: readonly Block[];
  readonly doubts: readonly string[];
}

function requireGround({ values }: RecordedCourse): void {
  const [start = 0] = values;
  values.forEach((value, index) => {
    if (Math.abs(value - start) <= highest) return;
    throw new InputError({
      field: key,
      value: `${millimetres(value - start)} in row ${index + 1}`,
      accepted: `at most ${millimetres(highest)} above or below the ground of the first row; look at the unit of the height`,
    });
  });
}

function driven(
  build: Build,
  corner: Corner,
  temperature: number,
  { times, values }: RecordedCourse,
  end: AirEnd,
): CornerOutcome {
  const { shock } = movingBuild(build, temperature, end);
  const [start = 0] = values;
  const event = { kind: 'table', times, heights: values.map((value) => value - start) } as const;
  const duration = Math.min(longest, (times.at(-1) ?? 0) + afterwards);
  return moveCorner(shock, corner, event, { duration, parts, tolerance: 1e-5 });
}

function outcomes(build: Build, temperature: number, ground: RecordedCourse): readonly CornerOutcome[] {
  const { corner } = cornerOf(build);
  return (['likely', 'bubbles', 'early release'] as const).flatMap((end) => {
    try {
      return driven(build, corner, temperature, ground, end);
    } catch (error) {
      if (!(error instanceof LockedOil)) throw error;
      if (end !== 'likely') return [];
      throw new InputError({
        field: key,
        value: `ground that locks the shock after ${seconds(error.time)}, ${millimetres(error.travel)} in`,
        accepted: `such that the gas of ${build.name} has room for shaft and cavity: the rest of the stroke asks for another ${millilitres(error.missing)}; let out oil, or drive it warmer`,
      });
    }
  });
}

/** Less than this [m] nobody sees. */
const seen = 1e-4;

/** Whether a ride holds the shaft further in than it stands at rest. */
function packing({ meanTravel, restTravel }: CornerOutcome): string {
  const deeper = meanTravel - restTravel;
  if (Math.abs(deeper) < seen) return 'it neither packs down nor rides up';
  return `it ${deeper > 0 ? 'packs down' : 'rides up'} by ${millimetres(Math.abs(deeper))}`;
}

/** A build that is driven over the ground that somebody measured. */
export function groundAnswer(build: Build, temperature: number, ground: RecordedCourse): GroundAnswer {
  requireGround(ground);
  const all = outcomes(build, temperature, ground);
  const [own] = all;
  if (own === undefined) throw new RangeError('the likely drive comes first');
  const range = (of: (one: CornerOutcome) => number, digits: number, unit: string): string => {
    const values = all.map(of);
    return between(Math.min(...values).toFixed(digits), Math.max(...values).toFixed(digits), unit);
  };
  const { trace } = own;
  const touched = all.filter(({ bottomings }) => bottomings.length > 0).length;
  const stop =
    touched === 0
      ? 'does not touch its bump stop'
      : touched === all.length
        ? `touches its bump stop, first with ${shaftSpeed(own.bottomings[0]?.speed ?? 0)}`
        : 'touches its bump stop or not, by what air does in its oil';
  const leaves =
    own.liftOffs.length === 0
      ? 'the wheel stays on the ground'
      : `the wheel leaves the ground ${own.liftOffs.length === 1 ? 'once' : `${own.liftOffs.length} times`}, for ${seconds(own.airTime)} in all`;
  const lowest = Math.min(...ground.values);
  const rise = Math.max(...ground.values) - lowest;
  return {
    sentence: `Over the recorded ground, ${seconds(ground.times.at(-1) ?? 0)} long and ${millimetres(rise)} from its lowest to its highest, ${build.name} goes in ${range(({ largestTravel }) => 1000 * largestTravel.value, 1, 'mm')} at most and ${stop}; its shock pushes out with up to ${range(({ largestShockForce }) => largestShockForce.value, 0, 'N')}, the body feels ${weights(own.largestBodyAcceleration.value / standardGravity)}, and ${leaves}.`,
    blocks: [
      {
        kind: 'figure',
        figure: lineChart({
          id: 'ground-travel',
          title: 'Recorded ground, and how far the shaft goes in',
          alt: `The ground rises ${millimetres(rise)} from its lowest to its highest; the shaft goes in ${millimetres(own.largestTravel.value)} at most and is ${millimetres(own.restTravel)} in at rest.`,
          x: { label: 'Time since the first row', unit: 's', dimension: 'time' },
          y: { label: 'Height and travel', unit: 'mm', dimension: 'length' },
          series: [
            {
              name: 'ground',
              points: ground.times.map((x, index) => ({
                x,
                y: (ground.values[index] ?? 0) - (ground.values[0] ?? 0),
              })),
            },
            {
              name: 'shaft',
              points: Array.from(trace.times, (x, index) => ({ x, y: trace.travels[index] ?? 0 })),
            },
          ],
        }),
      },
      {
        kind: 'list',
        items: [
          `The tyre presses on the ground with ${newtons(own.meanTyreForce)} on the mean and ${newtons(own.largestTyreForce.value)} at most; it swings about the mean by ${newtons(own.tyreForceSpread)} (root of the mean square): the less, the more grip.`,
          `The shaft goes in with up to ${shaftSpeed(own.fastestCompression.value)} and comes out with up to ${shaftSpeed(-own.fastestRebound.value)}. On the mean it is ${millimetres(own.meanTravel)} in, at rest ${millimetres(own.restTravel)}: ${packing(own)}.`,
        ],
      },
    ],
    doubts: [
      ...own.warnings.map(({ message }) => message),
      ...recordingDoubts(ground),
      `The corner stands at rest on the ground of the first row; ground is met by a point, though a tyre bridges what is shorter than its patch.`,
    ],
  };
}
